import { moneyText } from '../engine/money/money.ts';
import { cancellation } from '../offers/event/cancel.ts';
import { currentEvent } from '../offers/event/current-event.ts';
import { shown } from '../views/quote-view-of.ts';
import { wordsIn } from '../words/words-in.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';

/** Calls an event off for good; its history is kept. */
export const command: Command = {
  summary: 'cancel an event; its history is kept',
  usage: 'EVENT [--reason TEXT]',
  options: { reason: { type: 'string', summary: 'why, for the record', value: 'TEXT' } },
  async run(call) {
    const [event, ...more] = call.args;
    if (event === undefined || more.length > 0) return wrongCall(call, 'Name one event: cancel EVENT.');
    const open = await openBook(call);
    if (!open) return 1;
    const { reason } = call.flags;
    const why = typeof reason === 'string' ? reason : undefined;
    const done = await recordInto(call, open, event, (book) => cancellation(book, event, why, open.today));
    if (!done.ok) return refused(call, done);
    const { fact, after } = done.value;
    const now = currentEvent(after, event);
    if (!now.ok) return refused(call, now);
    const { offer, status } = now.value;
    const received = moneyText(status.account.received);
    if (call.json) call.write(JSON.stringify({ fact, received }, null, 2));
    else {
      const say = wordsIn(offer.terms.locale);
      call.write(say('terminal.canceled', { event }));
      call.write(
        say('terminal.canceled.received', {
          sum: shown(received, offer.terms),
          revision: `${offer.revision}`,
        }),
      );
    }
    return 0;
  },
};
