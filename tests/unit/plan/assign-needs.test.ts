import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assignNeeds } from '../../../src/engine/plan/servings/assign-needs.ts';

const none = (rows: number, columns: number) =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, () => false));
const sum = (counts: readonly number[]) => counts.reduce((all, count) => all + count, 0);

describe('dishes given to guests with needs, within what was chosen', () => {
  test('a guest makes room who may have another dish as well', () => {
    // The first may have both dishes, the second only the first dish.
    const suits = [
      [true, true],
      [true, false],
    ];
    expect(assignNeeds([3, 3], [3, 3], suits, none(2, 2))).toEqual([
      [0, 3],
      [3, 0],
    ]);
    // With room for two elsewhere only two move, and one of the second has nothing.
    expect(assignNeeds([3, 3], [3, 2], suits, none(2, 2))).toEqual([
      [1, 2],
      [2, 0],
    ]);
    // No more move than there are to be fed.
    expect(assignNeeds([3, 1], [3, 3], suits, none(2, 2))).toEqual([
      [2, 1],
      [1, 0],
    ]);
  });

  test('room is made along a row of guests, and by those who have the dish alone', () => {
    const suits = [
      [true, true, false],
      [false, true, true],
      [true, false, false],
    ];
    expect(assignNeeds([2, 2, 2], [2, 2, 2], suits, none(3, 3))).toEqual([
      [0, 2, 0],
      [0, 0, 2],
      [2, 0, 0],
    ]);
  });

  test('what suits as it is goes before what is made separately', () => {
    expect(assignNeeds([4], [3, 5], [[true, false]], [[false, true]])).toEqual([[3, 1]]);
    expect(assignNeeds([2], [3, 5], [[true, false]], [[false, true]])).toEqual([[2, 0]]);
  });

  /*
   * Against the theorem of the largest flow and the smallest cut (Ford and Fulkerson, Canadian Journal of Mathematics
   * 8, 1956, cited from memory): so many can be fed as the least, over all sets of needs, of the guests outside the set and the room in
   * all dishes that anyone of the set may have.
   */
  test('feeds as many as can be, nobody what does not suit, and no dish beyond its number', () => {
    const table = fc.record({
      guests: fc.array(fc.nat(6), { minLength: 4, maxLength: 4 }),
      capacity: fc.array(fc.nat(6), { minLength: 3, maxLength: 3 }),
      suits: fc.array(fc.array(fc.boolean(), { minLength: 3, maxLength: 3 }), { minLength: 4, maxLength: 4 }),
      apart: fc.array(fc.array(fc.boolean(), { minLength: 3, maxLength: 3 }), { minLength: 4, maxLength: 4 }),
    });
    fc.assert(
      fc.property(table, ({ guests, capacity, suits, apart }) => {
        const mostFed = (allowed: readonly (readonly boolean[])[]) =>
          Math.min(
            ...Array.from({ length: 2 ** guests.length }, (_, set) => {
              const inside = (need: number) => ((set >> need) & 1) === 1;
              const outside = guests.filter((_, need) => !inside(need));
              const within = capacity.filter((_, dish) =>
                guests.some((_, need) => inside(need) && allowed[need]?.[dish]),
              );
              return sum(outside) + sum(within);
            }),
          );
        const both = suits.map((row, need) => row.map((yes, dish) => yes || apart[need]?.[dish] === true));
        const given = assignNeeds(guests, capacity, suits, apart);
        const fed = given.flatMap((row, need) => row.map((count, dish) => ({ need, dish, count })));
        for (const { need, dish, count } of fed) {
          expect(count).toBeGreaterThanOrEqual(0);
          if (count > 0) expect(both[need]?.[dish]).toBe(true);
        }
        for (const [need, row] of given.entries())
          expect(sum(row)).toBeLessThanOrEqual(guests[need] as number);
        for (const [dish, most] of capacity.entries())
          expect(sum(given.map((row) => row[dish] as number))).toBeLessThanOrEqual(most);
        expect(sum(given.flat())).toBe(mostFed(both));
        const asItIs = assignNeeds(guests, capacity, suits, none(4, 3));
        expect(sum(asItIs.flat())).toBe(mostFed(suits));
      }),
      { numRuns: 400 },
    );
  });
});
