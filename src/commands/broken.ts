import { moneyText } from '../engine/money/money.ts';
import { parseMoney } from '../engine/money/parse-money.ts';
import { type BrokenSaid, broken } from '../offers/event/broken.ts';
import { type CurrentEvent, currentEvent } from '../offers/event/current-event.ts';
import { balanceLabel } from '../views/kitchen/invoice-view-of.ts';
import { shown } from '../views/quote-view-of.ts';
import { wordsIn } from '../words/words-in.ts';
import { ask } from './ask.ts';
import { type Call, type Command, wrongCall } from './call/command.ts';
import { type OpenBook, openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';

/** Records what was broken at an event or did not come back, charged to the client or not. */
export const command: Command = {
  summary: 'record what was broken or is missing after an event, and what the client is charged for it',
  usage: 'EVENT ITEM COUNT [--missing] [--charge PRICE | --no-charge] [--note TEXT] [--again]',
  options: {
    missing: { type: 'boolean', summary: 'it did not come back (default: it is broken)' },
    charge: {
      type: 'string',
      summary: 'what the client is charged for each (default: its replacement price, if it has one)',
      value: 'PRICE',
    },
    'no-charge': { type: 'boolean', summary: 'the client is charged nothing' },
    note: { type: 'string', summary: 'how it came about', value: 'TEXT' },
    again: { type: 'boolean', summary: 'as many more of the same on the same day' },
  },
  async run(call) {
    const [event, item, number, ...more] = call.args;
    if (event === undefined || item === undefined || number === undefined || more.length > 0)
      return wrongCall(call, 'Name one event, what is broken, and how many: broken EVENT ITEM COUNT.');
    const { charge, note } = call.flags;
    if (charge !== undefined && call.flags['no-charge'] === true)
      return wrongCall(call, '--charge and --no-charge don’t go together; give one of them.');
    if (!/^-?[1-9]\d{0,4}$/.test(number))
      return wrongCall(
        call,
        `“${number}” is not a count; write a whole number, 3, or -3 to take back what was recorded by mistake.`,
      );
    const open = await openBook(call);
    if (!open) return 1;
    const known = currentEvent(open.book, event);
    if (!known.ok) return refused(call, known);
    const price =
      typeof charge === 'string' ? parseMoney(charge, known.value.offer.terms.currency) : undefined;
    if (price && !price.ok) return wrongCall(call, `--charge: ${price.what}; ${price.wayOut}.`);
    const said: BrokenSaid = {
      what: call.flags.missing === true ? 'missing' : 'broken',
      item,
      count: Number(number),
      each: call.flags['no-charge'] === true ? null : price?.value,
      why: typeof note === 'string' ? note : undefined,
    };
    const second = call.flags.again === true || (await isMore(call, open, event, said));
    if (second === undefined) return 0;
    const done = await recordInto(call, open, event, (book) => broken(book, event, said, open.today, second));
    if (!done.ok) return refused(call, done);
    const now = currentEvent(done.value.after, event);
    if (!now.ok) return refused(call, now);
    tell(call, event, done.value.fact, now.value);
    return 0;
  },
};

function tell(
  call: Call,
  event: string,
  fact: { what: string; name: string; count: number; each: string | null },
  { offer, status }: CurrentEvent,
): void {
  const balance = moneyText(status.account.balance);
  const total = moneyText(status.total);
  if (call.json) {
    call.write(JSON.stringify({ fact, total, balance }, null, 2));
    return;
  }
  const { terms } = offer;
  const say = wordsIn(terms.locale);
  const { what, name, count, each } = fact;
  call.write(
    say('terminal.broken', {
      event,
      taken: count < 0 ? 'back' : 'new',
      count: Math.abs(count),
      item: say('bill.loss', { what, item: name }),
      charged: each === null ? 'no' : 'yes',
      price: each === null ? '' : shown(each, terms),
    }),
  );
  call.write(
    say('terminal.broken.total', {
      label: balanceLabel(balance, say),
      balance: shown(balance.replace(/^-/, ''), terms),
      total: shown(total, terms),
    }),
  );
}

/** Whether what is recorded already happened a second time, asked in a terminal; as with a payment. */
async function isMore(
  call: Call,
  { book, today }: OpenBook,
  event: string,
  said: BrokenSaid,
): Promise<boolean | undefined> {
  if (call.json || !process.stdin.isTTY) return false;
  const once = broken(book, event, said, today);
  if (once.ok || !broken(book, event, said, today, true).ok) return false;
  const answers = await ask([
    {
      key: 'more',
      text: `${once.what}. Are as many more ${said.what}? yes or no`,
      fallback: 'no',
      problem: (answer) => (/^(y|yes|n|no)$/i.test(answer) ? undefined : 'Answer yes or no.'),
    },
  ]);
  if (answers && /^y/i.test(answers.more ?? '')) return true;
  call.write('Nothing was recorded.');
  return undefined;
}
