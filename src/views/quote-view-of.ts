import type { Day } from '../engine/calendar/day.ts';
import { displayMoney } from '../engine/money/display-money.ts';
import { money } from '../engine/money/money.ts';
import type { Choice } from '../engine/quote/choice.ts';
import { countedWords } from '../engine/quote/counted-words.ts';
import { perGuestCounts, type Quote, quote } from '../engine/quote/quote.ts';
import type { Terms } from '../engine/quote/terms.ts';
import { dateText } from '../exports/words/date-text.ts';
import { percentText } from '../exports/words/percent-text.ts';
import { textAsRead } from '../exports/words/text-as-read.ts';
import type { QuoteLineView, QuoteView } from './quote-view.ts';

/** A quote with its sums as the client reads them. */
export function quoteView(terms: Terms, choice: Choice, acceptedOn: Day | null): QuoteView {
  const priced = quote(terms, choice, acceptedOn);
  const chosen = terms.packages.find((each) => each.id === choice.package);
  return {
    caption: `${chosen?.name ?? choice.package}, ${guestsText(choice)}`,
    lines: [...priced.lines.map((line) => lineView(line, terms)), ...taxLines(priced, terms)],
    total: shown(priced.total, terms),
    perGuest: shown(priced.perGuest, terms),
    perGuestLabel: perGuestLabel(terms, choice),
    notes: priced.notes,
    payments: priced.payments.map(({ label, due, amount }) => ({
      label: textAsRead(label, terms.locale),
      due: due === null ? 'on acceptance' : dateText(due, terms.locale),
      amount: shown(amount, terms),
    })),
  };
}

/** What a sum per guest is called, with whom it divides by: `Per guest, all-inclusive (96 adults and children)`. */
export function perGuestLabel(terms: Pick<Terms, 'perGuest'>, { guests }: Pick<Choice, 'guests'>): string {
  return `Per guest, all-inclusive (${countedWords(guests, perGuestCounts(terms))})`;
}

/** `84 adults, 6 children, 4 vendor meals`: whom the client pays for. */
export function guestsText({ guests }: Pick<Choice, 'guests'>): string {
  const some: [number, string, string][] = [
    [guests.adults, 'adult', 'adults'],
    [guests.children, 'child', 'children'],
    [guests.vendors, 'vendor meal', 'vendor meals'],
  ];
  return some
    .filter(([count]) => count > 0)
    .map(([count, one, more]) => `${count} ${count === 1 ? one : more}`)
    .join(', ');
}

/** A sum of the terms' currency as the client reads it. */
export function shown(amount: string, terms: Pick<Terms, 'currency' | 'locale'>): string {
  return displayMoney(money(amount, terms.currency), terms.locale);
}

/** A line of a quote as the client reads it; what is one of a kind shows no quantity. */
export function lineView(line: Quote['lines'][number], terms: Terms): QuoteLineView {
  const kind = line.key === 'discount' ? 'discount' : line.key === 'service-charge' ? 'charge' : 'line';
  const single = line.quantity === '1' && line.unitPrice === line.amount;
  return {
    label: line.label,
    quantity: single ? '' : line.key.startsWith('staff:') ? `${line.quantity} h` : line.quantity,
    unitPrice: single ? '' : shown(line.unitPrice, terms),
    amount: shown(line.amount, terms),
    kind,
  };
}

/** The tax at each rate as a line: on top, or within the prices. */
export function taxLines(priced: Pick<Quote, 'taxes' | 'taxIncluded'>, terms: Terms): QuoteLineView[] {
  return priced.taxes.map(({ rate, base, amount }) => ({
    label: priced.taxIncluded
      ? `Included tax at ${percentText(rate, terms.locale)} on ${shown(base, terms)}`
      : `Tax at ${percentText(rate, terms.locale)} on ${shown(base, terms)}`,
    quantity: '',
    unitPrice: '',
    amount: shown(amount, terms),
    kind: 'tax' as const,
  }));
}
