import { counted } from '../../engine/text/counted.ts';
import type { PlanDish } from '../form/food.ts';

/** The guests that a dish of the plan is cooked for, as its page says them: `1 guest`, `87½ guests`. */
export function dishGuestsText(dish: Pick<PlanDish, 'counted'>): string {
  return counted(dish.counted, 'guest');
}
