import { describe, expect, test } from 'vitest';
import { searchSupplierSets } from '../../../src/engine/purchase/supplier-sets.ts';
import { model, modelFood, type Sold, two } from './modelled-orders.ts';

describe('the sets of suppliers', () => {
  test('are proven best where no minimum presses, and the dearer set is not taken', () => {
    const free = model(two.foods, {
      suppliers: [
        { id: 'alder', fee: 5n, minimum: 0n },
        { id: 'birch', fee: 0n, minimum: 0n },
      ],
    });
    // Alone 24 + 20 + 5 = 49, with birch 18 + 20 + 5 + 3 = 46.
    const both = searchSupplierSets(free);
    expect([both.best?.cost, both.bound, both.proven]).toEqual([46n, 46n, true]);
    const dearer = searchSupplierSets({ ...free, further: 7n });
    expect([dearer.best?.cost, dearer.bound, dearer.proven]).toEqual([49n, 49n, true]);
  });

  test('leave it open where the cheapest falls short of a minimum', () => {
    // With birch 46 but alder's 20 are below 30; alone 49.
    const pressed = model(two.foods, {
      suppliers: [
        { id: 'alder', fee: 5n, minimum: 30n },
        { id: 'birch', fee: 0n, minimum: 0n },
      ],
    });
    const found = searchSupplierSets(pressed);
    expect([found.best?.cost, found.best?.below, found.bound, found.proven]).toEqual([49n, [], 46n, false]);
  });

  test('are proven best although a dearer set falls short of a minimum', () => {
    // Alone 49; with birch 18 + 20 + 5 + 9 = 52, below alder's minimum.
    const dearer = model(two.foods, {
      suppliers: [
        { id: 'alder', fee: 5n, minimum: 30n },
        { id: 'birch', fee: 0n, minimum: 0n },
      ],
      further: 9n,
    });
    const found = searchSupplierSets(dearer);
    expect([found.best?.cost, found.bound, found.proven]).toEqual([49n, 49n, true]);
  });

  test('prove nothing of a set that falls short and costs as much', () => {
    // Both 49: the larger set, 18 + 20 + 5 + 6, is below alder's minimum.
    const tied = model(two.foods, {
      suppliers: [
        { id: 'alder', fee: 5n, minimum: 30n },
        { id: 'birch', fee: 0n, minimum: 0n },
      ],
      further: 6n,
    });
    const found = searchSupplierSets(tied);
    expect([found.best?.cost, found.best?.below, found.bound, found.proven]).toEqual([49n, [], 49n, false]);
  });

  test('prove nothing where the cover of a food is not proven, and bound it by what that leaves open', () => {
    // Sizes without a common measure that nearly tie in rate: the search for a cover stops at its limit.
    const sizes = [22_679_618_501n, 11_339_809_259n, 10_000_000_007n, 5_000_000_029n, 4_535_923_703n];
    const sold = [...sizes, 2_000_000_011n].map((size, at): Sold => [0, size, size + BigInt(at), 10_000n]);
    const free = [{ id: 'alder', fee: 5n, minimum: 0n }];
    const flour = modelFood('flour', '4535923700000', sold);
    const found = searchSupplierSets(
      model([flour, modelFood('oil', '1', [[0, 1n, 20n, 2n]])], { suppliers: free }),
    );
    expect(found.proven).toBe(false);
    expect(found.bound).toBeLessThan(found.best?.cost ?? 0n);
  });

  test('are one where there are too many to go through, and then bound the packs alone', () => {
    const suppliers = Array.from({ length: 9 }, (_, at) => ({ id: `s${at}`, fee: 4n, minimum: 0n }));
    const many = model(
      [
        modelFood('flour', '4', [
          [0, 2n, 8n, 4n],
          [1, 2n, 7n, 4n],
        ]),
      ],
      { suppliers },
    );
    const found = searchSupplierSets(many);
    // Two packs at 7 and a fee of 4.
    expect([found.best?.cost, found.bound, found.proven]).toEqual([18n, 14n, false]);
    const few = searchSupplierSets({ ...many, suppliers: suppliers.slice(0, 8) });
    expect([few.best?.cost, few.bound, few.proven]).toEqual([18n, 18n, true]);
  });

  test('find nothing to buy in an order of nothing', () => {
    expect(searchSupplierSets(model([], { suppliers: [] }))).toEqual({
      best: undefined,
      bound: 0n,
      proven: true,
    });
  });
});
