import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../src/engine/kitchen/kitchen.ts';
import { minutes } from '../../src/engine/measure/duration.ts';
import type { TimedStep } from '../../src/engine/plan/clock/clock-step.ts';
import type { DayClock } from '../../src/engine/plan/clock/day-clock.ts';
import type { Rota } from '../../src/engine/plan/clock/rota.ts';
import { scheduleOf } from '../../src/engine/plan/clock/schedule.ts';
import { planEvent } from '../../src/engine/plan/plan-event.ts';
import { FOOD_CODE_2022 } from '../../src/engine/safety/limits.ts';
import { day, dish, event, food, kitchen, line, prices, recipe, step } from '../unit/plan/builders.ts';

// A checker of its own: it looks at every minute and shares no code with what places the work.

const DATE = day('2027-05-15');
const STATIONS = ['cold', 'stove', 'oven'];
const beans = food('beans');

const cooked = fc.record({
  station: fc.nat(2),
  handsOn: fc.integer({ min: 0, max: 40 }),
  unattended: fc.integer({ min: 0, max: 50 }),
  rest: fc.constantFrom(0, 0, 10),
  skill: fc.constantFrom(undefined, undefined, 'pastry'),
});
const day1 = fc.record({
  dishes: fc.array(fc.array(cooked, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 5 }),
  hold: fc.constantFrom('hot', 'cold', 'room'),
  serve: fc.integer({ min: 12, max: 19 }),
});
const saturday = fc.record({
  events: fc.array(day1, { minLength: 1, maxLength: 2 }),
  people: fc.integer({ min: 1, max: 3 }),
  pastry: fc.nat(2),
  ovens: fc.integer({ min: 1, max: 2 }),
  vans: fc.integer({ min: 1, max: 2 }),
});

function clockOf({
  events,
  people,
  pastry,
  ovens,
  vans,
}: typeof saturday extends fc.Arbitrary<infer T> ? T : never) {
  const oven: Equipment = {
    id: 'oven',
    name: 'Oven',
    count: ovens,
    holds: [{ container: 'pan', count: 4 }],
    station: 'oven',
  };
  const plans = events.map(({ dishes, hold, serve }, at) => {
    const made = dishes.map((steps, index) =>
      recipe(`dish-${at}-${index}`, '1 gal', [line(beans, '1 lb')], {
        hold: hold as 'hot',
        steps: steps.map(({ station, handsOn, unattended, rest, skill }) =>
          step('on the day', 'Cook', {
            station: STATIONS[station]!,
            handsOn: minutes(handsOn),
            unattended: minutes(unattended),
            rest: minutes(rest),
            ...(skill && { skill }),
          }),
        ),
      }),
    );
    const guests = { adults: 16, children: 0, vendors: 0, staff: 0 };
    const away = { travel: minutes(20), setUp: minutes(60), service: minutes(120) };
    const input = event(
      made.map((each) => dish(each, '8 fl oz per guest')),
      { id: `event-${at}`, date: DATE, serveAt: `${serve}:00`, guests, away },
    );
    return planEvent(input, kitchen(), prices());
  });
  return scheduleOf(plans, {
    equipment: new Map([['oven', oven]]),
    vehicles: new Map([['van', { id: 'van', name: 'Van', count: vans }]]),
    containers: kitchen([['pan', '1 gal', '1']]).containers,
    crew: {
      people,
      each: minutes(600),
      from: '6:00',
      skills: new Map([['pastry', Math.min(pastry, people)]]),
    },
    day: { pack: minutes(30), load: minutes(20), clear: minutes(60), unload: minutes(30) },
    stations: new Map(STATIONS.map((id) => [id, id])),
    foodSafety: FOOD_CODE_2022,
  }).on(DATE);
}

/** What looks after itself is in the oven once hands are free, what does not while hands are at it. */
function goesIn({ step: { unattended }, begins, handsOff }: TimedStep): number {
  return unattended > 0 ? handsOff : begins;
}

function overfull({ steps, served }: DayClock, people: number, pastry: number, ovens: number): string[] {
  const found = new Set<string>();
  for (let minute = -1440; minute < 1440; minute++) {
    const working = steps.filter(({ begins, handsOff }) => begins <= minute && minute < handsOff);
    const trucks = served.filter(({ load }) => load.begins <= minute && minute < load.ends).length;
    const packers = served.filter(({ pack }) => pack.begins <= minute && minute < pack.ends).length;
    if (working.reduce((sum, { hands }) => sum + hands, trucks + packers) > people) found.add('hands');
    if (pastry > 0 && working.filter(({ step: { skill } }) => skill).length > pastry) found.add('pastry');
    for (const station of STATIONS)
      if (working.filter(({ step: { station: at } }) => at === station).length > 1) found.add(station);
    const baking = steps.filter((each) => each.load && goesIn(each) <= minute && minute < each.ends);
    if (baking.reduce((sum, { load }) => sum + load!.uses, 0) > ovens) found.add('ovens');
    if (trucks > 1) found.add('door');
  }
  return [...found];
}

/** Who is in two places at a minute, and which oven has two things in it; and whoever is named beyond the crew. */
function inTwoPlaces({ steps, served }: DayClock, rota: Rota): string[] {
  const found = new Set<string>();
  const twice = (what: string, all: readonly (number | undefined)[]) => {
    for (const [at, each] of all.entries()) if (all.indexOf(each) !== at) found.add(`${what} ${each}`);
  };
  for (let minute = -1440; minute < 1440; minute++) {
    const at = ({ begins, ends }: { begins: number; ends: number }) => begins <= minute && minute < ends;
    const busy = [
      ...steps.flatMap(({ id, begins, handsOff: ends }) =>
        at({ begins, ends }) ? [...(rota.cooks.get(id) ?? [])] : [],
      ),
      ...served.flatMap(({ plan, pack, load }) => [
        ...(at(pack) ? (rota.packs.get(plan.input.id) ?? []) : []),
        ...(at(load) ? (rota.loads.get(plan.input.id) ?? []) : []),
      ]),
    ];
    twice('cook', busy);
    twice(
      'oven',
      steps.flatMap((step) =>
        at({ begins: goesIn(step), ends: step.ends }) ? [...(rota.pieces.get(step.id) ?? [])] : [],
      ),
    );
  }
  return [...found];
}

/** Whether at some minute more vans are being loaded, on the road or at a place than there are. */
function lacksVans(served: DayClock['served'], vans: number): boolean {
  const day = Array.from({ length: 2880 }, (_, minute) => minute - 720);
  return day.some(
    (minute) =>
      served.filter(({ load, clock }) => load.begins <= minute && minute < clock.unloaded!).length > vans,
  );
}

function outOfOrder(steps: readonly TimedStep[], served: DayClock['served']): string[] {
  return steps.flatMap((each) => {
    const next = steps.find(({ batch, number }) => batch === each.batch && number === each.number + 1);
    const rest = each.step.rest ?? 0;
    if (next) return next.begins < each.ends + rest ? [`${each.batch.recipe.id} ${each.number}`] : [];
    const truck = served.find(({ plan }) =>
      each.batch.events.some((one) => one.plan.input.id === plan.input.id),
    );
    const last = each.batch.recipe.hold === 'hot' ? truck!.load.begins : truck!.load.begins - 15;
    return each.ends > last ? [`${each.batch.recipe.id} is late`] : [];
  });
}

describe('any day of any kitchen', () => {
  test('has no hands, skill, bench, oven or door over its number, nothing before its parts, nothing after its truck', () => {
    fc.assert(
      fc.property(saturday, (given) => {
        const { clock, findings } = clockOf(given);
        const placed = clock.steps.length;
        expect(placed).toBe(given.events.flatMap(({ dishes }) => dishes.flat()).length);
        if (clock.kept.resources)
          expect(overfull(clock, given.people, Math.min(given.people, given.pastry), given.ovens)).toEqual(
            [],
          );
        else expect(findings.some(({ kind }) => kind === 'clash')).toBe(true);
        const skilled = clock.steps.some(({ step: { skill }, handsFor }) => skill && handsFor > 0);
        const nobody = findings.some((each) => each.kind === 'clash' && each.clash.of.kind === 'skill');
        if (clock.kept.resources) expect(nobody).toBe(skilled && given.pastry === 0);
        expect(findings.some(({ kind }) => kind === 'vehicles')).toBe(lacksVans(clock.served, given.vans));
        expect(outOfOrder(clock.steps, clock.served)).toEqual([]);
        const packs = clock.served.map(({ pack }) => pack.begins);
        const first = Math.min(...clock.steps.map(({ begins }) => begins), ...packs);
        expect(findings.some(({ kind }) => kind === 'before crew')).toBe(first < 360);
      }),
      { numRuns: 60 },
    );
  });

  test('names as many cooks and ovens for each step as it takes, none of them in two places at a minute', () => {
    fc.assert(
      fc.property(saturday, (given) => {
        const { clock, rota } = clockOf(given);
        expect(inTwoPlaces(clock, rota)).toEqual([]);
        for (const each of clock.steps) {
          const { id, hands, handsOff, begins, load, ends } = each;
          expect(rota.cooks.get(id)?.length ?? 0).toBe(handsOff > begins ? hands : 0);
          expect(rota.pieces.get(id)?.length ?? 0).toBe(load && ends > goesIn(each) ? load.uses : 0);
        }
        if (!clock.kept.resources) return;
        for (const { id, step: asked, handsFor } of clock.steps)
          if (asked.skill && handsFor > 0 && rota.skills.size > 0)
            expect(rota.cooks.get(id)?.some((cook) => rota.skills.get(cook)?.includes('pastry'))).toBe(true);
        const named = [...rota.cooks, ...rota.packs, ...rota.loads].flatMap(([, who]) => [...who]);
        expect(Math.max(0, ...named)).toBeLessThanOrEqual(given.people);
        const ovens = [...rota.pieces].flatMap(([, pieces]) => [...pieces]);
        expect(Math.max(0, ...ovens)).toBeLessThanOrEqual(given.ovens);
      }),
      { numRuns: 40 },
    );
  });

  test('is the same each time it is worked out', () => {
    fc.assert(
      fc.property(saturday, (given) => {
        const times = () => clockOf(given).clock.steps.map(({ id, begins }) => [id, begins]);
        expect(times()).toEqual(times());
      }),
      { numRuns: 10 },
    );
  });

  test('that fits with its people, what they can do, ovens and vans also fits with more', () => {
    fc.assert(
      fc.property(saturday, (given) => {
        const fits = (more: number) => {
          const { kept } = clockOf({
            ...given,
            people: given.people + more,
            // Nobody with a skill is no shortage of them: all do it. The first one is.
            pastry: given.pastry === 0 ? 0 : given.pastry + more,
            ovens: given.ovens + more,
            vans: given.vans + more,
          }).clock;
          return kept.vehicles && kept.hours && kept.resources;
        };
        if (fits(0)) expect(fits(1)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});
