import { countsWords, listWords } from '../engine/quote/counted-words.ts';
import type { GuestRate } from '../engine/quote/guest-rate.ts';
import type {
  AddOnTerms,
  DiscountTerms,
  MinimumSpendTerms,
  ServiceChargeTerms,
  StaffTerms,
  Terms,
} from '../engine/quote/terms.ts';
import { counted } from '../engine/text/counted.ts';
import { percentText } from '../exports/words/percent-text.ts';
import { shown } from './quote-view-of.ts';

/** What sums are shown by. */
type Showing = Pick<Terms, 'currency' | 'locale'>;

/** What a child's or a vendor's meal costs: `$18.00 each`, `50% of the adult price`, `as adults`. */
export function rateWords({ rate, price }: GuestRate, terms: Showing): string {
  if (price !== undefined) return `${shown(price, terms)} each`;
  return rate === undefined || rate === '100 %'
    ? 'as adults'
    : `${percentText(rate, terms.locale)} of the adult price`;
}

/** What an add-on costs and for whom: `$6.50 per guest, counting adults and children`. */
export function addOnWords({ price, per, guests, counts, class: line }: AddOnTerms, terms: Showing): string {
  const sum = shown(price, terms);
  const billed = `charged as ${line}`;
  if (per === 'guest') return `${sum} per guest, counting ${countsWords(counts)}, ${billed}`;
  if (per === 'hour') return `${sum} per hour, ${billed}`;
  if (per === 'flat') return `${sum} in all, ${billed}`;
  return `${sum} for every ${counted(guests ?? 1, 'guest')} begun, counting ${countsWords(counts)}, ${billed}`;
}

/** Whom an add-on's price counts: `priced for each guest, counting adults and children`. */
export function addOnCountWords({ per, guests, counts }: AddOnTerms): string {
  if (per === 'hour') return 'priced by the hour';
  if (per === 'flat') return 'one price in all';
  const group =
    per === 'guest' ? 'priced for each guest' : `priced for every ${counted(guests ?? 1, 'guest')} begun`;
  return `${group}, counting ${countsWords(counts)}`;
}

/** What people who serve cost and how many come: `$38.00 an hour for 6 hours each, one for every 25 adults and children`. */
export function staffWords({ rate, hours, one, per, counts, atLeast }: StaffTerms, terms: Showing): string {
  const least = atLeast > 0 ? `, at least ${atLeast}` : '';
  return `${shown(rate, terms)} an hour for ${hours} hours each, ${one} for every ${per} of ${countsWords(counts)}${least}`;
}

/** `5% of food` or `$150.00 off food and drink`. */
export function discountWords({ rate, amount, base }: DiscountTerms, terms: Showing): string {
  const off =
    amount === undefined ? `${percentText(rate ?? '0 %', terms.locale)} of` : `${shown(amount, terms)} off`;
  return `${off} ${listWords(base)}`;
}

/** `20% of food and drink, after the discount`. */
export function serviceChargeWords(
  { rate, base, afterDiscount }: ServiceChargeTerms,
  { locale }: Showing,
): string {
  return `${percentText(rate, locale)} of ${listWords(base)}, ${afterDiscount ? 'after' : 'before'} any discount`;
}

/** `$1,200.00 of food and drink, the rest charged as food`. */
export function minimumSpendWords({ amount, base, class: line }: MinimumSpendTerms, terms: Showing): string {
  return `${shown(amount, terms)} of ${listWords(base)}, what is missing charged as ${line}`;
}
