import type { Book } from '../../book/book.ts';
import { type Parsed, parsed } from '../../engine/parsed.ts';
import { askedBy, readCountChange } from '../../offers/answers/read-count-change.ts';
import { currentEvent } from '../../offers/event/current-event.ts';
import type { GuaranteeAsked } from '../../offers/event/guarantee.ts';
import { worded } from '../text/worded.ts';
import { type AnswerFile, readAnswerFile } from './answer-file.ts';
import { type Call, type CommandOption, wrongCall } from './command.ts';
import { COUNT_OPTIONS, countsFromFlags, GROUP_FLAGS, mainsFromFlag, needsFromFlag } from './counts-flags.ts';
import { refused } from './refused.ts';

/** A count as it was given, for an event. */
export interface CountGiven {
  readonly event: string;
  /** The file that says it; undefined where flags do. */
  readonly file?: AnswerFile;
  /** The mains that were said; those of other courses are kept in proportion. */
  readonly mains: GuaranteeAsked['mains'];
  /** What it asks for of the event as a Book knows it. */
  askedOf(book: Book): Parsed<Omit<GuaranteeAsked, 'belowFloor' | 'given'>>;
}

/** Flags that say a count. */
export const ASKED_OPTIONS: Record<string, CommandOption> = {
  guests: { type: 'string', summary: 'guests at the table, adults and children', value: 'N' },
  ...COUNT_OPTIONS,
  need: {
    type: 'string',
    summary: 'guests with a dietary need or allergy; 0 removes it',
    value: 'NEED=N',
    multiple: true,
  },
  take: {
    type: 'string',
    summary: 'guests per main course (default: scaled in proportion)',
    value: 'COURSE=DISH:N,…',
    multiple: true,
  },
};

/** The count that flags say, or the exit code of a call that says none. */
export function countFromFlags(call: Call): CountGiven | number {
  const [event, ...more] = call.args;
  if (event === undefined || more.length > 0)
    return wrongCall(call, 'Name one event: guarantee EVENT --guests N.');
  const counts = countsFromFlags(call.flags, ['guests', ...GROUP_FLAGS]);
  if (!counts.ok) return wrongCall(call, `${counts.what}; ${counts.wayOut}.`);
  const needs = needsFromFlag(call.flags.need);
  if (!needs.ok) return wrongCall(call, `${needs.what}; ${needs.wayOut}.`);
  const mains = mainsFromFlag(call.flags.take);
  if (!mains.ok) return wrongCall(call, `${mains.what}; ${mains.wayOut}.`);
  const said = [counts.value, needs.value, mains.value].some((each) => Object.keys(each).length > 0);
  if (!said) return wrongCall(call, 'Give the count: guarantee EVENT --guests N.');
  const asked = { ...counts.value, needs: needs.value, mains: mains.value };
  return { event, mains: mains.value, askedOf: () => parsed(asked) };
}

/** The file of a client's count change, or the exit code of a call that names none that can be read. */
export async function countFile(call: Call, file: string): Promise<AnswerFile | number> {
  const stray = Object.keys(ASKED_OPTIONS).find((flag) => call.flags[flag] !== undefined);
  if (stray !== undefined)
    return wrongCall(call, `A count change is complete in itself, so --${stray} does not go with --from.`);
  const given = await readAnswerFile(call, file);
  return typeof given === 'string' ? wrongCall(call, given) : given;
}

/** The count in that file, or the exit code of one that holds none. */
export function countFromFile(call: Call, given: AnswerFile, locale: string): CountGiven | number {
  const read = worded(readCountChange(given.text), locale);
  if (!read.ok) return refused(call, read);
  const change = read.value;
  const [event = change.event, ...more] = call.args;
  if (more.length > 0 || event !== change.event)
    return wrongCall(call, `This count change is for ${change.event}; give that event or leave it out.`);
  return {
    event,
    file: given,
    mains: change.mains,
    askedOf(book) {
      const found = currentEvent(book, event);
      const dropNeeds = call.flags['drop-needs'] === true;
      return found.ok ? worded(askedBy(change, found.value, { dropNeeds }), locale) : found;
    },
  };
}
