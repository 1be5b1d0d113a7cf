import { recordLastPlan } from '../build/kept-plans.ts';
import { moneyText } from '../engine/money/money.ts';
import { billedWhy } from '../exports/words/billed-why.ts';
import { currentEvent } from '../offers/event/current-event.ts';
import { served } from '../offers/event/served.ts';
import { guestsText, shown } from '../views/quote-view-of.ts';
import { scriptWordsIn } from '../words/script-words.ts';
import { type Command, wrongCall } from './call/command.ts';
import { COUNT_OPTIONS, countsFromFlags, GROUP_FLAGS } from './call/counts-flags.ts';
import { openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';

/** Records who was really served, which the bill follows where it is more than was guaranteed. */
export const command: Command = {
  summary: 'record how many guests were actually served, for the bill',
  usage: 'EVENT [--adults N] [--children N] [--vendors N] [--staff N]',
  options: COUNT_OPTIONS,
  async run(call) {
    const [event, ...more] = call.args;
    if (event === undefined || more.length > 0)
      return wrongCall(call, 'Name one event: served EVENT --adults N --children N.');
    const counts = countsFromFlags(call.flags, GROUP_FLAGS);
    if (!counts.ok) return wrongCall(call, `${counts.what}; ${counts.wayOut}.`);
    if (Object.keys(counts.value).length === 0)
      return wrongCall(call, 'Give the number served: served EVENT --adults N --children N.');
    const open = await openBook(call);
    if (!open) return 1;
    const done = await recordInto(call, open, event, (book) => served(book, event, counts.value, open.today));
    if (!done.ok) return refused(call, done);
    const { fact, after } = done.value;
    await recordLastPlan(call.contentDir, after, event);
    const now = currentEvent(after, event);
    if (!now.ok) return refused(call, now);
    const { offer, status } = now.value;
    const total = moneyText(status.total);
    if (call.json) {
      call.write(JSON.stringify({ fact, billed: status.billed.guests, total }, null, 2));
      return 0;
    }
    call.write(`Served: ${event}, ${guestsText(scriptWordsIn(offer.terms.locale), fact)}.`);
    call.write(`${billedWhy(status, offer.terms.locale)}. Total ${shown(total, offer.terms)}.`);
    return 0;
  },
};
