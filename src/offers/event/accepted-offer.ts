import type { Book } from '../../book/book.ts';
import { nearest } from '../../book/findings/nearest.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { EventFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';

/** An event's facts with the offer that was accepted. Fails, with the nearest known id, where there is no such event. */
export function acceptedOffer(
  book: Book,
  event: string,
): Parsed<{ readonly offer: Offer; readonly facts: readonly EventFact[] }> {
  const facts = book.events.get(event)?.facts;
  const [first] = facts ?? [];
  if (!facts || first?.kind !== 'accepted') {
    const reason = book.held.get(`event/${event}`);
    if (reason)
      return notParsed(`the event ${event} can’t be used: ${reason}`, 'fix what `check` reports about it');
    // A proposal that nobody has accepted yet is no slip of the pen; thousands of them are asked for by a build.
    const isProposal = book.proposals.has(event) || book.offers.has(event);
    const close = isProposal ? undefined : nearest(event, [...book.events.keys()]);
    const known = close ? `did you mean ${close}?` : '`accept` turns an offer into an event';
    return notParsed(`there is no event ${event}`, known);
  }
  const offer = (book.offers.get(first.proposal) ?? []).find((each) => each.digest === first.digest);
  if (!offer)
    return notParsed(
      `the offer that ${event} accepted is missing`,
      `restore offers/${first.proposal}-r${first.revision}.json as it was issued`,
    );
  return parsed({ offer, facts });
}
