import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { CourseTerms, PackageTerms } from '../../engine/quote/terms.ts';
import { type Said, type Statement, several, statement } from '../../engine/text/statement.ts';
import type { EventFact, GuestListFact, ListedGuest } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import { type Judged, refusal } from '../answers/refusal.ts';
import { changeableEvent, type NextFact, nextFact } from '../event/current-event.ts';
import { giveDay } from '../event/day-given.ts';
import { replacementOf } from '../event/recipes.ts';
import type { EventStatus } from '../event/status.ts';
import { guestRows } from './rows.ts';

/** The refusal of a list that has been recorded already. */
export const SAME_LIST = 'this list is the same as the last one';

/** The most problems of one list that are told at once. */
const MOST_NAMED = 20;

/** A guest list to be recorded. */
export interface GuestListGiven {
  readonly csv: string;
  /** The day the client gave it; today where it is not given. */
  readonly given?: Day;
  /** The digest of the offer it was made for; undefined for a list that names none. */
  readonly offer?: string;
}

/** The fact that a list makes, and what should be looked at in it. */
export interface GuestListRead extends NextFact<GuestListFact> {
  readonly notes: readonly Statement[];
}

/**
 * The fact that records a guest list; a later one replaces it. It is taken after the guarantee's deadline too, since
 * cards and tables are changed to the end, and distinguished by `isLate`. Refused where a row cannot be planned (no name,
 * a dish that the menu has not), with every such row; where it is for another offer than the one accepted; for a day
 * before the last list's or after today; and where it says what the last one says.
 */
export function guestList(
  book: Book,
  event: string,
  { csv, given, offer }: GuestListGiven,
  today: Day,
): Judged<GuestListRead> {
  const found = changeableEvent(book, event, today);
  if (!found.ok) return found;
  const { facts, status } = found.value;
  if (offer !== undefined && offer !== found.value.offer.digest)
    return refusal(statement('answers.list-other-offer', { event }), statement('answers.other-offer.way'));
  const last = guestListOf(facts);
  const on = given ?? today;
  const since = last ? (last.given ?? last.on) : status.accepted.acceptance.accepted;
  if (on > today || on < since)
    return refusal(`this list can’t have been given on ${on}`, giveDay(since, today));
  const nameOf = (id: string) => book.recipes.get(id)?.name;
  const courses = coursesByAnyName(found.value.offer, status, nameOf);
  const { guests, problems, notes } = guestRows(csv, courses);
  if (problems.length > 0) return refusal(firstOf(problems), statement('guests.problems.way'));
  if (last && sameGuests(last.guests, guests)) return refusal(SAME_LIST, 'nothing more to do');
  const next = nextFact(facts, {
    version: 1,
    kind: 'guest list',
    on: today,
    ...(on < today ? { given: on } : {}),
    guests: [...guests],
  });
  return next.ok ? { ok: true, value: { ...next.value, notes } } : next;
}

/** The list that stands: the last one; undefined where there is none. */
export function guestListOf(facts: readonly EventFact[]): GuestListFact | undefined {
  return facts.findLast((fact): fact is GuestListFact => fact.kind === 'guest list');
}

/** Whether a list came after the day up to which the guarantee could fall, so that what it changes may come too late. */
export function isLate({ given, on }: GuestListFact, { deadline }: Pick<EventStatus, 'deadline'>): boolean {
  return deadline !== null && (given ?? on) > deadline;
}

/** The courses of the accepted menu of which every guest takes one dish. */
export function listedCourses({ terms }: Offer, { choice }: Pick<EventStatus, 'choice'>): CourseTerms[] {
  return acceptedPackage(terms.packages, choice.package)?.courses.filter((course) => course.eachGuest) ?? [];
}

/**
 * The same courses, in which a dish that another is served instead of goes by both names: the client's page shows the
 * new one, and a list may have been written before. `nameOf` knows a recipe's name of today.
 */
export function coursesByAnyName(
  offer: Offer,
  status: Pick<EventStatus, 'choice' | 'substitutions'>,
  nameOf: (recipe: string) => string | undefined = () => undefined,
): CourseTerms[] {
  return listedCourses(offer, status).map((course) => ({
    ...course,
    dishes: course.dishes.flatMap((dish) => {
      const instead = replacementOf(dish.recipe, status.substitutions);
      if (!instead) return [dish];
      const known = [nameOf(instead.to), instead.name].filter((name) => name !== undefined);
      const names = known.length > 0 ? new Set(known) : [instead.to.replaceAll('-', ' ')];
      return [dish, ...[...names].map((name) => ({ ...dish, name }))];
    }),
  }));
}

/** A list with the wrong columns is wrong in every row; the first rows show how. */
function firstOf(problems: readonly Statement[]): Said {
  const shown = several('lines', problems.slice(0, MOST_NAMED));
  const more = problems.length - MOST_NAMED;
  return more > 0
    ? statement('guests.problems-more', { problems: shown, n: `${more}` })
    : statement('guests.problems', { problems: shown });
}

function acceptedPackage(packages: readonly PackageTerms[], id: string): PackageTerms | undefined {
  return packages.find((each) => each.id === id);
}

function sameGuests(one: readonly ListedGuest[], other: readonly ListedGuest[]): boolean {
  const plain = (guests: readonly ListedGuest[]) =>
    JSON.stringify(guests.map(({ name, table, mains, need }) => [name, table, Object.entries(mains), need]));
  return plain(one) === plain(other);
}
