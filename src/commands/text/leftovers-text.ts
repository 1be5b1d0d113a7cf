import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { kitchenAmount } from '../../engine/measure/kitchen-amount.ts';
import { eachText } from '../../exports/words/each-text.ts';
import { textAsRead } from '../../exports/words/text-as-read.ts';
import { leftAmounts } from '../../offers/learned/left-amounts.ts';
import type { LeftoversFact } from '../../schema/event-fact.ts';
import { columns } from './columns.ts';

/** Leftovers as they were understood, for a terminal, and what they rest on. */
export function leftoversText(
  { dishes, plan }: LeftoversFact,
  { measures: system, locale }: Pick<Kitchen, 'measures' | 'locale'>,
): string {
  const read = (text: string) => textAsRead(text, locale);
  const rows = dishes.map((dish) => {
    const { carried, back, eaten, came } = leftAmounts(dish);
    const out = dish.at === undefined ? 'ran out' : `ran out at ${dish.at}`;
    const least = dish.ranOut ? 'at least ' : '';
    return [
      dish.name,
      read(kitchenAmount(carried, system, 'line')),
      read(dish.ranOut ? out : kitchenAmount(back, system, 'line')),
      read(`${least}${eachText(eaten, came)}`),
      dish.note ?? '',
    ];
  });
  return [
    columns([['dish', 'went out', 'came back', 'eaten per guest', 'note'], ...rows]),
    plan === 'kept'
      ? 'What went out is taken from the plan saved on the day.'
      : 'No plan was saved on the day; what went out is taken from a new plan, made from today’s recipes.',
  ].join('\n');
}
