import { addDays, type Day, weekday } from '../calendar/day.ts';
import type { Supplier } from './price-list.ts';

/** When to order, and when it comes. */
export interface OrderDays {
  readonly deliverOn: Day;
  /** The last day to order for that delivery. */
  readonly orderBy: Day;
}

/**
 * The last delivery day of a supplier on or before the day the goods are needed, and the last day to order for it:
 * its lead days before, counted in calendar days. Without delivery days of its own it delivers on any day.
 */
export function orderDays(
  { leadDays, deliveryDays }: Pick<Supplier, 'leadDays' | 'deliveryDays'>,
  neededOn: Day,
): OrderDays {
  let deliverOn = neededOn;
  // A week holds every delivery day there can be.
  for (let back = 0; back < 7 && !delivers(deliveryDays, deliverOn); back += 1) {
    deliverOn = addDays(neededOn, -back - 1);
  }
  return { deliverOn, orderBy: addDays(deliverOn, -leadDays) };
}

function delivers(deliveryDays: readonly number[], day: Day): boolean {
  return deliveryDays.length === 0 || deliveryDays.includes(weekday(day));
}
