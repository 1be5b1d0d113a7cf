import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { kitchenAmount } from '../../engine/measure/kitchen-amount.ts';
import { eachText } from '../../exports/words/each-text.ts';
import { textAsRead } from '../../exports/words/text-as-read.ts';
import { leftAmounts } from '../../offers/learned/left-amounts.ts';
import type { LeftoversFact } from '../../schema/event-fact.ts';
import { wordsIn } from '../../words/words-in.ts';
import { columns } from './columns.ts';

/** Leftovers as they were understood, for a terminal, and what they rest on. */
export function leftoversText(
  { dishes, plan }: LeftoversFact,
  { measures: system, locale }: Pick<Kitchen, 'measures' | 'locale'>,
): string {
  const say = wordsIn(locale);
  const read = (text: string) => textAsRead(text, locale);
  const told = dishes.some(({ destiny }) => destiny !== undefined);
  const rows = dishes.map((dish) => {
    const { carried, back, eaten, came } = leftAmounts(dish);
    const out = dish.at === undefined ? say('leftovers.out') : say('leftovers.out-when', { time: dish.at });
    const each = eachText(eaten, came);
    return [
      dish.name,
      read(kitchenAmount(carried, system, 'line')),
      read(dish.ranOut ? out : kitchenAmount(back, system, 'line')),
      read(dish.ranOut ? say('terminal.at-least', { amount: each }) : each),
      ...(told
        ? [dish.destiny ? say('leftovers.destiny', { destiny: dish.destiny.split(' ')[0] ?? '' }) : '']
        : []),
      dish.note ?? '',
    ];
  });
  const head = [
    say('terminal.dish'),
    say('terminal.went-out'),
    say('terminal.came-back'),
    say('terminal.eaten-each'),
    ...(told ? [say('leftovers.where')] : []),
    say('terminal.note'),
  ];
  const kept = dishes.some(({ destiny }) => destiny === 'given away' || destiny === 'brought home');
  return [
    columns([head, ...rows]),
    say(plan === 'kept' ? 'terminal.plan-kept' : 'terminal.plan-new'),
    ...(kept ? [say('waste.caution')] : []),
  ].join('\n');
}
