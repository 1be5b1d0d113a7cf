import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** A whole number of guests, 0 to 100,000. Branded, so that it does not pass for minutes or a price. */
export type GuestCount = number & { readonly guestCount: unique symbol };

/** The most guests that one count may hold. */
export const MOST_GUESTS = 100_000;

/** Makes a guest count in code. Throws on anything but a whole number from 0 to 100,000. */
export function guestCount(n: number): GuestCount {
  if (!Number.isInteger(n) || n < 0 || n > MOST_GUESTS) {
    throw new RangeError(`a guest count is a whole number from 0 to ${MOST_GUESTS}, not ${n}`);
  }
  return n as GuestCount;
}

/** Reads `100` or `100 guests`. Digits alone: no sign, no separator, no fraction. Zero is a count. */
export function parseGuestCount(text: string): Parsed<GuestCount> {
  const plain = text.trim();
  const digits = /^(\d{1,7})(?: guests?)?$/.exec(plain)?.[1];
  if (digits === undefined) {
    return notParsed(
      `"${plain.slice(0, 40)}" is not a number of guests`,
      'write a whole number in digits: 1000',
    );
  }
  if (Number(digits) > MOST_GUESTS) {
    return notParsed(`${digits} guests is more than ${MOST_GUESTS}`, 'write the count for one event');
  }
  return parsed(guestCount(Number(digits)));
}
