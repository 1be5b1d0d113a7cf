import type { Day } from '../../engine/calendar/day.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import type { InvoiceDocument } from '../../exports/form/invoice.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { BrandView } from '../brand/brand-view.ts';
import { guestsText, lineView, shown, taxLines } from '../quote-view-of.ts';
import type { InvoiceView } from './invoice-view.ts';
import type { BannerView } from './view.ts';

/** The files beside an invoice's page. */
const FILES = [
  { file: 'invoice.pdf', what: 'invoice.on-paper' },
  { file: 'invoice.json', what: 'invoice.as-data' },
] as const;

/** An invoice as its page and PDF show it. `terms` are those accepted, for their currency, locale and deadline. `tipLine`: a line is printed on which to write a tip. */
export function invoiceView(
  invoice: InvoiceDocument,
  terms: Terms,
  brand: BrandView,
  banner: BannerView | null,
  tipLine: boolean,
): InvoiceView {
  const { event, offer, counts, balance } = invoice;
  const say = wordsIn(terms.locale);
  const day = (text: string) =>
    text === '' ? say('invoice.day-unknown') : dateText(text as Day, terms.locale);
  const sum = (text: string) => shown(text, terms);
  const script = scriptWordsIn(terms.locale);
  return {
    kind: 'invoice',
    brand,
    banner,
    title: `${event.occasion}, ${event.client}`,
    reference: event.id,
    facts: [
      { label: say('invoice.for'), value: event.client },
      {
        label: say('invoice.event'),
        value: say('invoice.event-line', {
          event: event.occasion,
          day: day(event.date),
          place: event.place,
        }),
      },
      { label: say('invoice.menu'), value: event.package },
      { label: say('invoice.billed-for'), value: guestsText(script, { guests: counts.billed }) },
      { label: say('invoice.as-of'), value: day(invoice.asOf) },
      {
        label: say('invoice.offer'),
        value: say('invoice.offer-line', { n: offer.revision, day: day(offer.acceptedOn) }),
      },
    ],
    counted: say('invoice.count-due', {
      why: counts.why,
      days: terms.guarantee.daysBefore,
    }),
    lines: [
      ...invoice.lines.map((line) => lineView(script, line, terms)),
      ...taxLines(script, invoice, terms),
    ],
    total: sum(invoice.total),
    received: invoice.received.map(({ on, method, amount, paid }) => ({
      on: day(on),
      method,
      paid: isNegative(amount) ? say('invoice.refund') : paidWords(amount, paid, sum, say),
      amount: sum(amount),
    })),
    ...(invoice.tips && {
      tips: invoice.tips.map(({ on, method, amount }) => ({ on: day(on), method, amount: sum(amount) })),
    }),
    tipLine,
    receivedLabel: invoice.received.some(({ amount }) => isNegative(amount))
      ? say('invoice.received-less')
      : say('invoice.received-all'),
    receivedInAll: sum(invoice.receivedInAll),
    balanceLabel: balanceLabel(balance, say),
    balance: sum(balance.replace(/^-/, '')),
    // What is to be paid back has no day; the balance says it.
    due: invoice.due
      .filter(({ amount }) => !isNegative(amount))
      .map((row) => ({ label: row.label, due: day(row.due), amount: sum(row.amount) })),
    notes: invoice.notes,
    files: FILES.map(({ file, what }) => ({ file, what: say(what) })),
  };
}

/** What a payment went into: the instalment it paid, or how much of which. */
function paidWords(
  amount: string,
  paid: InvoiceDocument['received'][number]['paid'],
  sum: (text: string) => string,
  say: Say,
): string {
  const [only] = paid;
  if (paid.length === 1 && only?.amount === amount) return only.label;
  return paid
    .map((part) => say('invoice.paid-part', { sum: sum(part.amount), label: part.label }))
    .join(', ');
}

const isNegative = (amount: string) => amount.startsWith('-');

/** What a balance is called: money owed, none, or to be paid back. */
export function balanceLabel(balance: string, say: Say): string {
  if (balance.startsWith('-')) return say('invoice.pay-back');
  return /[1-9]/.test(balance) ? say('invoice.balance') : say('invoice.paid');
}
