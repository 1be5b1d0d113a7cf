import { type PerGuest, parsePerGuest, perGuestText } from '../../engine/measure/per-guest.ts';
import { writtenText } from '../../engine/measure/quantity.ts';
import type { Say } from '../../words/words-in.ts';

/** An amount for each guest in the words of the page, its figures in data's form: `3 oz per guest`, `1 loaf per 8 guests`. */
export function perGuestWords({ amount, guests }: PerGuest, say: Say): string {
  return say('dishes.per-guest', { amount: writtenText(amount), n: Number(guests) });
}

/** The same of a plan's or an offer's text. One that is no such amount stays as it is. */
export function perGuestAsRead(text: string, say: Say): string {
  const read = parsePerGuest(text);
  return read.ok && perGuestText(read.value) === text ? perGuestWords(read.value, say) : text;
}
