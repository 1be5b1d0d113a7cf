import type { Day } from '../calendar/day.ts';
import { add, type Money, money, moneyText, subtract, sum } from '../money/money.ts';
import { orderDays } from './order-days.ts';
import type { PricedPack, Supplier } from './price-list.ts';

/** What is ordered from one supplier; all money as text at the minor unit. */
export interface SupplierOrder {
  readonly supplier: string;
  readonly name: string;
  /** Sum of the packs' costs, each rounded already. */
  readonly goods: string;
  readonly minimumOrder: string;
  readonly deliveryFee: string;
  /** Goods and fee. */
  readonly total: string;
  /** What the goods lack to the minimum order; empty when it is reached. */
  readonly short: string;
  /** The day of the first task that needs any of the goods. */
  readonly neededOn: Day;
  readonly deliverOn: Day;
  /** The last day to order for that delivery. */
  readonly orderBy: Day;
}

/** Purchases as far as orders go: packs, what each line of them costs, and when the food is first needed. */
export interface Purchased {
  readonly neededOn: Day;
  readonly packs: readonly { readonly pack: PricedPack; readonly cost: Money }[];
}

/**
 * Purchases by supplier, sorted by id: what the goods and the delivery come to, whether the minimum order is
 * reached, and when to order. A supplier that suppliers.yaml does not know is told by its id, without minimum or
 * fee, delivering on any day from the next one on.
 */
export function supplierOrders(
  purchases: readonly Purchased[],
  suppliers: ReadonlyMap<string, Supplier>,
  currency: string,
): SupplierOrder[] {
  const lines = purchases.flatMap(({ packs, neededOn }) => packs.map((each) => ({ ...each, neededOn })));
  return [...Map.groupBy(lines, ({ pack }) => pack.supplier)]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, own]) => {
      const supplier = suppliers.get(id);
      const goods = sum(
        own.map(({ cost }) => cost),
        currency,
      );
      const fee = money(supplier?.deliveryFee ?? '0', currency);
      const minimum = money(supplier?.minimumOrder ?? '0', currency);
      const short = subtract(minimum, goods);
      const neededOn = own.map((each) => each.neededOn).sort()[0] as Day;
      return {
        supplier: id,
        name: supplier?.name ?? id,
        goods: moneyText(goods),
        minimumOrder: moneyText(minimum),
        deliveryFee: moneyText(fee),
        total: moneyText(add(goods, fee)),
        short: short.amount.gt(0) ? moneyText(short) : '',
        neededOn,
        ...orderDays(supplier ?? { leadDays: 1, deliveryDays: [] }, neededOn),
      };
    });
}
