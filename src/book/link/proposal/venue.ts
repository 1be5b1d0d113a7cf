import { readVenueKit } from '../../../engine/menu/parse-venue-kit.ts';
import type { Proposal } from '../../../engine/menu/proposal.ts';
import type { ProposalText } from '../../../schema/proposal.ts';
import type { Reading } from '../grammar/reading.ts';

/** A venue’s facts as written, and what is understood of them; one of those that cannot be read is told. */
export function linkVenue(
  reading: Reading,
  text: ProposalText['venue'],
): Pick<Proposal, 'venue' | 'venueKit'> {
  const venue = new Map(Object.entries(text ?? {}));
  const { kit, unclear } = readVenueKit(venue);
  for (const { fact, what, wayOut } of unclear)
    reading.say('venue-not-understood', ['venue', fact], `${what}, so it counts as not stated`, wayOut);
  return { venue, ...(kit && { venueKit: kit }) };
}
