import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../src/engine/kitchen/kitchen.ts';
import { minutes } from '../../src/engine/measure/duration.ts';
import { parseHeldTemperature } from '../../src/engine/measure/temperature.ts';
import { must, step } from '../unit/plan/builders.ts';
import { bake, clock, hot, planned } from '../unit/plan/clock/clocked.ts';

const cookTo = must(parseHeldTemperature('165 °F'));
const food = fc.record({
  at: fc.constantFrom('stove', 'oven', 'bench'),
  container: fc.constantFrom('pan', 'tray', 'box'),
  handsOn: fc.integer({ min: 5, max: 40 }),
});
const kitchenDay = fc.record({
  trucks: fc.array(
    fc.record({
      serveAt: fc.constantFrom('11:30', '12:30', '13:00', '14:15'),
      gallons: fc.integer({ min: 1, max: 3 }),
      foods: fc.array(food, { minLength: 1, maxLength: 3 }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  people: fc.integer({ min: 1, max: 3 }),
  pans: fc.integer({ min: 1, max: 5 }),
  trays: fc.integer({ min: 1, max: 3 }),
});
type KitchenDay = typeof kitchenDay extends fc.Arbitrary<infer T> ? T : never;
type Food = KitchenDay['trucks'][number]['foods'][number];

function dishOf(id: string, { at, container, handsOn }: Food) {
  const facts = { pack: { carry: { container, each: undefined } }, stands: minutes(240) };
  if (at === 'oven') return bake(id, facts);
  if (at === 'stove')
    return hot(id, [step('on the day', 'Fry', { station: 'stove', handsOn: minutes(handsOn) })], facts);
  const boil = step('on the day', 'Boil', { station: 'cold', handsOn: minutes(handsOn), cookTo });
  return hot(id, [boil], { ...facts, stands: undefined, hold: 'cold', chill: minutes(90) });
}

/** No equipment holds a box: what is in one waits elsewhere and is counted by nobody. */
function clockOf({ trucks, people, pans, trays }: KitchenDay, count: number) {
  const gear = (keeps: 'hot' | 'cold'): Equipment => ({
    id: keeps,
    name: keeps,
    count,
    holds: [
      { container: 'pan', count: pans },
      { container: 'tray', count: trays },
    ],
    keeps,
    station: undefined,
  });
  const plans = trucks.map(({ serveAt, gallons, foods }, at) =>
    planned(
      `event-${at}`,
      foods.map((each, index) => dishOf(`dish-${at}-${index}`, each)),
      { serveAt, guests: { adults: gallons * 16, children: 0, vendors: 0, staff: 0 } },
      [
        ['pan', '1 gal', '1'],
        ['tray', '1 gal', '1'],
        ['box', '1 gal', '1'],
      ],
    ),
  );
  return clock(plans, {
    crew: { people, from: '3:00' },
    equipment: count > 0 ? [gear('hot'), gear('cold')] : [],
  });
}

/** How much of the space is taken at a minute, in shares of 30: counted here from the steps, not from what the clock says. */
function takenAt(
  minute: number,
  keeps: 'hot' | 'cold',
  { trucks, pans, trays }: KitchenDay,
  day: ReturnType<typeof clockOf>,
) {
  const each = { pan: 30 / pans, tray: 30 / trays, box: 0 };
  return trucks
    .flatMap(({ gallons, foods }, at) =>
      foods.map(({ container, at: station }, index) => {
        const own = day.steps.filter(({ batch }) => batch.recipe.id === `dish-${at}-${index}`);
        const ready = Math.max(...own.map(({ ends, coldBy }) => coldBy ?? ends));
        const load = day.served[at]!.load.begins;
        const isIn = (station === 'bench') === (keeps === 'cold') && ready <= minute && minute < load;
        return isIn ? gallons * each[container as keyof typeof each] : 0;
      }),
    )
    .reduce((sum, one) => sum + one, 0);
}

const EPSILON = 1e-9;
const kinds = ['hot', 'cold'] as const;
const holding = ({ findings }: ReturnType<typeof clockOf>) =>
  findings.flatMap((each) => (each.kind === 'holding' ? [each] : []));

describe('any day of a kitchen that says what keeps food hot and cold', () => {
  test('has more in it than it holds at just the minutes that a finding names', () => {
    fc.assert(
      fc.property(kitchenDay, (given) => {
        const day = clockOf(given, 1);
        for (const keeps of kinds)
          for (let minute = -600; minute < 1000; minute++) {
            const named = holding(day).some(
              (each) => each.keeps === keeps && each.from <= minute && minute < each.until,
            );
            expect(takenAt(minute, keeps, given, day) > 30 + EPSILON).toBe(named);
          }
      }),
      { numRuns: 1500 },
    );
  });

  test('is no worse with more of it, nor in anything else than without any', () => {
    fc.assert(
      fc.property(kitchenDay, (given) => {
        const [none, one, two, many] = [0, 1, 2, 40].map((count) => clockOf(given, count));
        const most = (day: ReturnType<typeof clockOf>, count: number) =>
          kinds.reduce((sum, keeps) => {
            const shares = holding(day).filter((each) => each.keeps === keeps);
            return sum + Math.max(0, ...shares.map(({ share }) => (share.valueOf() - 1) * count));
          }, 0);
        expect(most(many!, 40)).toBe(0);
        if (holding(one!).length === 0) expect(holding(two!)).toEqual([]);
        expect(many!.shown).toEqual(none!.shown);
        const kindsOf = (day: ReturnType<typeof clockOf>) =>
          day.findings.map(({ kind }) => kind).filter((kind) => kind !== 'holding');
        for (const day of [one!, two!]) {
          expect(kindsOf(day).length).toBeLessThanOrEqual(kindsOf(none!).length);
          expect(day.kept).toEqual(none!.kept);
          expect(day.steps.map(({ id }) => id)).toEqual(none!.steps.map(({ id }) => id));
          expect(Math.min(...day.steps.map(({ begins }) => begins))).toBeGreaterThanOrEqual(
            Math.min(...none!.steps.map(({ begins }) => begins)),
          );
        }
      }),
      { numRuns: 1500 },
    );
  });
});
