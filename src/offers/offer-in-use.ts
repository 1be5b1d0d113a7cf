import type { Book } from '../book/book.ts';
import type { Place } from '../book/findings/finding.ts';
import type { Day } from '../engine/calendar/day.ts';
import type { Offer } from '../schema/offer.ts';
import { eventDate } from './event/event-date.ts';

/** The offers by which somebody may still be fed on a day or after it, one of a proposal. */
export function offersInUse(book: Book, today: Day): Offer[] {
  return [...book.offers.keys()].flatMap((proposal) => offerInUse(book, proposal, today) ?? []);
}

/** A proposal's offer that may still feed somebody: the accepted one, else the newest while it is open. */
export function offerInUse(book: Book, proposal: string, today: Day): Offer | undefined {
  const facts = book.events.get(proposal)?.facts ?? [];
  const [accepted] = facts;
  if (accepted?.kind === 'accepted') {
    const offer = book.offers.get(proposal)?.find(({ revision }) => revision === accepted.revision);
    if (!offer || facts.some(({ kind }) => kind === 'cancelled')) return undefined;
    const { date } = eventDate(offer.date, facts);
    // One that is postponed without a new day will be cooked for all the same.
    return date === null || date >= today ? offer : undefined;
  }
  const newest = book.offers.get(proposal)?.at(-1);
  // An event that cannot be read may still be cooked for.
  if (newest && book.held.has(`event/${proposal}`) && newest.date >= today) return newest;
  const withdrawn = book.proposals.get(proposal)?.withdrawn === true;
  return newest && newest.validUntil >= today && !withdrawn ? newest : undefined;
}

/** What uses an offer, in a sentence: the event it has become, or the open offer itself. */
export function useText(book: Book, offer: Offer): string {
  const facts = book.events.get(offer.proposal)?.facts ?? [];
  if (!book.events.has(offer.proposal)) return `the open offer ${offer.proposal} revision ${offer.revision}`;
  const { date } = eventDate(offer.date, facts);
  return `the event ${offer.proposal}${date === null ? ', which has no new date yet,' : ` on ${date}`}`;
}

/** Where findings about an offer as a whole stand: its file. */
export function placeOfOffer({ proposal, revision }: Offer): Place {
  return { file: `offers/${proposal}-r${revision}.json`, line: 1, column: 1 };
}
