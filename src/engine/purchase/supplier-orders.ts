import { type Money, money, moneyText, subtract, sum } from '../money/money.ts';
import type { PricedPack, Supplier } from './price-list.ts';

/** What is ordered from one supplier; all money as text at the minor unit. */
export interface SupplierOrder {
  readonly supplier: string;
  readonly name: string;
  /** Sum of the packs' costs, each rounded already. */
  readonly goods: string;
  readonly minimumOrder: string;
  readonly deliveryFee: string;
  /** What the goods lack to the minimum order; empty when it is reached. */
  readonly short: string;
}

/** Purchases as far as orders go: packs and what each line of them costs. */
export interface Purchased {
  readonly purchases: readonly {
    readonly packs: readonly { readonly pack: PricedPack; readonly cost: Money }[];
  }[];
}

/** Whom to order from. */
export interface Suppliers {
  readonly suppliers: ReadonlyMap<string, Supplier>;
  readonly kitchen: { readonly currency: string };
}

/**
 * The purchases of a plan by supplier, sorted by id: what the goods come to, and whether the minimum order is
 * reached. A supplier that suppliers.yaml does not know is told by its id, without minimum or fee.
 */
export function supplierOrders({ purchases }: Purchased, { suppliers, kitchen }: Suppliers): SupplierOrder[] {
  const costs = new Map<string, Money[]>();
  for (const { pack, cost } of purchases.flatMap(({ packs }) => packs)) {
    costs.set(pack.supplier, [...(costs.get(pack.supplier) ?? []), cost]);
  }
  return [...costs]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, lines]) => {
      const supplier = suppliers.get(id);
      const goods = sum(lines, kitchen.currency);
      const minimum = money(supplier?.minimumOrder ?? '0', kitchen.currency);
      const short = subtract(minimum, goods);
      return {
        supplier: id,
        name: supplier?.name ?? id,
        goods: moneyText(goods),
        minimumOrder: moneyText(minimum),
        deliveryFee: moneyText(money(supplier?.deliveryFee ?? '0', kitchen.currency)),
        short: short.amount.gt(0) ? moneyText(short) : '',
      };
    });
}
