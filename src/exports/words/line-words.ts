import { displayMoney } from '../../engine/money/display-money.ts';
import { money } from '../../engine/money/money.ts';
import type { LineClass } from '../../engine/quote/line-class.ts';
import type { LineWhy } from '../../engine/quote/line-why.ts';
import type { QuoteLine } from '../../engine/quote/quote.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { WordedLine } from '../form/invoice.ts';
import { classWord } from './class-words.ts';
import { countedText } from './counted-text.ts';
import { lineLabel } from './line-label.ts';

/** A line of a quote in the words of the terms' locale, in the order of fields that documents have. */
export function wordedLine(
  { key, name, why, ...figures }: QuoteLine,
  terms: Pick<Terms, 'currency' | 'locale'>,
): WordedLine {
  const label = lineLabel(scriptWordsIn(terms.locale), { key, name });
  return { key, label, ...figures, why: lineWhy(why, terms) };
}

/** How a line's amount came about, in words; rates and quantities in data's form. */
export function lineWhy(why: LineWhy, { currency, locale }: Pick<Terms, 'currency' | 'locale'>): string {
  const say = wordsIn(locale);
  const show = (sum: string) => displayMoney(money(sum, currency), locale);
  const counted = ({ guests, counts }: Extract<LineWhy, { counts: unknown }>) =>
    countedText(scriptWordsIn(locale), guests, counts);
  const base = (classes: readonly LineClass[]) => classes.map((each) => classWord(each, locale)).join(', ');
  switch (why.of) {
    case 'meals':
      return mealsWhy(why, show(why.price), locale);
    case 'minimum guests':
      return say('bill.why.minimum', { n: why.more, price: show(why.price), minimum: why.minimum });
    case 'smaller party':
      return say('bill.why.smaller', { sum: show(why.sum) });
    case 'supplement':
      return say('bill.why.supplement', { n: why.quantity, price: show(why.price) });
    case 'flat price':
      return say('bill.why.flat', { price: show(why.price) });
    case 'hours':
      return say('bill.why.hours', { hours: why.hours, price: show(why.price) });
    case 'guests':
      return say('bill.why.guests', { guests: counted(why), price: show(why.price) });
    case 'groups':
      return say('bill.why.groups', {
        guests: counted(why),
        size: why.size,
        groups: why.groups,
        price: show(why.price),
      });
    case 'service': {
      const { one, per, people, hours, atLeast: least } = why;
      const spoken = { one, per, guests: counted(why), people, hours, price: show(why.price) };
      return least > 0
        ? say('bill.why.service.least', { ...spoken, least })
        : say('bill.why.service', spoken);
    }
    case 'delivery':
      return say('bill.why.delivery', { price: show(why.price), place: why.place });
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
    case 'exemption':
      return say('bill.why.exemption');
  }
}

function mealsWhy(
  { group, count: n, tier }: Extract<LineWhy, { of: 'meals' }>,
  price: string,
  locale: string,
): string {
  const say = wordsIn(locale);
  if (group === 'children') return say('bill.why.children', { n, price });
  if (group === 'vendors') return say('bill.why.vendors', { n, price });
  if (tier === null) return say('bill.why.adults', { n, price });
  const { from, to } = tier;
  return to === null
    ? say('bill.why.adults.more', { n, price, from })
    : say('bill.why.adults.range', { n, price, from, to });
}
