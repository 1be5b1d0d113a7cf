import type { Quantity } from '../../measure/quantity.ts';
import { unitKind } from '../../measure/units.ts';
import type { PlannedDish } from '../event-plan.ts';

/** A drink's bottles or cans, up to whole ones, where guests take it by the glass too; undefined for all other food. */
export function countedDrink({
  dish,
  need,
  needAsMade,
}: Pick<PlannedDish, 'dish' | 'need' | 'needAsMade'>): Quantity | undefined {
  const counted = [need, needAsMade].find(({ unit }) => unitKind(unit) === 'count');
  return dish.drink && counted && { ...counted, amount: counted.amount.ceil() };
}
