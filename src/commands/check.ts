import type { Book } from '../book/book.ts';
import type { Finding } from '../book/findings/finding.ts';
import { findingsOn } from '../check/findings-on.ts';
import { readBook } from '../check/read-book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { offerProblem } from '../offers/check-offer.ts';
import { hoursShortOf } from '../views/kitchen/hours-short-of.ts';
import { orderAlarmsOf } from '../views/kitchen/order-alarms-of.ts';
import { powerShortOf } from '../views/kitchen/power-short-of.ts';
import { type Command, wrongCall } from './call/command.ts';
import { sayFindings } from './call/say-findings.ts';
import { todayFor } from './call/today.ts';
import { rewriteNames } from './rewrite-names.ts';

export const command: Command = {
  summary: 'report every problem in the content, where it is and how to fix it',
  usage: '[--rewrite]',
  options: {
    rewrite: {
      type: 'boolean',
      summary: 'replace old field names with the new ones; nothing else changes',
    },
  },
  async run(call) {
    const [word] = call.args;
    if (word !== undefined) return wrongCall(call, `check takes no arguments, but got '${word}'.`);
    const { book, findings } = await readBook(call.contentDir, offerProblem);
    const all = book
      ? [...findings, ...(await onDay(book, todayFor(call, book.kitchen.timeZone) as Day))]
      : findings;
    const { lines, left } =
      call.flags.rewrite === true ? await rewriteNames(call.contentDir, all) : { lines: [], left: all };
    if (!call.json) for (const line of lines) call.write(line);
    sayFindings(call, left, book?.kitchen.locale);
    return all.some(({ severity }) => severity === 'error') ? 1 : 0;
  },
};

/** What depends on the day: the content's, the hours of those who work, and the orders of coming events. */
async function onDay(book: Book, today: Day): Promise<Finding[]> {
  return [
    ...findingsOn(book, today),
    ...hoursShortOf(book, today),
    ...powerShortOf(book, today),
    ...(await orderAlarmsOf(book, today)),
  ];
}
