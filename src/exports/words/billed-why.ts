import { atTable } from '../../engine/quote/counts.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import { wordsIn } from '../../words/words-in.ts';

/** `92 guaranteed and 95 served, never fewer than 76: billed for 95 guests at the table`. */
export function billedWhy({ choice, guarantee, served, floor, billed }: EventStatus, locale: string): string {
  const spoken = {
    n: atTable(choice.guests),
    count: guarantee ? 'guaranteed' : 'accepted',
    floor,
    billed: atTable(billed.guests),
  };
  const say = wordsIn(locale);
  return served
    ? say('bill.counts.served', { ...spoken, served: atTable(served) })
    : say('bill.counts', spoken);
}
