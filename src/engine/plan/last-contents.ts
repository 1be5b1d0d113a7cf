import type { Quantity } from '../measure/quantity.ts';
import type { PlannedContainer } from './event-plan.ts';

/** What the last of a row of containers holds: a full one's contents times how full it is. Exact. */
export function lastContents({ each, lastFull }: Pick<PlannedContainer, 'each' | 'lastFull'>): Quantity {
  return { unit: each.unit, amount: each.amount.mul(lastFull) };
}
