import type { Book } from '../book/book.ts';
import { parseCameBack } from '../engine/learning/came-back.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import { GUEST_GROUPS, type Guests } from '../engine/quote/counts.ts';
import { served } from '../offers/event/served.ts';
import { carriedFood, eventThatWasServed, leftovers } from '../offers/learned/leftovers.ts';
import { leftoversRows } from '../offers/learned/leftovers-rows.ts';
import { guestsText } from '../views/quote-view-of.ts';
import { scriptWordsIn } from '../words/script-words.ts';
import { askedFor, type LeftoversSaid } from './ask-leftovers.ts';
import { readAnswerFile } from './call/answer-file.ts';
import { type Call, type Command, wrongCall } from './call/command.ts';
import { COUNT_OPTIONS, countsFromFlags, GROUP_FLAGS } from './call/counts-flags.ts';
import { type SentOut, sentOut } from './call/kept-plan.ts';
import { type OpenBook, openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';
import { leftoversText } from './text/leftovers-text.ts';

/** Records what came back of an event's dishes and what ran out, for the next plans to learn from. */
export const command: Command = {
  summary: 'record what came back from an event, dish by dish, and what ran out',
  usage: 'EVENT [--from FILE|-] [--adults N] [--children N] [--vendors N] [--staff N]',
  options: {
    from: {
      type: 'string',
      summary:
        'the leftovers as CSV (dish, came back, ran out, where it went, note); without it you are asked',
      value: 'FILE|-',
    },
    ...COUNT_OPTIONS,
  },
  async run(call) {
    const [event, ...more] = call.args;
    if (event === undefined || more.length > 0)
      return wrongCall(call, 'Name one event: leftovers EVENT --from FILE.');
    const counts = countsFromFlags(call.flags, GROUP_FLAGS);
    if (!counts.ok) return wrongCall(call, `${counts.what}; ${counts.wayOut}.`);
    const { from } = call.flags;
    if (typeof from !== 'string' && !process.stdin.isTTY)
      return wrongCall(
        call,
        'Give the leftovers as CSV, leftovers EVENT --from FILE, or run it in a terminal.',
      );
    const file = typeof from === 'string' ? await readAnswerFile(call, from) : undefined;
    if (typeof file === 'string') return wrongCall(call, file);
    let open = await openBook(call);
    if (!open) return 1;
    const over = eventThatWasServed(open.book, event, open.today);
    if (!over.ok) return refused(call, over);
    const out = await sentOut(call.contentDir, call.outDir, open.book, event, open.today);
    if (!out.ok) return refused(call, out);
    const said = file
      ? saidIn(file.text, out.value)
      : await askedFor(open.book, event, out.value, counts.value);
    if (!said) return refused(call, { what: 'nothing was recorded', wayOut: 'run it again when you know' });
    if (!said.ok) return refused(call, said);
    const { dishes } = said.value;
    // Said wrong once, nothing of it is recorded, the count of guests included.
    const sound = dishes.map(({ dish, said: words }) => parseCameBack(words, carriedFood(open!.book, dish)));
    for (const [index, read] of sound.entries())
      if (!read.ok) return refused(call, { ...read, what: `${dishes[index]?.dish.name}: ${read.what}` });
    const came = { ...said.value.came, ...counts.value };
    const counted = await recordServed(call, open, event, came);
    if (!counted.ok) return refused(call, counted);
    open = counted.value;
    const { plan } = out.value;
    const done = await recordInto(call, open, event, (book: Book) =>
      leftovers(book, event, { plan, dishes }, open!.today),
    );
    if (!done.ok) return refused(call, done);
    const { fact } = done.value;
    if (call.json) call.write(JSON.stringify({ fact }, null, 2));
    else {
      call.write(
        `Leftovers of ${event}: ${guestsText(scriptWordsIn(open.book.kitchen.locale), { guests: fact.came })} came.`,
      );
      call.write(leftoversText(fact, open.book.kitchen));
    }
    return 0;
  },
};

function saidIn(csv: string, { dishes: carried }: SentOut): Parsed<LeftoversSaid> {
  const { dishes, problems } = leftoversRows(csv, carried);
  return problems.length > 0
    ? notParsed(problems.slice(0, 20).join('\n'), 'fix the list; nothing was recorded from it')
    : parsed({ dishes, came: {} });
}

/** Who came is the fact that the bill follows too: it is recorded where it is not known or is another than said. */
async function recordServed(
  call: Pick<Call, 'contentDir'>,
  open: OpenBook,
  event: string,
  came: Partial<Guests>,
): Promise<Parsed<OpenBook>> {
  const found = eventThatWasServed(open.book, event, open.today);
  if (!found.ok) return found;
  const { served: before } = found.value.status;
  const said = GUEST_GROUPS.filter((group) => came[group] !== undefined);
  if (said.length === 0 || (before && said.every((group) => before[group] === came[group])))
    return parsed(open);
  const asked = { ...before, ...came };
  const done = await recordInto(call, open, event, (book) => served(book, event, asked, open.today));
  return done.ok ? parsed({ ...open, book: done.value.after }) : done;
}
