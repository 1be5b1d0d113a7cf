import type { Book } from '../../book/book.ts';
import { findingAt } from '../../book/finding-at.ts';
import { type Finding, finding } from '../../book/findings/finding.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { Proposal } from '../../engine/menu/proposal.ts';
import { timeAway } from '../../engine/menu/time-away.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { eventClock } from '../../engine/plan/clock/event-clock.ts';
import { eventHours } from '../../engine/plan/clock/event-work.ts';
import { type RoleHours, roleHours, soldShort } from '../../engine/plan/clock/presence.ts';
import { soldShortText } from '../../exports/words/hours-words.ts';
import { currentTerms } from '../../offers/issue/current-terms.ts';
import { offerInUse, placeOfOffer } from '../../offers/offer-in-use.ts';
import { wordsIn } from '../../words/words-in.ts';
import { hoursNotSold, hoursOfChoice } from './hours-sold.ts';
import { plannedTogether } from './schedule-for.ts';

/**
 * Where those who work at an event are sold for less time than it takes them: at coming events by the one schedule, at
 * proposals still to be answered for the menu that lacks the most. What is issued is agreed and only noted.
 */
export function hoursShortOf(book: Book, today: Day): Finding[] {
  const { plans, schedule } = plannedTogether(book, today);
  const events = [...plans].flatMap(([id, plan]) => agreed(book, id, eventHours(plan, schedule), today));
  return [...events, ...[...book.proposals.keys()].flatMap((id) => proposed(book, id, today))];
}

function proposed(book: Book, id: string, today: Day): Finding[] {
  const proposal = book.proposals.get(id);
  if (!proposal || proposal.date < today || proposal.withdrawn || book.events.has(id)) return [];
  const current = currentTerms(book, id);
  if (!current.ok) return [];
  const { terms, offer, choices } = current.value;
  const menus = choices.map((choice) => ({
    choice,
    hours: hoursOfChoice(book, id, terms, choice, today) ?? [],
  }));
  const [worst] = menus.sort((a, b) => missingOf(b.hours) - missingOf(a.hours));
  if (!worst) return [];
  if (offer) return agreed(book, id, worst.hours, today);
  const what = whatOf(book, worst.hours);
  if (what === undefined) return [];
  // Where the package does not state how long is served, it is as long as the crew is sold for.
  const served = terms.packages.find((each) => each.id === worst.choice.package)?.hours !== undefined;
  const say = wordsIn(book.kitchen.locale);
  const hours = hoursAsked(book, proposal, worst.hours);
  const wayOut = served ? say('clock.quote-hours', { hours }) : say('clock.quote-service', { hours });
  const at = proposal.hours === null ? ['packages'] : ['hours'];
  return [findingAt(book, 'hours-not-sold', `proposal/${id}`, at, what, wayOut, 'key')];
}

function agreed(book: Book, id: string, hours: readonly RoleHours[] | undefined, today: Day): Finding[] {
  const offer = offerInUse(book, id, today);
  const what = whatOf(book, hours);
  if (!offer || what === undefined) return [];
  const wayOut = wordsIn(book.kitchen.locale)('clock.hours-agreed');
  return [finding('hours-agreed-short', placeOfOffer(offer), what, wayOut)];
}

/** What is missing of the hours that the kitchen means to quote. */
function whatOf({ kitchen }: Book, hours: readonly RoleHours[] | undefined): string | undefined {
  const missing = hoursNotSold(soldShort(hours ?? [], kitchen), kitchen);
  const { locale } = kitchen;
  return (
    missing &&
    soldShortText(missing.roles, wordsIn(locale), missing.cost && displayMoney(missing.cost, locale))
  );
}

function missingOf(hours: readonly RoleHours[]): number {
  return hours.reduce((sum, { missing }) => sum + Math.max(0, missing), 0);
}

/**
 * The hours that sell all that any menu needs, or its service where only that is quoted, as a proposal writes them: the
 * longest, up to a quarter. Each menu is served
 * for as long as its package states, which fewer hours of the crew would cut short.
 */
function hoursAsked({ kitchen }: Book, proposal: Proposal, hours: readonly RoleHours[]): string {
  const sold = hours.map((each) => each.sold);
  const needed = proposal.packages.flatMap(({ hours: served, style }) => {
    const away = timeAway({ ...proposal, hours: null }, served);
    const clock = eventClock({ serveAt: proposal.serveAt, style, away, dishes: [] }, kitchen.day);
    return roleHours(sold, clock) ?? [];
  });
  const longest = Math.max(
    ...[...hours, ...needed].map(({ from, until, served }) =>
      kitchen.hoursQuoted === 'service' ? served : until - from,
    ),
  );
  return `${Math.ceil(longest / 15) / 4} hours`;
}
