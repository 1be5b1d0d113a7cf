import { expect, test } from 'vitest';
import { severalAtOnce } from '../../../src/build/several-at-once.ts';

const soon = () => new Promise((done) => setImmediate(done));

test('items are begun in their order, never more than so many of them under way', async () => {
  const begun: number[] = [];
  let underWay = 0;
  let most = 0;
  await severalAtOnce([5, 1, 4, 2, 3], 2, async (item) => {
    begun.push(item);
    underWay += 1;
    most = Math.max(most, underWay);
    for (let turn = 0; turn < item; turn += 1) await soon();
    underWay -= 1;
  });
  expect([begun, most, underWay]).toEqual([[5, 1, 4, 2, 3], 2, 0]);
});

test('after a failure no other is begun, and it is thrown when nothing is under way any more', async () => {
  const begun: number[] = [];
  const ended: number[] = [];
  const all = severalAtOnce([1, 2, 3, 4], 2, async (item) => {
    begun.push(item);
    if (item === 1) throw new Error('the first failed');
    await soon();
    await soon();
    ended.push(item);
  });
  await expect(all).rejects.toThrow('the first failed');
  expect([begun, ended]).toEqual([[1, 2], [2]]);
});
