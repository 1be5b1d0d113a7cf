import type { Book } from '../book/book.ts';
import { parseCameBack } from '../engine/learning/came-back.ts';
import { splitDestiny } from '../engine/learning/destiny.ts';
import { parseGuestCount } from '../engine/measure/guest-count.ts';
import { writtenText } from '../engine/measure/quantity.ts';
import { type Parsed, parsed } from '../engine/parsed.ts';
import { GUEST_GROUPS, type Guests } from '../engine/quote/counts.ts';
import { carriedFood, eventThatWasServed, type LeftSaid } from '../offers/learned/leftovers.ts';
import { ask, type Question, type Terminal } from './ask.ts';
import type { SentOut } from './call/kept-plan.ts';
import type { OpenBook } from './call/open-book.ts';

/** What a person says of an event that is over. */
export interface LeftoversSaid {
  readonly dishes: readonly LeftSaid[];
  /** Who came, as far as it was asked. */
  readonly came: Partial<Guests>;
}

/** Asks in the terminal who came, where it is not known yet, and for every dish; undefined where the person breaks off. */
export async function askedFor(
  book: Book,
  event: string,
  { dishes: carried }: SentOut,
  known: Partial<Guests>,
  terminal?: Terminal,
): Promise<Parsed<LeftoversSaid> | undefined> {
  const found = eventThatWasServed(book, event, '9999-12-31' as OpenBook['today']);
  if (!found.ok) return found;
  const { served: before, choice } = found.value.status;
  const groups = before
    ? []
    : GUEST_GROUPS.filter((group) => known[group] === undefined && choice.guests[group] > 0);
  const people = groups.map(
    (group): Question => ({
      key: `came ${group}`,
      text: `How many ${group} came`,
      fallback: String(choice.guests[group]),
      problem(answer) {
        const count = parseGuestCount(answer);
        return count.ok ? undefined : `${count.what}; ${count.wayOut}.`;
      },
    }),
  );
  const food = carried.map(
    (dish, index): Question => ({
      key: `dish ${index}`,
      text: `${dish.name}: ${writtenText(dish.carried)} went out. What came back, and was it thrown away, given away or brought home (leave blank if not known)`,
      fallback: '',
      problem(answer) {
        const read =
          answer === '' ? undefined : parseCameBack(splitDestiny(answer).back, carriedFood(book, dish));
        return read && !read.ok ? `${read.what}; ${read.wayOut}.` : undefined;
      },
    }),
  );
  const answers = await ask([...people, ...food], terminal);
  if (!answers) return undefined;
  return parsed({
    came: Object.fromEntries(groups.map((group) => [group, Number(answers[`came ${group}`])])),
    dishes: carried.flatMap((dish, index) => {
      const said = answers[`dish ${index}`] ?? '';
      const { back, destiny } = splitDestiny(said);
      return said === '' ? [] : [{ dish, said: back, ...(destiny && { destiny }) }];
    }),
  });
}
