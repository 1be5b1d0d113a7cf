import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { LONG_AT_THE_PLACE } from '../engine/alarm-limits.ts';
import type { Day } from '../engine/calendar/day.ts';
import { USUAL_SET_UP } from '../engine/kitchen/day-times.ts';
import { dishesOf } from '../engine/menu/dishes-of.ts';
import type { Package } from '../engine/menu/package.ts';
import type { Proposal } from '../engine/menu/proposal.ts';
import { timeAway } from '../engine/menu/time-away.ts';
import { counted } from '../engine/text/counted.ts';
import { crewMealOf } from '../offers/event/crew-dishes.ts';

/** What the crews of coming events eat, where that is planned for nobody, twice, or not stated and the day is long. */
export function crewMealsOn(book: Book, today: Day): Finding[] {
  const coming = [...book.proposals.values()].filter(({ date, withdrawn }) => date >= today && !withdrawn);
  return [
    ...coming.flatMap((proposal) => [...forNobody(book, proposal), ...fedTwice(book, proposal)]),
    ...notStated(book, coming),
  ];
}

/** Written for this very event, with nobody counted to eat it. */
function forNobody(book: Book, { id, crewMeal, guests }: Proposal): Finding[] {
  if (!crewMeal || crewMeal.kind === 'none' || guests.staff > 0) return [];
  const what = 'a meal for the crew is written, but no staff are counted to eat it';
  const wayOut = 'write how many under “guests”, such as “staff: 6”, or “crew meal: none”';
  return [findingAt(book, 'crew-meal-for-nobody', `proposal/${id}`, ['crew meal'], what, wayOut, 'key')];
}

function fedTwice(book: Book, proposal: Proposal): Finding[] {
  const { id, guests, packages } = proposal;
  if (crewMealOf(book, proposal)?.kind !== 'dishes' || guests.staff === 0) return [];
  return packages.flatMap((chosen, index) => {
    if (!feedsCrew(chosen)) return [];
    const what = `the crew gets a meal of its own, and dishes of ${chosen.id} count staff too`;
    const wayOut = 'take “staff” out of the package’s “counts”, or write “crew meal: none”';
    return [findingAt(book, 'crew-fed-twice', `proposal/${id}`, ['packages', index], what, wayOut)];
  });
}

/** So many events are named. */
const MOST_NAMED = 3;

/** One note for all such events, since one line of kitchen.yaml may be the answer to all. */
function notStated(book: Book, coming: readonly Proposal[]): Finding[] {
  const long = coming.filter(
    (proposal) =>
      !crewMealOf(book, proposal) &&
      proposal.packages.some(
        (each) => !feedsCrew(each) && atThePlace(book, proposal, each) > LONG_AT_THE_PLACE,
      ),
  );
  if (long.length === 0) return [];
  const names = long.slice(0, MOST_NAMED).map(({ id }) => id);
  const more = long.length - names.length;
  const events = more > 0 ? `${names.join(', ')} and ${more} more` : names.join(', ');
  const what = `at ${counted(long.length, 'event')} the crew is at the place for more than 5 hours, and what it eats is not stated: ${events}`;
  const wayOut =
    'write “crew meal:” in the proposal or in kitchen.yaml: dishes with the amount for one person, “the menu”, or “none” if they bring their own';
  return [findingAt(book, 'crew-meal-not-stated', 'kitchen/kitchen', [], what, wayOut, 'key')];
}

function feedsCrew(chosen: Package): boolean {
  return dishesOf(chosen).some(({ counts }) => counts.staff !== undefined);
}

/** Minutes from the truck's arrival until all is cleared; 0 where it is not stated how long is served. */
function atThePlace({ kitchen }: Book, proposal: Proposal, { hours }: Package): number {
  const { setUp, service } = timeAway(proposal, hours);
  return service === undefined ? 0 : (setUp ?? USUAL_SET_UP) + service + kitchen.day.clear;
}
