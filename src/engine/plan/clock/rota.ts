import { assignUnits, type Stint } from '../../schedule/assign-units.ts';
import type { TimedStep } from './clock-step.ts';
import { type CrewSpan, DAY_END } from './crew-hours.ts';
import type { DayClock } from './day-clock.ts';
import type { PlaceClock } from './place-clock.ts';

/** Who does what of a date's work, and in which oven it is. */
export interface Rota {
  /** How many cook, at the most at once; 0 where it is not stated. */
  readonly people: number;
  /** Numbers from 1 of those who work at a step, by its id; above `people` where more are needed than there are. */
  readonly cooks: ReadonlyMap<string, readonly number[]>;
  /** Numbers from 1 of the pieces of its equipment that a step is in, by its id. */
  readonly pieces: ReadonlyMap<string, readonly number[]>;
  /** Those who pack and load, by event. */
  readonly packs: ReadonlyMap<string, readonly number[]>;
  readonly loads: ReadonlyMap<string, readonly number[]>;
}

/**
 * Gives a date's work in the kitchen to its cooks, so that nobody is in two places at a minute: whoever is at a recipe
 * goes on with it, else stays at the station, else whoever has done least so far. Ovens are filled from the first, so that no
 * more are heated than are needed. The schedule has counted hands already; this changes no minute.
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
  const cooks = parts.flatMap((part, index) =>
    people === 0
      ? []
      : [
          ...assignUnits(
            [...handsOf(part), ...(index === 0 ? [...own, ...absences(crew, people)] : [])],
            people,
            'least busy',
          ),
        ],
  );
  const given = new Map(cooks.map(([id, units]) => [id, fromOne(units)]));
  const byEvent = (kind: string) =>
    new Map(
      served.flatMap(({ plan: { input } }) => {
        const who = given.get(`${kind} ${input.id}`);
        return who ? [[input.id, who] as const] : [];
      }),
    );
  return {
    people,
    cooks: given,
    pieces: new Map(parts.flatMap((part) => [...piecesOf(part)])),
    packs: byEvent('pack'),
    loads: byEvent('load'),
  };
}

/** The same for the cooks at an event's place; nobody is named where it is not known how many are there. */
export function placeRota({ steps, cooks }: Pick<PlaceClock, 'steps' | 'cooks'>): Rota {
  const people = cooks ?? 0;
  const given = people === 0 ? [] : [...assignUnits(handsOf(steps), people, 'least busy')];
  return {
    people,
    cooks: new Map(given.map(([id, units]) => [id, fromOne(units)])),
    pieces: piecesOf(steps),
    packs: new Map(),
    loads: new Map(),
  };
}

function handsOf(steps: readonly TimedStep[]): Stint[] {
  return steps.map(({ id, begins, handsOff, hands, batch, step }) => ({
    id,
    from: begins,
    until: handsOff,
    amount: hands,
    near: [`recipe ${batch.recipe.id}`, `station ${step.station}`],
  }));
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
  const loaded = steps.flatMap((step) => (step.load ? [{ ...step, load: step.load }] : []));
  const kinds = Map.groupBy(loaded, ({ load }) => load.equipment.id);
  return new Map(
    [...kinds.values()].flatMap((own) => {
      const stints = own.map(({ id, handsOff, ends, load }) => ({
        id,
        from: handsOff,
        until: ends,
        amount: load.uses,
      }));
      return [...assignUnits(stints, 0, 'first')].map(([id, units]) => [id, fromOne(units)] as const);
    }),
  );
}

function fromOne(units: readonly number[]): number[] {
  return units.map((unit) => unit + 1);
}
