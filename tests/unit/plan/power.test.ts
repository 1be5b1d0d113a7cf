/* Current at the place, by amperes at once on each circuit: worked by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../../src/engine/kitchen/kitchen.ts';
import type { Brought } from '../../../src/engine/plan/load/brought.ts';
import { powerPlan } from '../../../src/engine/plan/load/power.ts';

const gear = (
  name: string,
  amperes: number | undefined,
  from: number,
  until: number,
  count = 1,
): Brought => ({
  equipment: { id: name, name, ...(amperes !== undefined && { amperes }) } as Equipment,
  count,
  lit: { from, until },
});
const on = (count: number, amperes: number) => ({ count, amperes });
const names = (plan: ReturnType<typeof powerPlan>) =>
  plan?.circuits.map(({ pieces }) => pieces.map(({ name }) => name).join('+'));

describe('circuits', () => {
  test('carry what is lit at the same time, the largest first', () => {
    // 13 + 5 = 18 A on the first 20 A circuit; 10 A on the second, with 9 A once that is off: never 19 A at once.
    const plan = powerPlan(
      [gear('fryer', 13, 0, 100), gear('urn', 10, 0, 60), gear('lamp', 5, 0, 100), gear('box', 9, 60, 100)],
      [on(2, 20)],
    );
    expect(names(plan)).toEqual(['fryer+lamp', 'urn+box']);
    expect(plan).toMatchObject({ stated: true, off: [], most: 28, lacking: 0 });
    expect(plan?.circuits.map(({ most }) => most)).toEqual([18, 10]);
  });

  test('leave off what none of them carries, and what would carry that', () => {
    const plan = powerPlan([gear('range', 13, 0, 100, 3), gear('urn', 8, 50, 100)], [on(1, 20), on(1, 15)]);
    // 13 on each; of the third range and the urn, 8 A more fit on neither, and both at once are 21 A.
    expect(plan?.off.map(({ name }) => name)).toEqual(['range', 'urn']);
    expect([plan?.most, plan?.lacking]).toEqual([47, 21]);
    const none = powerPlan([gear('urn', 8, 0, 60)], []);
    expect([none?.stated, none?.off.length, none?.lacking]).toEqual([true, 1, 8]);
    expect(powerPlan([gear('urn', 8, 0, 60)], undefined)).toMatchObject({ stated: false, most: 8 });
  });

  test('are tried in other ways before anything is said to be off', () => {
    // Largest first on 10 and 12: 7 on the one, 6 + 5 on the other, and 4 is over. 6 + 4 and 7 + 5 fit.
    const only = [7, 6, 5, 4].map((amperes, index) => gear(`o${index}`, amperes, 0, 10));
    const plan = powerPlan(only, [on(1, 12), on(1, 10)]);
    expect([names(plan), plan?.off]).toEqual([['o0+o2', 'o1+o3'], []]);
    const turned = powerPlan(only, [on(1, 10), on(1, 12)]);
    expect([names(turned), turned?.off]).toEqual([['o1+o3', 'o0+o2'], []]);
  });

  test('say where three hours at 125 % would be too much', () => {
    // 13 × 1.25 = 16.25, above 16 and below 20; two hours count as they are.
    const lasting = (minutes: number, amperes: number) =>
      powerPlan([gear('range', 13, 0, minutes)], [on(1, amperes)])?.circuits[0]?.lasting;
    expect([lasting(180, 16), lasting(179, 16), lasting(180, 20)]).toEqual([true, false, false]);
  });

  test('carry work of which nobody has stated how long it takes', () => {
    const plan = powerPlan([gear('range', 13, 600, 600, 2)], [on(1, 20)]);
    expect([plan?.most, plan?.off.length]).toEqual([26, 1]);
  });

  test('are asked for by nothing that draws no current', () => {
    expect(powerPlan([gear('grill', undefined, 0, 60)], [on(1, 20)])).toBeUndefined();
    expect(powerPlan([], undefined)).toBeUndefined();
  });

  test('of thousandths add up without losing any', () => {
    // 0.1 + 0.2 is no more than 0.3.
    expect(powerPlan([gear('a', 0.1, 0, 9), gear('b', 0.2, 0, 9)], [on(1, 0.3)])?.off).toEqual([]);
  });

  test('never carry more than they can at any minute, and lose no piece', () => {
    const piece = fc.record({
      amperes: fc.integer({ min: 1, max: 16 }),
      from: fc.integer({ min: 0, max: 50 }),
      takes: fc.integer({ min: 1, max: 50 }),
      count: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(
        fc.array(piece, { minLength: 1, maxLength: 5 }),
        fc.array(fc.integer({ min: 1, max: 32 }), { maxLength: 3 }),
        (pieces, carry) => {
          const brought = pieces.map(({ amperes, from, takes, count }, index) =>
            gear(`p${index}`, amperes, from, from + takes, count),
          );
          const plan = powerPlan(
            brought,
            carry.map((amperes) => on(1, amperes)),
          )!;
          for (const { amperes, pieces: there, most } of plan.circuits) {
            for (let minute = 0; minute < 100; minute += 1) {
              const drawn = there
                .filter(({ from, until }) => from <= minute && minute < until)
                .reduce((sum, each) => sum + each.amperes, 0);
              expect(drawn).toBeLessThanOrEqual(most);
            }
            expect(most).toBeLessThanOrEqual(amperes);
          }
          const placed = plan.circuits.reduce((sum, each) => sum + each.pieces.length, 0);
          expect(placed + plan.off.length).toBe(pieces.reduce((sum, { count }) => sum + count, 0));
        },
      ),
    );
  });
});
