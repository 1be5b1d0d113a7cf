import { parseDay } from '../engine/calendar/day.ts';
import { moneyText } from '../engine/money/money.ts';
import { parseMoney } from '../engine/money/parse-money.ts';
import { type CurrentEvent, currentEvent } from '../offers/event/current-event.ts';
import { isRecorded, type PaymentSaid, payment } from '../offers/event/payment.ts';
import { balanceLabel } from '../views/kitchen/invoice-view-of.ts';
import { shown } from '../views/quote-view-of.ts';
import { wordsIn } from '../words/words-in.ts';
import { ask } from './ask.ts';
import { type Call, type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';

/** Records money that came in for an event, or was refunded. */
export const command: Command = {
  summary: 'record a payment for an event; a negative amount is a refund',
  usage: 'EVENT AMOUNT [--on DATE] [--method TEXT] [--again]',
  options: {
    on: { type: 'string', summary: 'the day it came in (default: today)', value: 'DATE' },
    method: { type: 'string', summary: 'how it was paid: transfer, check, cash', value: 'TEXT' },
    again: { type: 'boolean', summary: 'record the same amount a second time on one day' },
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
    const money = parseMoney(amount, known.value.offer.terms.currency, { negative: true });
    if (!money.ok) return wrongCall(call, `${money.what}; ${money.wayOut}.`);
    const said = {
      amount: money.value,
      on: day?.value ?? open.today,
      method: typeof method === 'string' ? method : undefined,
    };
    const second = call.flags.again === true || (await isSecond(call, known.value, said));
    if (second === undefined) return 0;
    const done = await recordInto(call, open, event, (book) =>
      payment(book, event, said, open.today, second),
    );
    if (!done.ok) return refused(call, done);
    const { fact, after } = done.value;
    const now = currentEvent(after, event);
    if (!now.ok) return refused(call, now);
    const { offer, status } = now.value;
    const { terms } = offer;
    const received = moneyText(status.account.received);
    const balance = moneyText(status.account.balance);
    if (call.json) {
      const billed = status.state !== 'cancelled';
      call.write(JSON.stringify({ fact, received, ...(billed ? { balance } : {}) }, null, 2));
      return 0;
    }
    const { amount: sum, on } = fact.received;
    const say = wordsIn(terms.locale);
    call.write(
      say(sum.startsWith('-') ? 'terminal.refunded' : 'terminal.received', {
        sum: shown(sum.replace(/^-/, ''), terms),
        event,
        day: on,
      }),
    );
    call.write(
      status.state === 'cancelled'
        ? say('terminal.canceled.in-all', { sum: shown(received, terms) })
        : `${balanceLabel(balance, say)}: ${shown(balance.replace(/^-/, ''), terms)} of ${shown(moneyText(status.total), terms)}.`,
    );
    return 0;
  },
};

/**
 * Whether a payment that is recorded already came in a second time, asked in a terminal. Undefined where it did not;
 * false without asking where it is not recorded yet or nobody can be asked, so that it is refused.
 */
async function isSecond(
  call: Call,
  { offer, status }: CurrentEvent,
  said: PaymentSaid,
): Promise<boolean | undefined> {
  if (call.json || !process.stdin.isTTY || !isRecorded(status, said)) return false;
  const sum = shown(moneyText(said.amount), offer.terms);
  const answers = await ask([
    {
      key: 'second',
      text: `${sum} on ${said.on} is already recorded. Is this a second payment of the same amount? yes or no`,
      fallback: 'no',
      problem: (answer) => (/^(y|yes|n|no)$/i.test(answer) ? undefined : 'Answer yes or no.'),
    },
  ]);
  if (answers && /^y/i.test(answers.second ?? '')) return true;
  call.write('Nothing was recorded.');
  return undefined;
}
