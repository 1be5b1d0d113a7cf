import { readNumber } from '../../engine/measure/mixed-number.ts';
import { guestNumber } from '../../engine/plan/figure-text.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { PlanDish } from '../form/food.ts';
import { textAsRead } from './text-as-read.ts';

/** The guests that a dish of the plan is cooked for, as its page says them: `1 guest`, `87.5 guests`, `87,5` in Germany. */
export function dishGuestsText(dish: Pick<PlanDish, 'counted'>, locale: string): string {
  const count = dishGuestsNumber(dish, locale);
  return wordsIn(locale)('why.guests', { n: count === '1' ? 1 : 2, count });
}

/** Their number alone: a whole number, or in decimals where some count as part of a guest. */
export function dishGuestsNumber({ counted }: Pick<PlanDish, 'counted'>, locale: string): string {
  const read = readNumber(counted);
  return textAsRead(read.ok ? guestNumber(read.value.value) : counted, locale);
}
