import { parseDay } from '../engine/calendar/day.ts';
import { parseMoney } from '../engine/money/parse-money.ts';
import { capacityWarnings, confirmation } from '../offers/event/confirm.ts';
import type { ConfirmedFact } from '../schema/event-fact.ts';
import { shown } from '../views/quote-view-of.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { type Recorded, recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';

/** Records the deposit and confirms the event. */
export const command: Command = {
  summary: 'record the deposit and confirm the event',
  usage: 'EVENT [--received AMOUNT] [--on DATE] [--method TEXT]',
  options: {
    received: {
      type: 'string',
      summary: 'amount received (default: the deposit still due)',
      value: 'AMOUNT',
    },
    on: { type: 'string', summary: 'the day it came in (default: today)', value: 'DATE' },
    method: { type: 'string', summary: 'how it was paid: transfer, check, cash', value: 'TEXT' },
  },
  async run(call) {
    const [event, ...more] = call.args;
    if (event === undefined || more.length > 0) return wrongCall(call, 'Name one event: confirm EVENT.');
    const open = await openBook(call);
    if (!open) return 1;
    const { book, today } = open;
    const { received, on, method } = call.flags;
    const sum = typeof received === 'string' ? parseMoney(received, book.kitchen.currency) : undefined;
    if (sum && !sum.ok) return wrongCall(call, `--received: ${sum.what}; ${sum.wayOut}.`);
    const day = typeof on === 'string' ? parseDay(on) : undefined;
    if (day && !day.ok) return wrongCall(call, `--on: ${day.what}; ${day.wayOut}.`);
    const deposit = {
      amount: sum?.value,
      on: day?.value ?? today,
      method: typeof method === 'string' ? method : undefined,
    };
    const done = await recordInto(call, open, event, (known) => confirmation(known, event, deposit, today));
    if (!done.ok) return refused(call, done);
    const { fact, after } = done.value;
    const warnings = capacityWarnings(after, event);
    if (call.json) call.write(JSON.stringify({ ...fact, warnings }, null, 2));
    else {
      call.write(`Confirmed: ${event}${moneyWords(done.value, event)}.`);
      for (const warning of warnings) call.write(`Warning: ${warning}.`);
    }
    return 0;
  },
};

/** What came in with it, as the line's end: `; $177.94 received on 2027-05-03`. */
function moneyWords({ fact, before }: Recorded<ConfirmedFact>, event: string): string {
  const { received } = fact;
  const { currency, locale } = before.kitchen;
  if (received) return `; ${shown(received.amount, { currency, locale })} received on ${received.on}`;
  const moved = before.events.get(event)?.facts.some(({ kind }) => kind === 'confirmed');
  return moved ? ' for its new day; the deposit was already in' : '; the deposit is already in';
}
