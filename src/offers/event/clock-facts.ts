import Fraction from 'fraction.js';
import type { Book } from '../../book/book.ts';
import { courseTimes } from '../../engine/course/course-time.ts';
import { minutes } from '../../engine/measure/duration.ts';
import { readVenueKit } from '../../engine/menu/parse-venue-kit.ts';
import { timeAway } from '../../engine/menu/time-away.ts';
import type { VenueKit } from '../../engine/menu/venue-kit.ts';
import type { EventInput, SoldRole } from '../../engine/plan/event-input.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { peopleFor } from '../../engine/quote/staff-lines.ts';
import type { PackageTerms, Terms } from '../../engine/quote/terms.ts';
import type { Offer } from '../../schema/offer.ts';

/** What an event's clock needs besides its dishes: who cooks where, what the place has, and when courses are served. */
export function clockFacts(
  book: Book,
  offer: Offer,
  accepted: PackageTerms,
  choice: Choice,
): Pick<
  EventInput,
  'cooks' | 'vehicle' | 'venueKit' | 'weather' | 'courseTimes' | 'placeCooks' | 'soldCrew'
> {
  const proposal = book.proposals.get(offer.proposal);
  const live = book.packages.get(accepted.id);
  const venueKit = venueKitOf(book, offer);
  const placeCooks = placeCooksOf(book, offer, choice);
  const { service } = timeAway(proposal ?? NO_HOURS, accepted.hours ?? null);
  return {
    ...(proposal?.cooks && { cooks: proposal.cooks }),
    ...(proposal?.vehicle && { vehicle: proposal.vehicle }),
    ...(venueKit && { venueKit }),
    ...(proposal?.weather && { weather: proposal.weather }),
    ...(live && { courseTimes: courseTimes(live.courses, accepted.style, service) }),
    ...(placeCooks !== undefined && { placeCooks }),
    soldCrew: soldCrewOf(book, offer.terms, choice),
  };
}

const NO_HOURS = { travel: undefined, setUp: undefined, hours: null };

/** What an offer's place has to cook with: by the proposal's venue as it is now where there is one, else as offered. */
export function venueKitOf(book: Pick<Book, 'proposals'>, offer: Offer): VenueKit | undefined {
  const proposal = book.proposals.get(offer.proposal);
  if (proposal && proposal.venue.size > 0) return proposal.venueKit;
  return readVenueKit(new Map(Object.entries(offer.venue))).kit;
}

/** Who works at an event as its terms sell them, by role, each for its hours. */
export function soldCrewOf(
  { kitchen }: Pick<Book, 'kitchen'>,
  terms: Pick<Terms, 'staff'>,
  choice: Pick<Choice, 'package' | 'guests'>,
): SoldRole[] {
  return terms.staff
    .filter(({ packages }) => !packages || packages.includes(choice.package))
    .map((role) => ({
      role: role.role,
      name: role.name,
      people: peopleFor(role, choice.guests),
      each: minutes(Number(new Fraction(role.hours).mul(60n).ceil().n)),
      ...(kitchen.staff.get(role.role)?.reportsTo === 'place' && { reportsTo: 'place' as const }),
    }));
}

/** The people sold whose role cooks at the place; undefined where no role of the kitchen says that it does. */
function placeCooksOf({ kitchen }: Book, { terms }: Offer, choice: Choice): number | undefined {
  const cooking = new Set([...kitchen.staff.values()].flatMap(({ id, cooks }) => (cooks ? [id] : [])));
  if (cooking.size === 0) return undefined;
  return terms.staff
    .filter(({ role, packages }) => cooking.has(role) && (!packages || packages.includes(choice.package)))
    .reduce((sum, role) => sum + peopleFor(role, choice.guests), 0);
}
