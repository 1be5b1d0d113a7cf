import type { Day } from '../calendar/day.ts';
import type { Minutes } from '../measure/duration.ts';
import type { StatedAttendance } from '../odds/attendance.ts';
import type { Guests } from '../quote/counts.ts';
import type {
  DiscountTerms,
  GuaranteeTerms,
  InstalmentTerms,
  MaybeNamed,
  ServiceChargeTerms,
} from '../quote/terms.ts';
import type { Crew } from './crew.ts';
import type { CrewMeal } from './crew-meal.ts';
import type { DeliveryZone } from './delivery-zone.ts';
import type { KeepBack } from './keep-back.ts';
import type { Package } from './package.ts';
import type { Place } from './place.ts';
import type { SiteSheet } from './site-sheet.ts';
import type { Vehicle } from './vehicle.ts';
import type { VenueKit } from './venue-kit.ts';
import type { Weather } from './weather.ts';

/** What the client proposes or has chosen where a course offers a choice. */
export interface CourseChoices {
  /** Course → recipe ids, where the client chooses so many for everybody. */
  readonly chosen: ReadonlyMap<string, readonly string[]>;
  /** Course → recipe id → guests, where every guest takes one. */
  readonly counts: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

/** What the caterer writes in answer to an enquiry; `issue` freezes it into an offer. */
export interface Proposal {
  readonly id: string;
  /** The unguessable part of the page's address; undefined until `new` or the author writes it. */
  readonly link: string;
  readonly shareDraft: boolean;
  readonly withdrawn: boolean;
  readonly client: { readonly name: string; readonly email: string | undefined; readonly exempt: boolean };
  readonly occasion: string;
  readonly date: Day;
  /** HH:MM */
  readonly serveAt: string;
  readonly place: Place;
  /** What the client may read of it, as the offer freezes it: of a site sheet name and address alone. */
  readonly venue: ReadonlyMap<string, string>;
  /** What is known of the venue from events there; left out where the proposal names no site sheet. */
  readonly siteSheet?: SiteSheet;
  /** Minutes on the road, as text; undefined where not stated. */
  readonly travel: string | undefined;
  /** From arriving to serving; undefined where neither it nor the kitchen says. */
  readonly setUp: Minutes | undefined;
  readonly validUntil: Day;
  readonly guests: Guests;
  readonly needs: ReadonlyMap<string, number>;
  /** The first is the one proposed. */
  readonly packages: readonly [Package, ...Package[]];
  /** Package id → what is proposed where there is a choice. */
  readonly choices: ReadonlyMap<string, CourseChoices>;
  readonly addOns: readonly string[];
  /** Add-on id → quantity already in the quote. */
  readonly included: ReadonlyMap<string, number>;
  readonly lines: number;
  /** Who cooks in the kitchen on the event's day, where that is not the kitchen's usual crew. */
  readonly cooks?: Crew;
  /** What the crew eats; left out where it does not say: then what the kitchen says. */
  readonly crewMeal?: CrewMeal;
  /** What is kept back of each dish; left out for nothing. */
  readonly keepBack?: KeepBack;
  /** What its food travels in; left out where any vehicle will do. */
  readonly vehicle?: Vehicle;
  /** What the place has to cook with, read from the venue's facts; left out where nothing of it is stated. */
  readonly venueKit?: VenueKit;
  /** The weather to plan for; left out where it is not stated. */
  readonly weather?: Weather;
  /** How guests come, for the odds of running short; left out where neither it nor the kitchen says. */
  readonly attendance?: StatedAttendance | undefined;
  readonly hours: string | null;
  readonly discount: MaybeNamed<DiscountTerms> | null;
  /** The zone it is delivered in; left out where it names neither one nor its distance. */
  readonly zone?: DeliveryZone;
  /** Money text; overrides the zone's and the place's; undefined = theirs. */
  readonly delivery: string | undefined;
  /** What the prices do not include, item by item, as the client reads it. */
  readonly notIncluded: readonly string[];
  readonly serviceCharge: MaybeNamed<ServiceChargeTerms> | null;
  readonly guarantee: GuaranteeTerms;
  readonly payments: readonly InstalmentTerms[];
  /** The letter, Markdown, checked. */
  readonly letter: string;
}
