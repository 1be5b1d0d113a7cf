import type { Book } from '../book/book.ts';
import { parseDay } from '../engine/calendar/day.ts';
import { atTable } from '../engine/quote/counts.ts';
import { counted } from '../engine/text/counted.ts';
import { answerDifferences } from '../offers/answers/answer-differences.ts';
import { capacityWarnings } from '../offers/event/confirm.ts';
import { currentEvent } from '../offers/event/current-event.ts';
import { guarantee, SAME_COUNT } from '../offers/event/guarantee.ts';
import { guestsText } from '../views/quote-view-of.ts';
import { scriptWordsIn } from '../words/script-words.ts';
import { putAway, putAwayRecorded } from './call/answer-file.ts';
import { type Command, wrongCall } from './call/command.ts';
import { ASKED_OPTIONS, countFile, countFromFile, countFromFlags } from './call/count-given.ts';
import { openBook } from './call/open-book.ts';
import { recordInto } from './call/record-into.ts';
import { refused } from './call/refused.ts';
import { changeOf } from './text/change-of.ts';

/** Records the count the client is held to, and prints what it changes. */
export const command: Command = {
  summary: 'record the client’s guaranteed count and show what it changes',
  usage: 'EVENT --guests N [--adults N] … [--take "Main course=a:50,b:34"]   or   --from FILE|-',
  options: {
    from: { type: 'string', summary: 'the count change file from the client’s page', value: 'FILE|-' },
    ...ASKED_OPTIONS,
    on: { type: 'string', summary: 'the day the client gave it (default: today)', value: 'DATE' },
    'drop-needs': {
      type: 'boolean',
      summary: 'the count change drops a need on record; you asked the client',
    },
    'below-floor': {
      type: 'boolean',
      summary: 'fewer will eat than the contract’s minimum, which is still billed',
    },
  },
  async run(call) {
    const { on, from } = call.flags;
    const day = typeof on === 'string' ? parseDay(on) : undefined;
    if (day && !day.ok) return wrongCall(call, `--on: ${day.what}; ${day.wayOut}.`);
    const said = typeof from === 'string' ? await countFile(call, from) : countFromFlags(call);
    if (typeof said === 'number') return said;
    const open = await openBook(call);
    if (!open) return 1;
    const count = 'askedOf' in said ? said : countFromFile(call, said, open.book.kitchen.locale);
    if (typeof count === 'number') return count;
    const { event } = count;
    const asked = (book: Book) => {
      const wanted = count.askedOf(book);
      if (!wanted.ok) return wanted;
      const given = day ? { given: day.value } : {};
      return guarantee(
        book,
        event,
        { ...wanted.value, ...given, belowFloor: call.flags['below-floor'] === true },
        open.today,
      );
    };
    const done = await recordInto(call, open, event, asked);
    if (!done.ok) return (await putAwayRecorded(call, count.file, done, SAME_COUNT)) ?? refused(call, done);
    if (count.file) await putAway(count.file);
    const { fact, before, after } = done.value;
    const change = await changeOf(after, event, open.today);
    const warnings = capacityWarnings(after, event);
    if (call.json) {
      call.write(JSON.stringify({ fact, change: change.data, warnings }, null, 2));
      return 0;
    }
    call.write(`Guaranteed: ${event}, ${guestsText(scriptWordsIn(open.book.kitchen.locale), fact)}.`);
    if (fact.belowFloor) {
      const now = currentEvent(after, event);
      const floor = now.ok ? now.value.status.floor : atTable(fact.guests);
      call.write(
        `Cooked for ${counted(atTable(fact.guests), 'guest')} at the table; the minimum of ${floor} is billed.`,
      );
    }
    const known = currentEvent(before, event);
    const now = currentEvent(after, event);
    // What flags say the owner has just typed; what a client's page says is named.
    if (count.file && known.ok && now.ok) {
      const { offer, status } = known.value;
      for (const line of answerDifferences(offer.terms, status.choice, now.value.status.choice, 'recorded'))
        call.write(`  ${line}`);
    }
    const mainsBefore = known.ok ? known.value.status.choice.mains : {};
    for (const line of mainsLines(fact.mains, mainsBefore, count.mains)) call.write(line);
    for (const warning of warnings) call.write(`Warning: ${warning}.`);
    call.write(`\n${change.text}`);
    return 0;
  },
};

type Mains = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** Courses whose mains nobody gave are scaled in proportion, and the caterer is told, since the client must choose again. */
function mainsLines(mains: Mains, before: Mains, asked: Mains): string[] {
  return Object.entries(mains).flatMap(([course, dishes]) => {
    const taken = Object.entries(dishes).filter(([, guests]) => guests > 0);
    const same = taken.every(([id, guests]) => before[course]?.[id] === guests);
    if (Object.hasOwn(asked, course) || same) return [];
    const counts = taken.map(([id, guests]) => `${id} ${guests}`).join(', ');
    return [`${course}, scaled in proportion: ${counts}. Ask the client, then set them with --take.`];
  });
}
