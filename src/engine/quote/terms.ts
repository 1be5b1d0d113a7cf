import type { Day } from '../calendar/day.ts';
import type { DaysBefore } from '../calendar/offset.ts';
import type { DishRole } from '../course/dish-role.ts';
import type { InsteadOf } from '../course/instead-of.ts';
import type { ServiceStyle } from '../course/service-style.ts';
import type { Instalment } from '../money/instalments.ts';
import type { Counts } from './counts.ts';
import type { GuestRate } from './guest-rate.ts';
import type { LineClass } from './line-class.ts';
import type { PriceTier } from './tiers.ts';

/*
 * The sell-side terms: what an issued offer freezes and what the client's page computes with. Plain JSON, every
 * figure as text: money as `1234.50` in the terms' currency, rates as `8.25 %`, weights as in `Counts`.
 * Nothing here tells a cost, a margin or a supplier.
 */

/** Everything a price is computed from, for one client, date and place. */
export interface Terms {
  readonly version: 1;
  /** Whom sums per guest divide by; left out: everybody at the table, a child as one. */
  readonly perGuest?: Counts;
  /** ISO 4217 code of every sum in the terms. */
  readonly currency: string;
  /** BCP 47 tag, for showing sums: `en-US`. */
  readonly locale: string;
  /** Whether tax is rounded once for the invoice or once for each line. */
  readonly taxBy: 'invoice' | 'line';
  readonly place: PlaceTerms;
  /** True where the client pays no tax. */
  readonly exempt: boolean;
  readonly eventDate: Day;
  readonly packages: readonly PackageTerms[];
  readonly addOns: readonly AddOnTerms[];
  readonly staff: readonly StaffTerms[];
  readonly delivery: { readonly label: string; readonly price: string } | null;
  readonly discount: DiscountTerms | null;
  readonly serviceCharge: ServiceChargeTerms | null;
  /** The least the client spends; a package's own replaces it. */
  readonly minimumSpend: MinimumSpendTerms | null;
  /** The payment schedule, in order. Empty: the whole total on the day. */
  readonly payments: readonly InstalmentTerms[];
  readonly guarantee: GuaranteeTerms;
}

/** Where the event is, as far as tax goes. */
export interface PlaceTerms {
  readonly id: string;
  readonly name: string;
  /** True where prices are shown with the tax in them. */
  readonly taxIncluded: boolean;
  /** The rate for each class of line, `0 %` where it is not taxed. */
  readonly tax: Readonly<Record<LineClass, string>>;
}

/** One instalment of the payment schedule, as the terms keep it. */
export type InstalmentTerms = Instalment;

/** The count the client is held to. */
export interface GuaranteeTerms {
  /** After this day the count may only rise. */
  readonly daysBefore: DaysBefore;
  /** The share of the accepted count under which the billed count never falls: `90 %`. */
  readonly floorRate: string;
}

/** A priced menu. */
export interface PackageTerms {
  readonly id: string;
  readonly name: string;
  readonly style: ServiceStyle;
  /** Price per adult by guest count, rising, without gaps; the last may be open. */
  readonly tiers: readonly PriceTier[];
  /** True: a larger party never pays less for the menu in all than a smaller one would. */
  readonly neverLessInAll: boolean;
  /**
   * `reached`: in that sum, a tier's price is paid by parties that reach the tier and by no smaller one. Stated where a
   * later tier costs more, since elsewhere it comes to the same; offers issued before it was known keep their sums.
   */
  readonly floorTiers?: 'reached';
  /** Which guests the tiers count. */
  readonly tierCounts: Counts;
  /** What a child pays. */
  readonly child: GuestRate;
  /** What the client pays for a vendor's meal. */
  readonly vendor: GuestRate;
  /** The menu is billed for at least so many; 0 for no minimum. */
  readonly minimumGuests: number;
  /** Which guests the minimum counts; those the tiers count where not stated. */
  readonly minimumCounts?: Counts;
  /** Replaces the terms' minimum spend when this package is chosen. */
  readonly minimumSpend?: MinimumSpendTerms;
  /** How long the meal is served, for show: `3 h`. */
  readonly hours?: string;
  readonly courses: readonly CourseTerms[];
  /** Ids of the add-ons that go with it; all of them where not stated. */
  readonly addOns?: readonly string[];
}

/** One course of a menu. With neither a choice nor one for each guest, everybody gets every dish. */
export interface CourseTerms {
  /** Names the course in a choice, so it is unique within its package. */
  readonly name: string;
  /** So many of its dishes the client chooses, and everybody gets them; null for all. */
  readonly choose: number | null;
  /** True: each guest takes one of the dishes, and the client gives a count for each. `choose` is then null. */
  readonly eachGuest: boolean;
  readonly dishes: readonly DishTerms[];
}

/** One dish as the client sees it. */
export interface DishTerms {
  /** The recipe's id. */
  readonly recipe: string;
  readonly name: string;
  /** The per-guest amount, for show and for the kitchen: `3 oz per guest`. */
  readonly perGuest: string;
  /** Which guests get it, and as how much of a portion. */
  readonly counts: Counts;
  /** What it is in its course, where the kitchen states it; else what its recipe states now, or the course tells. */
  readonly role?: DishRole;
  /** Set where guests with a need get it in place of another dish of its course. */
  readonly insteadOf?: InsteadOf;
  /** Dietary marks that hold for it. */
  readonly marks: readonly string[];
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  /** Needs that it does not suit as it is, and for which it can be made separately: `vegan`, `tree nuts`. */
  readonly onRequest?: readonly string[];
  /** True while not all of its allergens are stated, which only a draft allows: the lists are then not complete. */
  readonly unsaid?: true;
  /** What the dish costs on top, for each guest counted. */
  readonly supplement?: string;
}

/** What the client may add. */
export interface AddOnTerms {
  readonly id: string;
  readonly name: string;
  readonly class: LineClass;
  readonly price: string;
  /** What the price is for: each guest counted, each hour, each begun group of `guests` guests, or all. */
  readonly per: AddOnPer;
  /** The size of the group where `per` is `guests`. */
  readonly guests?: number;
  readonly counts: Counts;
  /** The food that comes with it, if any. */
  readonly dishes?: readonly DishTerms[];
}

/** What an add-on's price is for. */
export type AddOnPer = 'guest' | 'hour' | 'guests' | 'flat';

/** People who serve: `one` for every `per` guests counted, whole people upwards. */
export interface StaffTerms {
  /** The role's id: `server`. */
  readonly role: string;
  readonly name: string;
  /** Price of one person's hour. */
  readonly rate: string;
  /** Hours of each person, a whole number or a decimal: `6`, `5.5`. */
  readonly hours: string;
  readonly one: number;
  readonly per: number;
  readonly counts: Counts;
  /** Never fewer people than this. */
  readonly atLeast: number;
  /** The packages they serve with; all where not stated. */
  readonly packages?: readonly string[];
}

/** Money off: a share of the base or a sum, never more than the base itself. */
export interface DiscountTerms {
  readonly label: string;
  readonly rate?: string;
  readonly amount?: string;
  /** The classes it is taken from; tax is reduced with them. */
  readonly base: readonly LineClass[];
}

/** A mandatory charge on top. It is not a gratuity and its label never calls it one. */
export interface ServiceChargeTerms {
  readonly label: string;
  readonly rate: string;
  readonly base: readonly LineClass[];
  /** True: taken from what is left after the discount. */
  readonly afterDiscount: boolean;
}

/** Money off or a charge as kitchens write it: one without a name of its own gets its name when it is offered. */
export type MaybeNamed<Named extends { readonly label: string }> = Omit<Named, 'label'> & {
  readonly label?: string | undefined;
};

/** The least that lines of certain classes come to before discount; a line tops them up. */
export interface MinimumSpendTerms {
  readonly amount: string;
  readonly base: readonly LineClass[];
  /** What the top-up line is taxed and discounted as. */
  readonly class: LineClass;
}
