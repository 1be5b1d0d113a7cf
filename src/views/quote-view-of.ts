import type { Day } from '../engine/calendar/day.ts';
import { displayMoney } from '../engine/money/display-money.ts';
import { money } from '../engine/money/money.ts';
import type { Choice } from '../engine/quote/choice.ts';
import { perGuestCounts, type Quote, type QuoteLine, quote } from '../engine/quote/quote.ts';
import type { Terms } from '../engine/quote/terms.ts';
import { countedText } from '../exports/words/counted-text.ts';
import { dateText } from '../exports/words/date-text.ts';
import { lineLabel } from '../exports/words/line-label.ts';
import { paymentLabel } from '../exports/words/payment-label.ts';
import { percentText } from '../exports/words/percent-text.ts';
import { quoteNoteWords } from '../exports/words/quote-note-words.ts';
import type { ScriptSay } from '../words/script-words.ts';
import type { QuoteLineView, QuoteView } from './quote-view.ts';

/** A quote with its sums as the client reads them. */
export function quoteView(say: ScriptSay, terms: Terms, choice: Choice, acceptedOn: Day | null): QuoteView {
  const priced = quote(terms, choice, acceptedOn);
  const chosen = terms.packages.find((each) => each.id === choice.package);
  return {
    caption: `${chosen?.name ?? choice.package}, ${guestsText(say, choice)}`,
    lines: [
      ...priced.lines.map((line) => lineView(say, { ...line, label: lineLabel(say, line) }, terms)),
      ...taxLines(say, priced, terms),
    ],
    total: shown(priced.total, terms),
    perGuest: shown(priced.perGuest, terms),
    perGuestLabel: perGuestLabel(say, terms, choice),
    notes: quoteNoteWords(say, priced.notes, chosen),
    payments: priced.payments.map(({ instalment, due, amount }) => ({
      label: paymentLabel(say, instalment, terms),
      due: due === null ? '' : dateText(due, terms.locale),
      amount: shown(amount, terms),
    })),
  };
}

/** What a sum per guest is called, with whom it divides by: `Per guest, all-inclusive (96 adults and children)`. */
export function perGuestLabel(
  say: ScriptSay,
  terms: Pick<Terms, 'perGuest'>,
  { guests }: Pick<Choice, 'guests'>,
): string {
  return say('quote.per-guest', { guests: countedText(say, guests, perGuestCounts(terms)) });
}

/** `84 adults, 6 children, 4 vendor meals`: whom the client pays for. */
export function guestsText(say: ScriptSay, { guests }: Pick<Choice, 'guests'>): string {
  return (['adults', 'children', 'vendors'] as const)
    .filter((group) => guests[group] > 0)
    .map((group) => say(group, { n: guests[group] }))
    .join(', ');
}

/** A sum of the terms' currency as the client reads it. */
export function shown(amount: string, terms: Pick<Terms, 'currency' | 'locale'>): string {
  return displayMoney(money(amount, terms.currency), terms.locale);
}

/** A line of a quote as the client reads it; what is one of a kind shows no quantity. */
export function lineView(
  say: ScriptSay,
  line: Pick<QuoteLine, 'key' | 'quantity' | 'unitPrice' | 'amount'> & { readonly label: string },
  terms: Terms,
): QuoteLineView {
  const kind = line.key === 'discount' ? 'discount' : line.key === 'service-charge' ? 'charge' : 'line';
  const single = line.quantity === '1' && line.unitPrice === line.amount;
  return {
    label: line.label,
    quantity: single ? '' : lineQuantity(say, line),
    unitPrice: single ? '' : shown(line.unitPrice, terms),
    amount: shown(line.amount, terms),
    kind,
  };
}

/** How much of a line there is: `14`, `6 h` for people who serve. */
export function lineQuantity(say: ScriptSay, { key, quantity }: Pick<QuoteLine, 'key' | 'quantity'>): string {
  return key.startsWith('staff:') ? say('quote.hours', { hours: quantity }) : quantity;
}

/** The tax at each rate as a line: on top, or within the prices. */
export function taxLines(
  say: ScriptSay,
  priced: Pick<Quote, 'taxes' | 'taxIncluded'>,
  terms: Terms,
): QuoteLineView[] {
  return priced.taxes.map(({ rate, base, amount }) => ({
    label: say(priced.taxIncluded ? 'quote.tax-within' : 'quote.tax', {
      rate: percentText(rate, terms.locale),
      base: shown(base, terms),
    }),
    quantity: '',
    unitPrice: '',
    amount: shown(amount, terms),
    kind: 'tax' as const,
  }));
}
