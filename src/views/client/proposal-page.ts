import type { Day } from '../../engine/calendar/day.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { DishCorrection } from '../../offers/corrections/corrections.ts';
import type { DishNow } from '../../offers/corrections/dishes-now.ts';
import type { OfferedRoles } from '../../offers/event/offered-roles.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import type { OfferState } from '../../offers/offer-state.ts';
import type { Offer } from '../../schema/offer.ts';
import type { BilledNow } from './billed-now.ts';
import type { EventChange } from './event-changes-of.ts';
import type { EventDay } from './proposal-state.ts';
import type { AcceptedCounts } from './terms.ts';

/** What a proposal's page is made from: a draft's content or an issued offer, and where it stands. */
export interface ProposalPage {
  readonly content: OfferContent;
  /** What is live of the brand: typefaces and mark. */
  readonly look: Pick<Kitchen, 'fonts' | 'mark'>;
  readonly state: OfferState;
  /** Null for a draft. */
  readonly issued: { readonly revision: number; readonly digest: string; readonly on: Day } | null;
  readonly corrections: readonly DishCorrection[];
  /** The dishes that an accepted event's substitutions touch, as they stand; empty before. */
  readonly dishesNow: readonly DishNow[];
  /** What each dish is in its course, as far as the offer states it or the kitchen's files do now. */
  readonly roles: OfferedRoles;
  /** The choice accepted and when; null before. */
  readonly accepted: { readonly choice: Choice; readonly on: Day } | null;
  /** What is billed by now and paid of it; null before the acceptance. */
  readonly billed: BilledNow | null;
  /** What has changed since the acceptance that the client is told: dishes and allergens, the day. */
  readonly changes: readonly EventChange[];
  /** When the accepted event takes place and whether it still does; null before the acceptance. */
  readonly event: EventDay | null;
  /** The revision before this one; null for a first one and a draft. */
  readonly earlier: Offer | null;
  /** The counts that the client may change from the page; null before the deposit is in and after the event is off. */
  readonly counts: AcceptedCounts | null;
  readonly today: Day;
  /** Where the kitchen's public site is served; undefined where it is not stated. */
  readonly site?: string;
}
