import type { Book } from '../book/book.ts';
import { type Day, parseDay } from '../engine/calendar/day.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import { dateText } from '../exports/words/date-text.ts';
import { statementsIn } from '../exports/words/statement-text.ts';
import { readGuestList } from '../offers/answers/read-guest-list.ts';
import { currentEvent } from '../offers/event/current-event.ts';
import { listDifferences } from '../offers/guest-list/differences.ts';
import {
  type GuestListGiven,
  guestList,
  isLate,
  listedCourses,
  SAME_LIST,
} from '../offers/guest-list/guest-list.ts';
import { wordsIn } from '../words/words-in.ts';
import { type AnswerFile, putAway, putAwayRecorded, readAnswerFile } from './call/answer-file.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';
import { guestsByTableText } from './text/guests-by-table-text.ts';
import { worded } from './text/worded.ts';

/** Records who comes, where each sits and what each takes, and says what that means. */
export const command: Command = {
  summary: 'record a guest list: tables, dishes chosen and dietary needs',
  usage: 'EVENT --from FILE|-',
  options: {
    from: {
      type: 'string',
      summary: 'the list as CSV (name, table, main, need), or the file the client’s page sent',
      value: 'FILE|-',
    },
    on: { type: 'string', summary: 'the day the client gave it (default: today)', value: 'DATE' },
  },
  async run(call) {
    const { from, on } = call.flags;
    if (typeof from !== 'string' || call.args.length > 1)
      return wrongCall(call, 'Name one event and its list: guests EVENT --from FILE.');
    const day = typeof on === 'string' ? parseDay(on) : undefined;
    if (day && !day.ok) return wrongCall(call, `--on: ${day.what}; ${day.wayOut}.`);
    const file = await readAnswerFile(call, from);
    if (typeof file === 'string') return wrongCall(call, file);
    const open = await openBook(call);
    if (!open) return 1;
    const { locale } = open.book.kitchen;
    const said = givenIn(file, call.args[0], locale);
    if (!said.ok) return refused(call, said);
    const { event } = said.value;
    if (event === undefined) return wrongCall(call, 'Name the event: guests EVENT --from FILE.');
    const inWords = statementsIn(locale);
    const given: GuestListGiven = { ...said.value, ...(day && { given: day.value }) };
    const notes: string[] = [];
    const done = await recordInto(call, open, event, (book: Book) => {
      const read = worded(guestList(book, event, given, open.today), locale);
      if (read.ok) notes.splice(0, notes.length, ...read.value.notes.map(inWords));
      return read;
    });
    if (!done.ok) return (await putAwayRecorded(call, file, done, SAME_LIST)) ?? refused(call, done);
    await putAway(file);
    const { fact, after } = done.value;
    const now = currentEvent(after, event);
    if (!now.ok) return refused(call, now);
    const { offer, status } = now.value;
    const courses = listedCourses(offer, status);
    const differences = listDifferences(fact.guests, status.choice, courses).map(inWords);
    const late = isLate(fact, status);
    if (call.json) {
      call.write(JSON.stringify({ fact, late, notes, differences }, null, 2));
      return 0;
    }
    const say = wordsIn(locale);
    call.write(say('terminal.list-recorded', { event, n: fact.guests.length }));
    if (late && status.deadline)
      call.write(say('terminal.list-late', { day: dateText(status.deadline, locale) }));
    for (const line of guestsByTableText(fact.guests, courses, say)) call.write(line);
    if (differences.length > 0) {
      call.write(`\n${say('terminal.list-differs')}`);
      for (const line of differences) call.write(`  ${line}.`);
      call.write(`  ${say('terminal.list-differs.way', { event })}`);
    }
    if (notes.length > 0) {
      call.write(`\n${say('terminal.check-these')}`);
      for (const line of notes) call.write(`  ${line}.`);
    }
    return 0;
  },
};

/** A list with the event it is for: as the page posted it, which says so itself, or a CSV for the event named. */
function givenIn(
  { text }: AnswerFile,
  event: string | undefined,
  locale: string,
): Parsed<GuestListGiven & { readonly event: string | undefined }> {
  if (!/^\uFEFF?\s*\{/.test(text)) return parsed({ csv: text, event });
  const read = worded(readGuestList(text), locale);
  if (!read.ok) return read;
  const { csv, made, offer, event: own } = read.value;
  if (event !== undefined && event !== own)
    return notParsed(`this guest list is for ${own}`, 'give that event or leave it out');
  return parsed({ csv, offer, event: own, given: made as Day });
}
