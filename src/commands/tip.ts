import { parseDay } from '../engine/calendar/day.ts';
import { moneyText, sum } from '../engine/money/money.ts';
import { parseMoney } from '../engine/money/parse-money.ts';
import { currentEvent } from '../offers/event/current-event.ts';
import { tip, tipsOf } from '../offers/event/tip.ts';
import { shown } from '../views/quote-view-of.ts';
import { wordsIn } from '../words/words-in.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';

/** Records a tip for the crew, which no bill holds. */
export const command: Command = {
  summary: 'record a tip for the crew; it is no payment, and a negative amount takes one back',
  usage: 'EVENT AMOUNT [--on DATE] [--method TEXT] [--again]',
  options: {
    on: { type: 'string', summary: 'the day it came in (default: today)', value: 'DATE' },
    method: { type: 'string', summary: 'how it was given: cash, card', value: 'TEXT' },
    again: { type: 'boolean', summary: 'record the same amount a second time on one day' },
  },
  async run(call) {
    const [event, amount, ...more] = call.args;
    if (event === undefined || amount === undefined || more.length > 0)
      return wrongCall(call, 'Name one event and the tip: tip EVENT AMOUNT.');
    const day = typeof call.flags.on === 'string' ? parseDay(call.flags.on) : undefined;
    if (day && !day.ok) return wrongCall(call, `--on: ${day.what}; ${day.wayOut}.`);
    const open = await openBook(call);
    if (!open) return 1;
    const known = currentEvent(open.book, event);
    if (!known.ok) return refused(call, known);
    const { terms } = known.value.offer;
    const money = parseMoney(amount, terms.currency, { negative: true });
    if (!money.ok) return wrongCall(call, `${money.what}; ${money.wayOut}.`);
    const { method } = call.flags;
    const said = {
      amount: money.value,
      on: day?.value ?? open.today,
      method: typeof method === 'string' ? method : undefined,
    };
    const done = await recordInto(call, open, event, (book) =>
      tip(book, event, said, open.today, call.flags.again === true),
    );
    if (!done.ok) return refused(call, done);
    const { fact, after } = done.value;
    const tips = tipsOf(after.events.get(event)?.facts ?? [], terms.currency);
    const all = moneyText(
      sum(
        tips.map((each) => each.amount),
        terms.currency,
      ),
    );
    if (call.json) call.write(JSON.stringify({ fact, tips: all }, null, 2));
    else
      call.write(
        wordsIn(terms.locale)('terminal.tip', {
          event,
          sum: shown(fact.received.amount, terms),
          all: shown(all, terms),
        }),
      );
    return 0;
  },
};
