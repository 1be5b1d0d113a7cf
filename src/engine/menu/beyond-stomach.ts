import { MOST_GALLONS_PER_GUEST, MOST_PIECES_PER_GUEST, MOST_POUNDS_PER_GUEST } from '../alarm-limits.ts';
import { convertFinishedFood } from '../food/finished-food.ts';
import type { Quantity } from '../measure/quantity.ts';
import { unitKind } from '../measure/units.ts';
import type { Dish } from './package.ts';

/** An amount for one guest that nobody eats or drinks, in the unit it is measured by, and the most that is believed. */
export interface BeyondStomach {
  readonly each: Quantity;
  readonly most: Quantity;
}

/**
 * Whether a dish's amount for one guest is more than anybody eats or drinks: by weight or volume as the recipe says of
 * what it makes, else by the count of pieces. undefined for a believable one.
 */
export function beyondStomach({
  recipe,
  perGuest,
}: Pick<Dish, 'recipe' | 'perGuest'>): BeyondStomach | undefined {
  const each = { amount: perGuest.amount.amount.div(perGuest.guests), unit: perGuest.amount.unit };
  const limits = [
    { amount: MOST_POUNDS_PER_GUEST, unit: 'lb' },
    { amount: MOST_GALLONS_PER_GUEST, unit: 'gal' },
  ];
  let measured = false;
  for (const most of limits) {
    const amount = convertFinishedFood(recipe, each, most.unit);
    if (!amount) continue;
    measured = true;
    if (amount.amount.gt(most.amount)) return { each: amount, most };
  }
  if (measured || unitKind(each.unit) !== 'count') return undefined;
  const most = { amount: MOST_PIECES_PER_GUEST, unit: each.unit };
  return each.amount.gt(most.amount) ? { each, most } : undefined;
}
