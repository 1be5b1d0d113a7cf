import fc from 'fast-check';
import { expect, test } from 'vitest';
import { searchPressedOrder } from '../../src/engine/purchase/pressed-order.ts';
import { settleOrder } from '../../src/engine/purchase/settle-order.ts';
import { searchSupplierSets } from '../../src/engine/purchase/supplier-sets.ts';
import { weighOrder } from '../../src/engine/purchase/weigh-order.ts';
import { bruteForce, cases, modelOf, pressing, weightOf } from './every-order.ts';

test('the exact search alone, from any order that reaches the minimums, finds the same order and proves it', () => {
  let searched = 0;
  fc.assert(
    fc.property(fc.oneof(cases, pressing), (each) => {
      const model = modelOf(each);
      const counts = model.foods.map(({ packs }) => packs.map(({ most }) => Number(most)));
      const known = searchSupplierSets(model).best ?? weighOrder(model, counts);
      const best = bruteForce(each);
      // An order that falls short by more suppliers than the best says nothing of how few fall short.
      if (!known || known.below.length !== best[0]) return;
      searched += 1;
      const exact = searchPressedOrder(model, known);
      expect(exact?.complete).toBe(true);
      const nothing = { best: known, proven: false, bound: 0n };
      const order = settleOrder(model, nothing, { orders: [], bound: undefined, below: best[0] }, exact);
      expect(order.gap.toFixed()).toBe('0');
      expect(weightOf(each, order)).toEqual(best);
    }),
    { numRuns: 150 },
  );
  expect(searched).toBeGreaterThan(60);
});
