import type { GuestRate } from '../engine/quote/guest-rate.ts';
import type {
  AddOnTerms,
  DiscountTerms,
  MinimumSpendTerms,
  ServiceChargeTerms,
  StaffTerms,
  Terms,
} from '../engine/quote/terms.ts';
import { classWord, classWords } from '../exports/words/class-words.ts';
import { groupsText } from '../exports/words/counted-text.ts';
import { percentText } from '../exports/words/percent-text.ts';
import { scriptWordsIn } from '../words/script-words.ts';
import { wordsIn } from '../words/words-in.ts';
import { shown } from './quote-view-of.ts';

/** What sums are shown by. */
type Showing = Pick<Terms, 'currency' | 'locale'>;

/** What a child's or a vendor's meal costs: `$18.00 each`, `50% of the adult price`, `same as adults`. */
export function rateWords({ rate, price }: GuestRate, terms: Showing): string {
  const say = wordsIn(terms.locale);
  if (price !== undefined) return say('terms.rate.each', { price: shown(price, terms) });
  return rate === undefined || rate === '100 %'
    ? say('terms.rate.as-adults')
    : say('terms.rate.share', { rate: percentText(rate, terms.locale) });
}

/** What an add-on costs and for whom: `$6.50 per guest, counting adults and children, charged as food`. */
export function addOnWords({ price, per, guests, counts, class: line }: AddOnTerms, terms: Showing): string {
  const say = wordsIn(terms.locale);
  const spoken = { sum: shown(price, terms), class: classWord(line, terms.locale) };
  if (per === 'hour') return say('terms.sum.per-hour', spoken);
  if (per === 'flat') return say('terms.sum.flat', spoken);
  const counted = groupsText(scriptWordsIn(terms.locale), counts);
  return per === 'guest'
    ? say('terms.sum.per-guest', { ...spoken, counted })
    : say('terms.sum.per-guests', { ...spoken, counted, n: guests ?? 1 });
}

/** What people who serve cost and how many come: `$38.00 an hour for 6 hours each, 1 per 25 of adults and children`. */
export function staffWords({ rate, hours, one, per, counts, atLeast }: StaffTerms, terms: Showing): string {
  return wordsIn(terms.locale)('terms.sum.staff', {
    rate: shown(rate, terms),
    hours,
    one,
    per,
    counted: groupsText(scriptWordsIn(terms.locale), counts),
    least: atLeast,
  });
}

/** `5% of food` or `$150.00 off food and drink`. */
export function discountWords({ rate, amount, base }: DiscountTerms, terms: Showing): string {
  const say = wordsIn(terms.locale);
  const on = classWords(base, terms.locale);
  return amount === undefined
    ? say('terms.sum.discount-rate', { rate: percentText(rate ?? '0 %', terms.locale), base: on })
    : say('terms.sum.discount-amount', { sum: shown(amount, terms), base: on });
}

/** `20% of food and drink, after any discount`. */
export function serviceChargeWords(
  { rate, base, afterDiscount }: ServiceChargeTerms,
  { locale }: Pick<Terms, 'locale'>,
): string {
  const spoken = { rate: percentText(rate, locale), base: classWords(base, locale) };
  return wordsIn(locale)(afterDiscount ? 'terms.sum.charge-after' : 'terms.sum.charge-before', spoken);
}

/** `$1,200.00 for food and drink, with any shortfall charged as food`. */
export function minimumSpendWords({ amount, base, class: line }: MinimumSpendTerms, terms: Showing): string {
  return wordsIn(terms.locale)('terms.sum.minimum-spend', {
    sum: shown(amount, terms),
    base: classWords(base, terms.locale),
    class: classWord(line, terms.locale),
  });
}
