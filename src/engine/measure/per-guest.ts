import type Fraction from 'fraction.js';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { parseGuestCount } from './guest-count.ts';
import { tidy } from './mixed-number.ts';
import { parseQuantity } from './parse-quantity.ts';
import { type Quantity, timesQuantity, writtenText } from './quantity.ts';

/** So much for so many guests: `3 oz per guest`, `1 shoulder per 8 guests`, `1 server per 30 guests`. */
export interface PerGuest {
  readonly amount: Quantity;
  /** How many guests share the amount; one or more. */
  readonly guests: bigint;
}

const PER = /^(.+) per (?:(\S+) )?(guest|guests|person|people|head)$/i;
const WAY_OUT = 'write it as 3 oz per guest or 2 loaves per 15 guests';

/**
 * Reads an amount, then `per guest` or `per N guests` (`person`, `people` and `head` mean the same). An
 * amount without a unit counts pieces: `1 per 6 guests`. Zero on either side is refused.
 */
export function parsePerGuest(text: string): Parsed<PerGuest> {
  if (text.length > 120)
    return notParsed(`"${text.slice(0, 30)}…" is too long for a per-guest amount`, WAY_OUT);
  const [, left, count = '1'] = PER.exec(tidy(text)) ?? [];
  if (left === undefined) {
    return notParsed(`"${tidy(text)}" does not give an amount and the guests it is for`, WAY_OUT);
  }
  const amount = parseQuantity(left);
  if (!amount.ok) return amount;
  const guests = parseGuestCount(count);
  if (!guests.ok) return guests;
  if (guests.value === 0) return notParsed(`"${tidy(text)}" is for no guests`, WAY_OUT);
  return parsed({ amount: amount.value, guests: BigInt(guests.value) });
}

/** What so many guests need, exactly: nothing is rounded to whole units here. */
export function forGuests(perGuest: PerGuest, guests: Fraction): Quantity {
  return timesQuantity(perGuest.amount, guests.div(perGuest.guests));
}

/** The per-guest amount as a cook writes it, exact; `parsePerGuest` reads it back to the same. */
export function perGuestText(perGuest: PerGuest): string {
  const guests = perGuest.guests === 1n ? 'guest' : `${perGuest.guests} guests`;
  return `${writtenText(perGuest.amount)} per ${guests}`;
}
