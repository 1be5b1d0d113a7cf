import { parseDay } from '../engine/calendar/day.ts';
import { moneyText } from '../engine/money/money.ts';
import { parseMoney } from '../engine/money/parse-money.ts';
import { factFile } from '../offers/accept.ts';
import { capacityWarnings, confirmation } from '../offers/confirm.ts';
import { writeOnce } from '../offers/write-once.ts';
import { type Command, wrongCall } from './command.ts';
import { openBook } from './open-book.ts';
import { refused } from './refused.ts';

/** Records the deposit and confirms the event. */
export const command: Command = {
  summary: 'record the deposit and confirm an event',
  usage: 'EVENT [--received AMOUNT] [--on DATE] [--method TEXT]',
  options: {
    received: {
      type: 'string',
      summary: 'what came in; what was due on acceptance if not said',
      value: 'AMOUNT',
    },
    on: { type: 'string', summary: 'the day it came in, today if not said', value: 'DATE' },
    method: { type: 'string', summary: 'how it came: transfer, cheque, cash', value: 'TEXT' },
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
      amount: sum && moneyText(sum.value),
      on: day?.value ?? today,
      method: typeof method === 'string' ? method : undefined,
    };
    const fact = confirmation(book, event, deposit, today);
    if (!fact.ok) return refused(call, fact);
    const number = (book.events.get(event)?.facts.length ?? 0) + 1;
    if (!(await writeOnce(factFile(call.contentDir, event, number, 'confirmed'), fact.value)))
      return refused(call, {
        what: `something else has just been recorded for ${event}`,
        wayOut: 'run confirm again; it starts from what is recorded now',
      });
    const warnings = capacityWarnings(book, event);
    if (call.json) call.write(JSON.stringify({ ...fact.value, warnings }, null, 2));
    else {
      const { amount, on: cameOn } = fact.value.received;
      call.write(`Confirmed: ${event}; ${amount} ${book.kitchen.currency} received on ${cameOn}.`);
      for (const warning of warnings) call.write(`Warning: ${warning}.`);
    }
    return 0;
  },
};
