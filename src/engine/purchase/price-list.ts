import type { Day } from '../calendar/day.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { Decimal } from '../money/decimal.ts';

/** Who sells: how soon they deliver, and what an order must come to. Money as decimal text. */
export interface Supplier {
  readonly id: string;
  readonly name: string;
  readonly leadDays: number;
  /** 0 Sunday … 6 Saturday; empty = every day. */
  readonly deliveryDays: readonly number[];
  readonly minimumOrder: string;
  readonly deliveryFee: string;
}

/**
 * A pack as a price list offers it. A fixed pack has a price; goods sold by weight come in pieces of about
 * a weight, and their price is the weight's.
 */
export interface PricedPack {
  readonly supplier: string;
  readonly ingredient: string;
  /** As the list writes it: `50 lb sack`, `6 x 1 can`, `about 12 lb piece`. */
  readonly packText: string;
  /** What is in one pack (for a piece: the weight it is about). */
  readonly contents: Quantity;
  /** True for pieces of about a weight, priced by weight. */
  readonly aboutWeight: boolean;
  /** Price of one pack (a piece: its about-weight × the weight's price), exact, unrounded. */
  readonly price: Decimal;
  readonly itemNumber: string;
  readonly validFrom: Day;
}

/** All packs on offer by ingredient, every price ever listed; `packsOn` picks those valid on a day. */
export type PriceList = ReadonlyMap<string, readonly PricedPack[]>;
