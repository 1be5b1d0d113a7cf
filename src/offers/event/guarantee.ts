import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { parseNeed } from '../../engine/food/need.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { type Choice, checkChoice } from '../../engine/quote/choice.ts';
import type { Guests } from '../../engine/quote/counts.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { counted } from '../../engine/text/counted.ts';
import type { GuaranteeFact } from '../../schema/event-fact.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { problemClause } from '../problem-words.ts';
import { type CurrentEvent, changeableEvent, type NextFact, nextFact } from './current-event.ts';
import { giveDay } from './day-given.ts';
import { choiceFor, type EventStatus } from './status.ts';

/** The refusal of a count that is guaranteed already. */
export const SAME_COUNT = 'nothing would change';

/** The count a client gives; what is left out stays. */
export interface GuaranteeAsked {
  /** Guests at the table, adults and children together; the group that is not given takes the difference. */
  readonly guests?: number;
  readonly adults?: number;
  readonly children?: number;
  readonly vendors?: number;
  readonly staff?: number;
  /** Dietary need or allergy → guests; 0 takes it out. */
  readonly needs: Readonly<Record<string, number>>;
  /** The needs are in the client's own words and kept as they are; else one that Salver does not know is a slip. */
  readonly needsAsWritten?: boolean;
  /** Course → recipe id → guests, where every guest takes one; courses left out keep their proportions. */
  readonly mains: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Fewer will eat than the contract's floor; the floor is billed all the same. */
  readonly belowFloor: boolean;
  /** The day the client gave it, by which the deadline is judged; today where it is not given. */
  readonly given?: Day;
}

/**
 * The fact that gives an event's guaranteed count. Up to and including the deadline the count may fall, to the
 * contract's floor, and under it only where `belowFloor` says that fewer will eat though the floor is billed. After
 * it the guests at the table, the adults among them and the vendor meals may only rise. Refused besides where the
 * choice does not fit the accepted terms (mains that do not sum, a count that no price covers), and for a day given
 * that is before the last guarantee's, or after today.
 */
export function guarantee(
  book: Book,
  event: string,
  asked: GuaranteeAsked,
  today: Day,
): Parsed<NextFact<GuaranteeFact>> {
  const found = changeableEvent(book, event, today);
  if (!found.ok) return found;
  const { offer, facts, status } = found.value;
  const given = asked.given ?? today;
  const since = givenOn(status) ?? status.accepted.acceptance.accepted;
  if (given > today || given < since)
    return notParsed(`this count can’t have been given on ${given}`, giveDay(since, today));
  const guests = guestsAsked(status.choice.guests, asked);
  if (!guests.ok) return guests;
  const needs = needsAsked(status.choice.needs, asked);
  if (!needs.ok) return needs;
  const scaled = choiceFor(offer, status.choice, guests.value);
  const choice = { ...scaled, needs: needs.value, mains: { ...scaled.mains, ...asked.mains } };
  const refusal =
    afterDeadline(event, status, guests.value, given) ??
    underFloor(event, found.value, guests.value, asked.belowFloor) ??
    misfit(found.value, choice) ??
    (isSame(choice, status) ? notParsed(SAME_COUNT, 'give another count') : undefined);
  if (refusal) return refusal;
  return nextFact(facts, {
    version: 1,
    kind: 'guarantee',
    on: today,
    ...(given < today ? { given } : {}),
    guests: choice.guests,
    needs: choice.needs,
    mains: choice.mains,
    ...(atTable(choice.guests) < status.floor ? { belowFloor: true as const } : {}),
  });
}

/** The day the count that stands was given; undefined while the accepted one stands. */
export function givenOn({ guarantee: last }: Pick<EventStatus, 'guarantee'>): Day | undefined {
  return last && (last.given ?? last.on);
}

function guestsAsked(now: Guests, asked: GuaranteeAsked): Parsed<Guests> {
  const { guests, vendors = now.vendors, staff = now.staff } = asked;
  let { adults, children } = asked;
  if (guests !== undefined) {
    if (adults === undefined) adults = guests - (children ?? now.children);
    else children ??= guests - adults;
    if (adults < 0 || (children ?? now.children) < 0 || adults + (children ?? now.children) !== guests)
      return notParsed(
        `${counted(guests, 'guest')} ${guests === 1 ? 'is' : 'are'} not ${counted(adults, 'adult')} and ${counted(children ?? now.children, 'child', 'children')}`,
        'give the guests at the table, or adults and children, so that they add up',
      );
  }
  return parsed({ adults: adults ?? now.adults, children: children ?? now.children, vendors, staff });
}

/** A need that the owner types and nobody named before must be one Salver knows, since it is matched with the dishes. */
function needsAsked(now: Choice['needs'], asked: GuaranteeAsked): Parsed<Choice['needs']> {
  const needs = new Map(Object.entries(now));
  for (const [name, guests] of Object.entries(asked.needs)) {
    const known = needs.has(name) || asked.needsAsWritten ? undefined : parseNeed(name);
    if (known && !known.ok) return known;
    if (guests === 0) needs.delete(name);
    else needs.set(name, guests);
  }
  return parsed(Object.fromEntries(needs));
}

function afterDeadline(
  event: string,
  { deadline, choice }: EventStatus,
  asked: Guests,
  given: Day,
): Parsed<never> | undefined {
  if (deadline === null || given <= deadline) return undefined;
  const now = choice.guests;
  const counts: readonly [string, number, number][] = [
    ['guests at the table', atTable(now), atTable(asked)],
    ['adults', now.adults, asked.adults],
    ['vendor meals', now.vendors, asked.vendors],
  ];
  const fallen = counts.find(([, before, after]) => after < before);
  if (!fallen) return undefined;
  const [what, before, after] = fallen;
  return notParsed(
    `the deadline of ${deadline} has passed, so ${event} can’t go below ${before} ${what}; ${after} is fewer`,
    `keep ${before} or more (or, if the client gave it in time, say when with --on); \`served\` records how many actually came, and the larger number is billed`,
  );
}

function underFloor(
  event: string,
  { offer, status }: CurrentEvent,
  asked: Guests,
  allowed: boolean,
): Parsed<never> | undefined {
  const { floor, accepted } = status;
  const count = atTable(asked);
  // A count that was under it before, and rises, needs no second leave.
  if (count >= floor || allowed || count >= atTable(status.choice.guests)) return undefined;
  const of = `${offer.terms.guarantee.floorRate} of the ${counted(atTable(accepted.acceptance.choice.guests), 'guest')} accepted`;
  return notParsed(
    `${event} has a minimum of ${counted(floor, 'guest')} at the table (${of}), and ${count} is fewer`,
    `give ${floor} or more, or add --below-floor to cook for ${count} and bill ${floor}`,
  );
}

function misfit({ offer }: CurrentEvent, choice: Choice): Parsed<never> | undefined {
  const [problem] = checkChoice(offer.terms, choice);
  if (!problem) return undefined;
  return notParsed(
    `it does not fit what was accepted, at ${problem.path}: ${problemClause(scriptWordsIn(offer.terms.locale), problem)}`,
    'change the counts, and use --take for courses where each guest takes one dish',
  );
}

/** The count that stands given once more is a guarantee all the same, once: the client is then held to it. */
function isSame(choice: Choice, status: EventStatus): boolean {
  if (!status.guarantee) return false;
  const { guests, needs, mains } = status.guarantee;
  return canonical({ guests, needs, mains }) === canonical(choice);
}

function canonical({ guests, needs, mains }: Pick<Choice, 'guests' | 'needs' | 'mains'>): string {
  const sorted = (record: Readonly<Record<string, unknown>>) =>
    Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1));
  const taken = Object.entries(mains).map(([course, counts]) => [course, sorted(counts)] as const);
  return JSON.stringify([sorted(guests), sorted(needs), sorted(Object.fromEntries(taken))]);
}
