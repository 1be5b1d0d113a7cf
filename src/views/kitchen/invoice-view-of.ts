import type { Day } from '../../engine/calendar/day.ts';
import { daysBeforeText } from '../../engine/calendar/offset.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import type { InvoiceDocument } from '../../exports/form/invoice.ts';
import { dateText } from '../../exports/words/date-text.ts';
import type { BrandView } from '../brand/brand-view.ts';
import { guestsText, lineView, shown, taxLines } from '../quote-view-of.ts';
import type { InvoiceView } from './invoice-view.ts';
import type { BannerView } from './view.ts';

/** The files beside an invoice's page. */
const FILES = [
  { file: 'invoice.pdf', what: 'The invoice on paper' },
  { file: 'invoice.json', what: 'The invoice as data' },
] as const;

/** An invoice as its page and PDF show it. `terms` are those accepted, for their currency, locale and deadline. */
export function invoiceView(
  invoice: InvoiceDocument,
  terms: Terms,
  brand: BrandView,
  banner: BannerView | null,
): InvoiceView {
  const { event, offer, counts, balance } = invoice;
  const day = (text: string) => (text === '' ? 'when the day is known' : dateText(text as Day, terms.locale));
  const sum = (text: string) => shown(text, terms);
  return {
    kind: 'invoice',
    brand,
    banner,
    title: `${event.occasion}, ${event.client}`,
    reference: event.id,
    facts: [
      { label: 'For', value: event.client },
      { label: 'Event', value: `${event.occasion}, ${day(event.date)}, ${event.place}` },
      { label: 'Menu', value: event.package },
      { label: 'Billed for', value: guestsText({ guests: counts.billed }) },
      { label: 'As of', value: day(invoice.asOf) },
      { label: 'Offer', value: `revision ${offer.revision}, accepted ${day(offer.acceptedOn)}` },
    ],
    counted: `${counts.why}. The count is due ${daysBeforeText(terms.guarantee.daysBefore)}; the larger of that and the guests served is billed.`,
    lines: [...invoice.lines.map((line) => lineView(line, terms)), ...taxLines(invoice, terms)],
    total: sum(invoice.total),
    received: invoice.received.map(({ on, method, amount, paid }) => ({
      on: day(on),
      method,
      paid: isNegative(amount) ? 'refund' : paidWords(amount, paid, sum),
      amount: sum(amount),
    })),
    receivedLabel: invoice.received.some(({ amount }) => isNegative(amount))
      ? 'Received, less refunds'
      : 'Received in all',
    receivedInAll: sum(invoice.receivedInAll),
    balanceLabel: balanceLabel(balance),
    balance: sum(balance.replace(/^-/, '')),
    // What is to be paid back has no day; the balance says it.
    due: invoice.due
      .filter(({ amount }) => !isNegative(amount))
      .map((row) => ({ label: row.label, due: day(row.due), amount: sum(row.amount) })),
    notes: invoice.notes,
    files: FILES,
  };
}

/** What a payment went into: the instalment it paid, or how much of which. */
function paidWords(
  amount: string,
  paid: InvoiceDocument['received'][number]['paid'],
  sum: (text: string) => string,
): string {
  const [only] = paid;
  if (paid.length === 1 && only?.amount === amount) return only.label;
  return paid.map((part) => `${sum(part.amount)} for ${part.label}`).join(', ');
}

const isNegative = (amount: string) => amount.startsWith('-');

/** What a balance is called: money owed, none, or to be paid back. */
export function balanceLabel(balance: string): string {
  if (balance.startsWith('-')) return 'To be paid back';
  return /[1-9]/.test(balance) ? 'Balance' : 'Paid in full';
}
