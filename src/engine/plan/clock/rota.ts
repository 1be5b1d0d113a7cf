import { assignUnits, type Stint } from '../../schedule/assign-units.ts';
import { type GearLoad, inUseFrom } from '../days/loads.ts';
import type { TimedStep } from './clock-step.ts';
import { type CrewSpan, DAY_END, withSkill } from './crew-hours.ts';
import type { DayClock } from './day-clock.ts';
import type { PlaceClock } from './place-clock.ts';

/** Who does what of a date's work, and in which oven it is. */
export interface Rota {
  /** How many cook, at the most at once; 0 where it is not stated. */
  readonly people: number;
  /** What each of the cooks can do, by number; none where work could not be given out by skill. */
  readonly skills: ReadonlyMap<number, readonly string[]>;
  /** Numbers from 1 of those who work at a step, by its id; above `people` where more are needed than there are. */
  readonly cooks: ReadonlyMap<string, readonly number[]>;
  /** Numbers from 1 of the pieces of its equipment that a step is in, by its id. */
  readonly pieces: ReadonlyMap<string, readonly number[]>;
  /** The same of what a step's food is chilled in. */
  readonly chillers: ReadonlyMap<string, readonly number[]>;
  /** Those who pack and load, by event. */
  readonly packs: ReadonlyMap<string, readonly number[]>;
  readonly loads: ReadonlyMap<string, readonly number[]>;
}

/**
 * Gives a date's work in the kitchen to its cooks, so that nobody is in two places at a minute: whoever is at a recipe
 * goes on with it, else stays at the station, else whoever has done least so far; what takes a skill goes to those who have
 * it. Ovens are filled from the first, so that no more are heated than are needed. The schedule has counted hands already;
 * this changes no minute.
 */
export function kitchenRota({ steps, served, crew }: Pick<DayClock, 'steps' | 'served' | 'crew'>): Rota {
  const people = Math.max(0, ...crew.map((span) => span.people));
  const own = served.flatMap(({ plan, pack, load }): Stint[] => {
    const { id } = plan.input;
    return [
      { id: `pack ${id}`, from: pack.begins, until: pack.ends, amount: 1, near: [`van ${id}`] },
      { id: `load ${id}`, from: load.begins, until: load.ends, amount: 1, near: [`van ${id}`] },
    ];
  });
  // Work without an hour has minutes of its own, which meet no other's.
  const parts = [true, false].map((clock) => steps.filter((step) => step.clock === clock));
  const assigned = (skilled: ReadonlyMap<string, readonly number[]>) =>
    parts.map((part, index) =>
      people === 0
        ? new Map<string, readonly number[]>()
        : assignUnits(
            [...handsOf(part, skilled), ...(index === 0 ? [...own, ...absences(crew, people)] : [])],
            people,
            'least busy',
          ),
    );
  const skilled = skilledUnits(crew, people);
  const bySkill = assigned(skilled);
  const anybody = skilled.size === 0 ? bySkill : assigned(new Map());
  // Counted right, there can still be no way to give it out by skill unless somebody is handed what another began.
  const kept = mostOf(bySkill) <= mostOf(anybody);
  const given = numbered(kept ? bySkill : anybody);
  const byEvent = (kind: string) =>
    new Map(
      served.flatMap(({ plan: { input } }) => {
        const who = given.get(`${kind} ${input.id}`);
        return who ? [[input.id, who] as const] : [];
      }),
    );
  return {
    people,
    skills: kept ? skillsByCook(skilled) : new Map(),
    cooks: given,
    pieces: new Map(parts.flatMap((part) => [...piecesOf(part)])),
    chillers: new Map(parts.flatMap((part) => [...chillersOf(part)])),
    packs: byEvent('pack'),
    loads: byEvent('load'),
  };
}

/** The same for the cooks at an event's place; nobody is named where it is not known how many are there. */
export function placeRota({ steps, cooks }: Pick<PlaceClock, 'steps' | 'cooks'>): Rota {
  const people = cooks ?? 0;
  const given = people === 0 ? [] : [assignUnits(handsOf(steps, new Map()), people, 'least busy')];
  return {
    people,
    skills: new Map(),
    cooks: numbered(given),
    pieces: piecesOf(steps),
    chillers: new Map(),
    packs: new Map(),
    loads: new Map(),
  };
}

const SKILLED = ' skilled';

/** The hands of each step; one of them has its skill, where anybody has it. */
function handsOf(steps: readonly TimedStep[], skilled: ReadonlyMap<string, readonly number[]>): Stint[] {
  return steps.flatMap(({ id, begins, handsOff, hands, batch, step }) => {
    const near = [`recipe ${batch.recipe.id}`, `station ${step.station}`];
    const stint = { from: begins, until: handsOff, near };
    const only = skilled.get(step.skill ?? '');
    return only === undefined
      ? [{ ...stint, id, amount: hands }]
      : [
          { ...stint, id: `${id}${SKILLED}`, amount: 1, only },
          { ...stint, id, amount: hands - 1 },
        ];
  });
}

/** Which of the cooks have each skill: as many as at the most have it, other ones for another skill as far as there are. */
function skilledUnits(crew: readonly CrewSpan[], people: number): Map<string, readonly number[]> {
  const names = [...new Set(crew.flatMap(({ skills }) => [...(skills?.keys() ?? [])]))].sort();
  let next = 0;
  return new Map(
    names.flatMap((name) => {
      const count = Math.min(people, Math.max(...crew.map((span) => withSkill(span, name))));
      const units = Array.from({ length: count }, () => next++ % people);
      return count === 0 ? [] : [[name, units] as const];
    }),
  );
}

function skillsByCook(skilled: ReadonlyMap<string, readonly number[]>): Map<number, string[]> {
  const found = new Map<number, string[]>();
  for (const [name, units] of skilled)
    for (const cook of fromOne(units)) found.set(cook, [...(found.get(cook) ?? []), name]);
  return found;
}

function mostOf(parts: readonly ReadonlyMap<string, readonly number[]>[]): number {
  return Math.max(0, ...parts.flatMap((part) => [...part.values()].flat()));
}

/** Numbers from 1 by step, its skilled pair of hands among the others. */
function numbered(parts: readonly ReadonlyMap<string, readonly number[]>[]): Map<string, readonly number[]> {
  const found = new Map<string, readonly number[]>();
  for (const [id, units] of parts.flatMap((part) => [...part])) {
    const step = id.endsWith(SKILLED) ? id.slice(0, -SKILLED.length) : id;
    found.set(
      step,
      [...(found.get(step) ?? []), ...fromOne(units)].sort((a, b) => a - b),
    );
  }
  return found;
}

/** While fewer cook than at the most, the others are gone; as many as come first work early, and as stay last work late. */
function absences(crew: readonly CrewSpan[], people: number): Stint[] {
  return crew.map(({ from, until, people: there }, index) => ({
    id: `away ${from}`,
    from: index === 0 ? -DAY_END : from,
    until: index === crew.length - 1 ? 2 * DAY_END : until,
    amount: people - there,
    near: ['away'],
  }));
}

function piecesOf(steps: readonly TimedStep[]): Map<string, readonly number[]> {
  return givenOut(
    steps.flatMap((step) => {
      const from = step.begins + inUseFrom(step);
      return step.load ? [{ id: step.id, load: step.load, from, until: step.ends }] : [];
    }),
  );
}

function chillersOf(steps: readonly TimedStep[]): Map<string, readonly number[]> {
  return givenOut(
    steps.flatMap(({ id, cools, ends, coldBy }) =>
      cools?.chiller && coldBy !== undefined ? [{ id, load: cools.chiller, from: ends, until: coldBy }] : [],
    ),
  );
}

/** Which pieces each load is in, the first that are free. */
function givenOut(
  loads: readonly (Pick<Stint, 'id' | 'from' | 'until'> & { readonly load: GearLoad })[],
): Map<string, readonly number[]> {
  const kinds = Map.groupBy(loads, ({ load }) => load.equipment.id);
  return new Map(
    [...kinds.values()].flatMap((own) => {
      const stints = own.map(({ load, ...stint }) => ({ ...stint, amount: load.uses }));
      return [...assignUnits(stints, 0, 'first')].map(([id, units]) => [id, fromOne(units)] as const);
    }),
  );
}

function fromOne(units: readonly number[]): number[] {
  return units.map((unit) => unit + 1);
}
