import { readVenueKit } from '../../../engine/menu/parse-venue-kit.ts';
import type { Proposal } from '../../../engine/menu/proposal.ts';
import { publicVenue, type SiteSheet, siteFacts } from '../../../engine/menu/site-sheet.ts';
import type { ProposalText } from '../../../schema/proposal.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

/**
 * A venue’s facts as a client may read them, and what is understood of all that is known of it: the proposal’s own facts win
 * over its site sheet’s. One of the proposal’s that cannot be read is told here, one of the sheet’s at the sheet.
 */
export function linkVenue(
  reading: Reading,
  text: ProposalText['venue'],
  sheetId: string | undefined,
  sheets: ReadonlyMap<string, SiteSheet>,
): Pick<Proposal, 'venue' | 'venueKit' | 'siteSheet'> {
  const sheet =
    sheetId === undefined ? undefined : lookUp(reading, 'site-sheet', sheetId, sheets, ['site sheet']);
  const stated = new Map(Object.entries(text ?? {}));
  for (const { fact, what, wayOut } of readVenueKit(stated).unclear)
    reading.say('venue-not-understood', ['venue', fact], `${what}, so it counts as not stated`, wayOut);
  const { kit } = readVenueKit(siteFacts(sheet, stated));
  return {
    venue: publicVenue(sheet, stated),
    ...(kit && { venueKit: kit }),
    ...(sheet && { siteSheet: sheet }),
  };
}
