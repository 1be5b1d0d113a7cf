import { displayMoney } from '../../engine/money/display-money.ts';
import { money } from '../../engine/money/money.ts';
import type { RevenueLine } from '../../engine/plan/money/revenue.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { lineLabel } from '../../exports/words/line-label.ts';
import { lineWhy } from '../../exports/words/line-words.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';

/** What a line of what is earned is called and how it came about. */
export function revenueWords(
  { key, name, why }: RevenueLine,
  terms: Pick<Terms, 'currency' | 'locale'>,
): { readonly label: string; readonly why: string } {
  if ('why' in why)
    return { label: lineLabel(scriptWordsIn(terms.locale), { key, name }), why: lineWhy(why, terms) };
  const say = wordsIn(terms.locale);
  const base = displayMoney(money(why.base, terms.currency), terms.locale);
  return { label: say('bill.tax-within', { rate: why.rate }), why: say('bill.tax-within.why', { base }) };
}
