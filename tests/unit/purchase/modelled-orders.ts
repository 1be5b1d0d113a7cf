import Fraction from 'fraction.js';
import type { ModelFood, OrderModel } from '../../../src/engine/purchase/order-model.ts';
import { type OrderCounts, type WeighedOrder, weighOrder } from '../../../src/engine/purchase/weigh-order.ts';
import { pack } from '../plan/builders.ts';

/** A pack of a modelled food, and how often it may be bought, with what may be left over. */
export type Sold = readonly [supplier: number, size: bigint, cost: bigint, most: bigint, room?: bigint];

/** A food of a model in pounds, its packs at so many steps each. */
export function modelFood(ingredient: string, need: string, sold: readonly Sold[]): ModelFood {
  const exactNeed = new Fraction(need);
  return {
    ingredient,
    unit: 'lb',
    measure: new Fraction(1n),
    exactNeed,
    need: exactNeed.ceil().n,
    packs: sold.map(([supplier, size, cost, most, room]) => ({
      pack: pack(ingredient, `${size} lb`, '1.00', {
        supplier: ['alder', 'birch'][supplier] as string,
      }),
      supplier,
      size,
      cost,
      most,
      room,
    })),
  };
}

/** An order from two suppliers: alder wants 30 steps at least; a second supplier is charged 3. */
export const model = (foods: readonly ModelFood[], facts: Partial<OrderModel> = {}): OrderModel => ({
  foods,
  suppliers: [
    { id: 'alder', fee: 5n, minimum: 30n },
    { id: 'birch', fee: 7n, minimum: 0n },
  ],
  step: new Fraction(1n, 2n),
  further: 3n,
  ...facts,
});

/** Alder: bags of 2 for 8; birch: sacks of 5 for 18, of which no more than 2 may be left. Oil from alder alone. */
export const two = model([
  modelFood('flour', '9/2', [
    [0, 2n, 8n, 4n, 3n],
    [1, 5n, 18n, 2n, 2n],
  ]),
  modelFood('oil', '1', [[0, 1n, 20n, 2n]]),
]);
export const weighed = (counts: OrderCounts, of = two) => weighOrder(of, counts) as WeighedOrder;
