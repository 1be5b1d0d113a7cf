import type { OfferState } from '../../offers/offer-state.ts';

/** The file beside an issued proposal's page that says where it stands, for a page that was left open. */
export const CURRENT_FILE = 'standing.json';

/** What that file says: the offer that the newest page shows, by its digest, and the state it was built in. */
export interface CurrentFile {
  readonly version: 1;
  readonly offer: string;
  readonly state: OfferState;
}
