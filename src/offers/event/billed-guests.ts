import { rateOf } from '../../engine/money/rate.ts';
import { atTable, type Guests } from '../../engine/quote/counts.ts';

/**
 * The fewest guests at the table that are billed: the contract's share of the accepted count, up to a whole guest.
 * `floorRate` is a rate as terms keep it, `90 %`.
 */
export function floorCount(floorRate: string, accepted: Guests): number {
  return rateOf(floorRate).times(atTable(accepted)).ceil().toNumber();
}

/**
 * For whom the client is billed: at the table the larger of guaranteed and served, never under the floor, and of
 * each other group the larger of the two. Guests missing to that number are children (whose price is the lower one)
 * as far as so many were guaranteed, served or accepted, then adults: where a contract leaves it open, the client
 * pays less. The adults billed are never fewer than guaranteed or served.
 */
export function billedGuests(
  guaranteed: Guests,
  served: Guests | null,
  accepted: Guests,
  floor: number,
): Guests {
  const came = served ?? guaranteed;
  const table = Math.max(atTable(guaranteed), atTable(came), floor);
  const adults = Math.max(guaranteed.adults, came.adults);
  const most = Math.max(guaranteed.children, came.children, accepted.children);
  const children = Math.min(table - adults, most);
  return {
    adults: table - children,
    children,
    vendors: Math.max(guaranteed.vendors, came.vendors),
    staff: Math.max(guaranteed.staff, came.staff),
  };
}
