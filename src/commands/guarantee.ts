import { atTable } from '../offers/billed-guests.ts';
import { capacityWarnings } from '../offers/confirm.ts';
import { currentEvent } from '../offers/current-event.ts';
import { guarantee } from '../offers/guarantee.ts';
import { guestsText } from '../views/quote-view-of.ts';
import { changeOf } from './change-of.ts';
import { changesText } from './changes-text.ts';
import { type Command, wrongCall } from './command.ts';
import { COUNT_OPTIONS, countsFromFlags, mainsFromFlag, needsFromFlag } from './counts-flags.ts';
import { openBook } from './open-book.ts';
import { recordInto } from './record-into.ts';
import { refused } from './refused.ts';

/** Records the count the client is held to, and prints what it changes. */
export const command: Command = {
  summary: 'record the count the client guarantees, and what it changes',
  usage: 'EVENT --guests N [--adults N] … [--need vegetarian=9] … [--take "Main course=a:50,b:34"]',
  options: {
    guests: { type: 'string', summary: 'guests at the table, adults and children', value: 'N' },
    ...COUNT_OPTIONS,
    need: {
      type: 'string',
      summary: 'guests with a dietary need or allergy; 0 takes it out',
      value: 'NEED=N',
      multiple: true,
    },
    take: {
      type: 'string',
      summary: 'guests by main; kept in proportion if not said',
      value: 'COURSE=DISH:N,…',
      multiple: true,
    },
    'below-floor': {
      type: 'boolean',
      summary: 'fewer will eat than the contract’s floor, which is billed all the same',
    },
  },
  async run(call) {
    const [event, ...more] = call.args;
    if (event === undefined || more.length > 0)
      return wrongCall(call, 'Name one event: guarantee EVENT --guests N.');
    const counts = countsFromFlags(call.flags, ['guests', 'adults', 'children', 'vendors', 'staff']);
    if (!counts.ok) return wrongCall(call, `${counts.what}; ${counts.wayOut}.`);
    const needs = needsFromFlag(call.flags.need);
    if (!needs.ok) return wrongCall(call, `${needs.what}; ${needs.wayOut}.`);
    const mains = mainsFromFlag(call.flags.take);
    if (!mains.ok) return wrongCall(call, `${mains.what}; ${mains.wayOut}.`);
    const said = [counts.value, needs.value, mains.value].some((each) => Object.keys(each).length > 0);
    if (!said) return wrongCall(call, 'Say the count: guarantee EVENT --guests N.');
    const open = await openBook(call);
    if (!open) return 1;
    const belowFloor = call.flags['below-floor'] === true;
    const asked = { ...counts.value, needs: needs.value, mains: mains.value, belowFloor };
    const done = await recordInto(call, open, event, (book) => guarantee(book, event, asked, open.today));
    if (!done.ok) return refused(call, done);
    const { fact, before, after } = done.value;
    const change = await changeOf(after, event);
    const warnings = capacityWarnings(after, event);
    if (call.json) {
      call.write(JSON.stringify({ fact, change, warnings }, null, 2));
      return 0;
    }
    call.write(`Guaranteed: ${event}, ${guestsText(fact)}.`);
    if (fact.belowFloor) {
      const now = currentEvent(after, event);
      const floor = now.ok ? now.value.status.floor : atTable(fact.guests);
      call.write(`Cooked for ${atTable(fact.guests)} guests at the table; the floor of ${floor} is billed.`);
    }
    const known = currentEvent(before, event);
    const mainsBefore = known.ok ? known.value.status.choice.mains : {};
    for (const line of mainsLines(fact.mains, mainsBefore, mains.value)) call.write(line);
    for (const warning of warnings) call.write(`Warning: ${warning}.`);
    call.write(`\n${typeof change === 'string' ? change : changesText(change, open.book.kitchen.currency)}`);
    return 0;
  },
};

type Mains = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** Courses whose mains nobody gave are kept in proportion, which is said, since the client must choose them anew. */
function mainsLines(mains: Mains, before: Mains, asked: Mains): string[] {
  return Object.entries(mains).flatMap(([course, dishes]) => {
    const taken = Object.entries(dishes).filter(([, guests]) => guests > 0);
    const same = taken.every(([id, guests]) => before[course]?.[id] === guests);
    if (Object.hasOwn(asked, course) || same) return [];
    const counts = taken.map(([id, guests]) => `${id} ${guests}`).join(', ');
    return [`${course}, kept in proportion: ${counts}. Ask the client, and give them with --take.`];
  });
}
