import { parseDay } from '../engine/calendar/day.ts';
import { moneyText } from '../engine/money/money.ts';
import { dateText } from '../exports/words/date-text.ts';
import { openPaymentLabel } from '../exports/words/open-payment-label.ts';
import { textAsRead } from '../exports/words/text-as-read.ts';
import { capacityWarnings } from '../offers/event/confirm.ts';
import { currentEvent } from '../offers/event/current-event.ts';
import { postponement } from '../offers/event/postpone.ts';
import { shown } from '../views/quote-view-of.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';
import { changeOf } from './text/change-of.ts';

/** Moves an event to another day, or puts it off without one. */
export const command: Command = {
  summary: 'postpone an event, with or without a new date',
  usage: 'EVENT [--to DATE] [--hold]',
  options: {
    to: { type: 'string', summary: 'the new day; without it the event has no date', value: 'DATE' },
    hold: { type: 'boolean', summary: 'only hold the new day until it is confirmed again' },
  },
  async run(call) {
    const [event, ...more] = call.args;
    if (event === undefined || more.length > 0)
      return wrongCall(call, 'Name one event: postpone EVENT --to DATE.');
    const day = typeof call.flags.to === 'string' ? parseDay(call.flags.to) : undefined;
    if (day && !day.ok) return wrongCall(call, `--to: ${day.what}; ${day.wayOut}.`);
    const open = await openBook(call);
    if (!open) return 1;
    const asked = { to: day?.value ?? null, hold: call.flags.hold === true };
    const done = await recordInto(call, open, event, (book) => postponement(book, event, asked, open.today));
    if (!done.ok) return refused(call, done);
    const { fact, after } = done.value;
    const now = currentEvent(after, event);
    if (!now.ok) return refused(call, now);
    const { status, offer } = now.value;
    const change = fact.to === null ? null : await changeOf(after, event, open.today);
    const warnings = capacityWarnings(after, event);
    if (call.json) {
      call.write(JSON.stringify({ fact, state: status.state, change: change?.data, warnings }, null, 2));
      return 0;
    }
    const { locale } = open.book.kitchen;
    if (fact.to === null) {
      call.write(
        `Postponed: ${event} has no date now. It is off every list until you give it one with --to.`,
      );
      return 0;
    }
    call.write(
      `Moved: ${event} from ${dateText(fact.from, locale)} to ${dateText(fact.to, locale)}${fact.hold ? ', on hold until it is confirmed' : ''}.`,
    );
    if (status.deadline) call.write(`The count can go down until ${status.deadline}.`);
    for (const row of status.open)
      call.write(
        `Due ${row.due ?? 'on acceptance'}: ${shown(moneyText(row.amount), offer.terms)}, ${textAsRead(openPaymentLabel(row, offer.terms), offer.terms.locale)}.`,
      );
    for (const warning of warnings) call.write(`Warning: ${warning}.`);
    if (change !== null) call.write(`\n${change.text}`);
    return 0;
  },
};
