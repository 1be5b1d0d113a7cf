import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spanOf, timeWork, type Work } from '../../../src/engine/plan/days/work-day.ts';

const work = (
  id: string,
  station: string,
  handsOn: number,
  unattended = 0,
  facts: Partial<Work> = {},
): Work => ({
  id,
  station,
  handsOn,
  unattended,
  after: [],
  ...facts,
});

const times = (works: readonly Work[], people?: number) =>
  timeWork(works, people).map(({ work: { id }, begins, handsOff, ends }) => [id, begins, handsOff, ends]);

describe('a day’s work in order of time', () => {
  test('a station’s hands go on with the next task while the first looks after itself', () => {
    expect(times([work('stock', 'stove', 20, 180), work('onions', 'stove', 15)])).toEqual([
      ['stock', 0, 20, 200],
      ['onions', 20, 35, 35],
    ]);
  });

  test('a step waits for what it is made from, and another task fills the gap', () => {
    const dough = work('dough', 'bakery', 15, 75);
    const shape = work('shape', 'bakery', 20, 45, { after: ['dough'] });
    const torte = work('torte', 'bakery', 60);
    // 15 + 75 = 90: the torte’s hour fits in between, from 15 to 75.
    expect(times([dough, shape, torte])).toEqual([
      ['dough', 0, 15, 90],
      ['shape', 90, 110, 155],
      ['torte', 15, 75, 75],
    ]);
  });

  test('two people do no more than two things at once, however many stations there are', () => {
    const all = ['a', 'b', 'c'].map((id) => work(id, id, 30));
    expect(times(all, 2)).toEqual([
      ['a', 0, 30, 30],
      ['b', 0, 30, 30],
      ['c', 30, 60, 60],
    ]);
  });

  test('an oven that is taken keeps the next food out until it is free, not the hands before it goes in', () => {
    const oven = (uses: number) => ({ id: 'oven', count: 2, uses });
    const braise = work('braise', 'ovens', 10, 120, { gear: oven(2) });
    const bread = work('bread', 'bakery', 20, 18, { gear: oven(1) });
    // Both ovens are taken from 10 to 130; 20 minutes of hands-on before that begin at 110.
    expect(times([braise, bread])).toEqual([
      ['braise', 0, 10, 130],
      ['bread', 110, 130, 148],
    ]);
  });

  test('no station does two things at once, nothing begins before what it waits for, and no oven is shared out twice', () => {
    const step = fc.record({
      station: fc.constantFrom('cold', 'stove', 'ovens'),
      handsOn: fc.integer({ min: 0, max: 60 }),
      unattended: fc.integer({ min: 0, max: 120 }),
      uses: fc.integer({ min: 0, max: 2 }),
      waits: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 1, maxLength: 14 }),
        fc.integer({ min: 1, max: 4 }),
        (steps, people) => {
          const works = steps.map(({ station, handsOn, unattended, uses, waits }, index) =>
            work(String(index), station, handsOn, unattended, {
              after: waits && index > 0 ? [String(index - 1)] : [],
              gear: uses > 0 ? { id: 'oven', count: 2, uses } : undefined,
            }),
          );
          const timed = timeWork(works, people);
          const at = (minute: number, from: 'begins' | 'handsOff', to: 'handsOff' | 'ends') =>
            timed.filter((each) => each[from] <= minute && minute < each[to]);
          for (const each of timed) {
            for (const id of each.work.after)
              expect(each.begins).toBeGreaterThanOrEqual(timed[Number(id)]!.ends);
            const busy = at(each.begins, 'begins', 'handsOff');
            expect(busy.length).toBeLessThanOrEqual(people);
            expect(
              busy.filter(({ work: { station } }) => station === each.work.station).length,
            ).toBeLessThanOrEqual(1);
            const ovens = at(each.handsOff, 'handsOff', 'ends').reduce(
              (sum, { work: { gear } }) => sum + (gear?.uses ?? 0),
              0,
            );
            expect(ovens).toBeLessThanOrEqual(2);
          }
          expect(spanOf(timed)).toBe(Math.max(...timed.map(({ ends }) => ends)));
        },
      ),
      { numRuns: 60 },
    );
  });
});
