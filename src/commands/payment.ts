import { parseDay } from '../engine/calendar/day.ts';
import { moneyText, subtract, sum } from '../engine/money/money.ts';
import { parseMoney } from '../engine/money/parse-money.ts';
import { currentEvent } from '../offers/current-event.ts';
import { payment } from '../offers/payment.ts';
import { balanceLabel } from '../views/invoice-view-of.ts';
import { shown } from '../views/quote-view-of.ts';
import { type Command, wrongCall } from './command.ts';
import { openBook } from './open-book.ts';
import { recordInto } from './record-into.ts';
import { refused } from './refused.ts';

/** Records money that came in for an event. */
export const command: Command = {
  summary: 'record a payment for an event',
  usage: 'EVENT AMOUNT [--on DATE] [--method TEXT]',
  options: {
    on: { type: 'string', summary: 'the day it came in, today if not said', value: 'DATE' },
    method: { type: 'string', summary: 'how it came: transfer, cheque, cash', value: 'TEXT' },
  },
  async run(call) {
    const [event, amount, ...more] = call.args;
    if (event === undefined || amount === undefined || more.length > 0)
      return wrongCall(call, 'Name one event and what came in: payment EVENT AMOUNT.');
    const day = typeof call.flags.on === 'string' ? parseDay(call.flags.on) : undefined;
    if (day && !day.ok) return wrongCall(call, `--on: ${day.what}; ${day.wayOut}.`);
    const open = await openBook(call);
    if (!open) return 1;
    const { method } = call.flags;
    const known = currentEvent(open.book, event);
    if (!known.ok) return refused(call, known);
    const money = parseMoney(amount, known.value.offer.terms.currency);
    if (!money.ok) return wrongCall(call, `${money.what}; ${money.wayOut}.`);
    const said = {
      amount: money.value,
      on: day?.value ?? open.today,
      method: typeof method === 'string' ? method : undefined,
    };
    const done = await recordInto(call, open, event, (book) => payment(book, event, said, open.today));
    if (!done.ok) return refused(call, done);
    const { fact, after } = done.value;
    const now = currentEvent(after, event);
    if (!now.ok) return refused(call, now);
    const { offer, status } = now.value;
    const { terms } = offer;
    const received = sum(
      status.received.map((each) => each.amount),
      terms.currency,
    );
    const balance = moneyText(subtract(status.total, received));
    if (call.json) {
      const billed = status.state !== 'cancelled';
      call.write(
        JSON.stringify({ fact, received: moneyText(received), ...(billed ? { balance } : {}) }, null, 2),
      );
      return 0;
    }
    call.write(`Received: ${shown(fact.received.amount, terms)} for ${event} on ${fact.received.on}.`);
    call.write(
      status.state === 'cancelled'
        ? `It is cancelled; ${shown(moneyText(received), terms)} received in all.`
        : `${balanceLabel(balance)}: ${shown(balance.replace(/^-/, ''), terms)} of ${shown(moneyText(status.total), terms)}.`,
    );
    return 0;
  },
};
