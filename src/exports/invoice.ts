import { laterDay } from '../engine/calendar/day.ts';
import type { Account } from '../engine/money/account.ts';
import { moneyText } from '../engine/money/money.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import { quote } from '../engine/quote/quote.ts';
import { withCharges } from '../engine/quote/with-charges.ts';
import type { CurrentEvent } from '../offers/event/current-event.ts';
import { tipsOf } from '../offers/event/tip.ts';
import type { Offer } from '../schema/offer.ts';
import { scriptWordsIn } from '../words/script-words.ts';
import type { InvoiceDocument } from './form/invoice.ts';
import { billedWhy } from './words/billed-why.ts';
import { wordedLine } from './words/line-words.ts';
import { openPaymentLabel } from './words/open-payment-label.ts';
import { quoteNoteWords } from './words/quote-note-words.ts';

/**
 * The invoice of an event as it stands: the accepted terms at the billed counts, payments received, balance. Fails
 * for a cancelled event, whose price its terms of cancellation settle, and for one without a day.
 */
export function invoice({ offer, facts, status }: CurrentEvent): Parsed<InvoiceDocument> {
  const { proposal: id, terms } = offer;
  const { date, billed, received, total } = status;
  if (date === null)
    return notParsed(
      `${id} is ${status.state}, and nothing is billed for it`,
      status.state === 'cancelled'
        ? 'what is kept or paid back follows the terms accepted; record money by `payment`'
        : 'say its new day by `postpone` with --to',
    );
  const quoted = quote(terms, billed);
  const priced = withCharges(quoted, terms, status.charges);
  const { account } = status;
  const { acceptance } = status.accepted;
  const tips = tipsOf(facts, terms.currency).map(({ on, amount, method }) => ({
    on,
    amount: moneyText(amount),
    method: method ?? '',
  }));
  return parsed({
    version: 1,
    kind: 'invoice',
    event: {
      id,
      occasion: offer.occasion,
      client: offer.client.name,
      date,
      place: offer.placeName,
      package: terms.packages.find((each) => each.id === billed.package)?.name ?? billed.package,
      state: status.state,
    },
    offer: { revision: offer.revision, digest: offer.digest, acceptedOn: acceptance.accepted },
    asOf: facts.map(({ on }) => on).reduce(laterDay),
    counts: {
      accepted: acceptance.choice.guests,
      guaranteed: status.choice.guests,
      served: status.served,
      floor: status.floor,
      billed: billed.guests,
      why: billedWhy(status, terms.locale),
    },
    currency: terms.currency,
    lines: priced.lines.map((line) => wordedLine(line, terms)),
    taxes: priced.taxes,
    taxIncluded: priced.taxIncluded,
    total: moneyText(total),
    received: received.map(({ on, amount, method }, place) => ({
      on,
      amount: moneyText(amount),
      method: method ?? '',
      paid: paidWith(account, place, terms),
    })),
    ...(tips.length > 0 && { tips }),
    receivedInAll: moneyText(account.received),
    balance: moneyText(account.balance),
    due: status.open.map((row) => ({
      label: openPaymentLabel(row, terms),
      due: row.due ?? '',
      amount: moneyText(row.amount),
    })),
    notes: quoteNoteWords(
      scriptWordsIn(terms.locale),
      quoted.notes,
      terms.packages.find((each) => each.id === billed.package),
    ),
  });
}

/** The instalments that one receipt went into, with how much of it. */
function paidWith(
  { instalments }: Account,
  receipt: number,
  terms: Offer['terms'],
): InvoiceDocument['received'][number]['paid'] {
  return instalments.flatMap(({ instalment, by }) =>
    by
      .filter((share) => share.receipt === receipt)
      .map(({ amount }) => ({ label: openPaymentLabel({ instalment }, terms), amount: moneyText(amount) })),
  );
}
