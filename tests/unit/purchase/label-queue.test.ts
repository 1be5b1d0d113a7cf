import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LeastFirst } from '../../../src/engine/purchase/label-queue.ts';

test('what was queued comes out the least first, whatever is queued between, and then nothing', () => {
  const moves = fc.array(fc.option(fc.integer({ min: 0, max: 20 }), { freq: 3 }), { maxLength: 60 });
  fc.assert(
    fc.property(moves, (each) => {
      const queue = new LeastFirst<number>((a, b) => a - b);
      let waiting: number[] = [];
      // A number is queued; null takes one out.
      for (const move of [...each, ...each.map(() => null), null]) {
        if (move === null) {
          const [least, ...others] = waiting.sort((a, b) => a - b);
          waiting = others;
          expect(queue.pop()).toBe(least);
        } else {
          waiting.push(move);
          queue.push(move);
        }
      }
    }),
    { numRuns: 300 },
  );
});
