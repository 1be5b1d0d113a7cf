import type { AmountText } from './food-document.ts';

export interface PlanPurchase {
  readonly ingredient: string;
  readonly name: string;
  readonly need: AmountText;
  readonly usedBy: readonly {
    readonly recipe: string;
    readonly need: AmountText;
    readonly why: readonly string[];
  }[];
  /** What of the need is taken from stock; null for nothing. */
  readonly stock: AmountText | null;
  readonly packs: readonly {
    readonly supplier: string;
    readonly supplierName: string;
    readonly pack: string;
    readonly itemNumber: string;
    readonly count: number;
    /** Price of one pack, money text. */
    readonly price: string;
    readonly cost: string;
  }[];
  readonly bought: AmountText | null;
  readonly left: AmountText | null;
  /** What is left over at the rate of the packs; null where nothing is. */
  readonly leftWorth: string | null;
  readonly cost: string | null;
  readonly why: readonly string[];
}

/** What is ordered from one supplier. */
export interface PlanOrder {
  readonly supplier: string;
  readonly name: string;
  readonly goods: string;
  readonly minimumOrder: string;
  readonly deliveryFee: string;
  /** Goods and delivery. */
  readonly total: string;
  readonly deliverOn: string;
  readonly deliverOnText: string;
  /** The last day to order, so that the goods are there when the first task needs them. */
  readonly orderBy: string;
  readonly orderByText: string;
  /** What is missing to the minimum order; empty when it is reached. */
  readonly short: string;
}
