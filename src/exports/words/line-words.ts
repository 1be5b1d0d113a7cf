import { displayMoney } from '../../engine/money/display-money.ts';
import { money } from '../../engine/money/money.ts';
import type { LineClass } from '../../engine/quote/line-class.ts';
import type { LineWhy } from '../../engine/quote/line-why.ts';
import type { QuoteLine } from '../../engine/quote/quote.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { WordedLine } from '../form/invoice.ts';
import { classWord } from './class-words.ts';
import { countedText } from './counted-text.ts';
import { lineLabel } from './line-label.ts';

/** A line of a quote in the words of the terms' locale, in the order of fields that documents have. */
export function wordedLine(line: QuoteLine, terms: Pick<Terms, 'currency' | 'locale'>): WordedLine {
  const { key, name, why: _, ...figures } = line;
  const label = lineLabel(scriptWordsIn(terms.locale), { key, name });
  return { key, label, ...figures, why: lineWhy(line, terms) };
}

/** How a line's amount came about, in words; rates and quantities in data's form. */
export function lineWhy(
  { why, quantity, unitPrice }: Pick<QuoteLine, 'why' | 'quantity' | 'unitPrice'>,
  { currency, locale }: Pick<Terms, 'currency' | 'locale'>,
): string {
  const say = wordsIn(locale);
  const show = (sum: string) => displayMoney(money(sum, currency), locale);
  const counted = ({ guests, counts }: Extract<LineWhy, { counts: unknown }>) =>
    countedText(scriptWordsIn(locale), guests, counts);
  const base = (classes: readonly LineClass[]) => classes.map((each) => classWord(each, locale)).join(', ');
  const price = show(unitPrice);
  switch (why.of) {
    case 'meals':
      return mealsWhy(why, { n: Number(quantity), price }, say);
    case 'minimum guests':
      return say('bill.why.minimum', { n: quantity, price, minimum: why.minimum });
    case 'smaller party':
      return say('bill.why.smaller', { sum: show(why.sum) });
    case 'supplement':
      return say('bill.why.supplement', { n: quantity, price });
    case 'flat price':
      return say('bill.why.flat', { price });
    case 'hours':
      return say('bill.why.hours', { hours: quantity, price });
    case 'guests':
      return say('bill.why.guests', { guests: counted(why), price });
    case 'groups':
      return say('bill.why.groups', { guests: counted(why), size: why.size, groups: quantity, price });
    case 'service': {
      const { one, per, people, hours, atLeast: least } = why;
      const spoken = { one, per, guests: counted(why), people, hours, price };
      return least > 0
        ? say('bill.why.service.least', { ...spoken, least })
        : say('bill.why.service', spoken);
    }
    case 'delivery':
      return say('bill.why.delivery', { price, place: why.place });
    case 'minimum spend':
      return say('bill.why.minimum-spend', {
        least: show(why.least),
        base: base(why.base),
        sum: show(why.sum),
      });
    case 'discount':
      return why.rate === null
        ? say('bill.why.discount', { base: base(why.base) })
        : say('bill.why.discount-rate', { rate: why.rate, sum: show(why.sum), base: base(why.base) });
    case 'service charge':
      return say(why.afterDiscount ? 'bill.why.service-charge.after' : 'bill.why.service-charge', {
        rate: why.rate,
        sum: show(why.sum),
        base: base(why.base),
      });
    case 'charge':
      return say('bill.why.charge', { n: quantity, price });
    case 'exemption':
      return say('bill.why.exemption');
  }
}

function mealsWhy(
  { group, tier }: Extract<LineWhy, { of: 'meals' }>,
  spoken: { readonly n: number; readonly price: string },
  say: Say,
): string {
  if (group === 'children') return say('bill.why.children', spoken);
  if (group === 'vendors') return say('bill.why.vendors', spoken);
  if (tier === null) return say('bill.why.adults', spoken);
  const { from, to } = tier;
  return to === null
    ? say('bill.why.adults.more', { ...spoken, from })
    : say('bill.why.adults.range', { ...spoken, from, to });
}
