import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { minutes } from '../../src/engine/measure/duration.ts';
import { parseHeldTemperature } from '../../src/engine/measure/temperature.ts';
import { must, step } from '../unit/plan/builders.ts';
import { clock, hot, planned } from '../unit/plan/clock/clocked.ts';

const cookTo = must(parseHeldTemperature('165 °F'));
const kitchenDay = fc.record({
  pots: fc.array(
    fc.record({ handsOn: fc.integer({ min: 5, max: 40 }), chill: fc.integer({ min: 60, max: 360 }) }),
    { minLength: 1, maxLength: 5 },
  ),
  gallons: fc.integer({ min: 1, max: 4 }),
  holds: fc.integer({ min: 1, max: 3 }),
  chills: fc.integer({ min: 30, max: 180 }),
  count: fc.nat(2),
  from: fc.constantFrom('2:00', '5:00', '6:00'),
  ahead: fc.boolean(),
});
type KitchenDay = typeof kitchenDay extends fc.Arbitrary<infer T> ? T : never;

function clockOf({ pots, gallons, holds, chills, count, from, ahead }: KitchenDay) {
  const made = pots.map(({ handsOn, chill }, at) =>
    hot(`pot-${at}`, [step('on the day', 'Boil', { handsOn: minutes(handsOn), cookTo })], {
      hold: 'cold',
      chill: minutes(chill),
      pack: { chill: { container: 'pan', each: undefined } },
      ...(ahead &&
        at === 0 && { steps: [step('the day before', 'Boil', { handsOn: minutes(handsOn), cookTo })] }),
    }),
  );
  const guests = { adults: gallons * 16, children: 0, vendors: 0, staff: 0 };
  const chiller = {
    id: 'chiller',
    name: 'Chiller',
    count,
    holds: [{ container: 'pan', count: holds }],
    chills: minutes(chills),
    station: undefined,
  };
  return clock([planned('lunch', made, { guests })], {
    crew: { people: 2, from },
    equipment: count > 0 ? [chiller] : [],
  });
}

/** What a day keeps, the first thing to be let go of last. */
function keeps({ kept }: ReturnType<typeof clockOf>): number {
  return Number(kept.resources) * 4 + Number(kept.hours) * 2 + Number(kept.quality);
}

describe('any day of a kitchen with equipment that chills', () => {
  test('has no more in it at any minute than there is, and every stage of cooling within the Food Code’s time', () => {
    fc.assert(
      fc.property(kitchenDay, (given) => {
        const { steps, served } = clockOf(given);
        for (const { ends, coldBy, cooledTo } of steps) {
          expect(coldBy! - ends).toBeLessThanOrEqual(360);
          expect(cooledTo!.at - ends).toBeLessThanOrEqual(120);
          expect(coldBy!).toBeLessThanOrEqual(served[0]!.pack.ends - 15);
        }
        for (let minute = -1440; minute < 1440; minute++) {
          const inIt = steps.filter(
            ({ cools, ends, coldBy }) => cools!.chiller && ends <= minute && minute < coldBy!,
          );
          const pieces = inIt.reduce((sum, { cools }) => sum + cools!.chiller!.uses, 0);
          expect(pieces).toBeLessThanOrEqual(given.count);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('tells what it has no room for, and only that', () => {
    fc.assert(
      fc.property(kitchenDay, (given) => {
        const { steps, findings } = clockOf(given);
        const told = findings.flatMap((each) => (each.kind === 'chiller' ? each.recipes : []));
        const chilled = steps.flatMap(({ cools, batch }) => (cools!.chiller ? [batch.recipe.name] : []));
        const loads = Math.ceil(given.gallons / (given.count * given.holds));
        const sooner = steps
          .filter(({ batch }) => batch.recipe.chill! > loads * given.chills)
          .map(({ batch }) => batch.recipe.name);
        expect([...told, ...chilled].sort()).toEqual(given.count > 0 ? sooner.sort() : []);
      }),
      { numRuns: 60 },
    );
  });

  test('fits whatever fits without it, and with one more', () => {
    fc.assert(
      fc.property(kitchenDay, (given) => {
        const without = keeps(clockOf({ ...given, count: 0 }));
        const some = keeps(clockOf({ ...given, count: 1 }));
        expect(some).toBeGreaterThanOrEqual(without);
        expect(keeps(clockOf({ ...given, count: 2 }))).toBeGreaterThanOrEqual(some);
      }),
      { numRuns: 40 },
    );
  });
});
