import type Fraction from 'fraction.js';
import type { CourseTime } from '../course/course-time.ts';
import type { DishRole } from '../course/dish-role.ts';
import type { InsteadOf } from '../course/instead-of.ts';
import type { ServiceStyle } from '../course/service-style.ts';
import type { Drink, Water } from '../drinks/drink.ts';
import type { Recipe } from '../food/recipe.ts';
import type { PerGuest } from '../measure/per-guest.ts';
import type { TakeRate } from '../odds/take-rate.ts';
import type { Counts } from '../quote/counts.ts';
import type { GuestRate } from '../quote/guest-rate.ts';
import type { PriceTier } from '../quote/tiers.ts';

/** A recipe as a package offers it, with its per-guest amount. */
export interface Dish {
  readonly recipe: Recipe;
  readonly perGuest: PerGuest;
  /** Extra carried over the per-guest amount; undefined = the kitchen's default for the service style. */
  readonly overage: Fraction | undefined;
  readonly counts: Counts;
  /** What it is in its course, where the package states it; else its recipe or the course tells. */
  readonly role?: DishRole;
  /**
   * Set for a dish that is there for guests who can eat no other of its course: the share of all the rest who help
   * themselves to it, 0 where it is held back. Undefined: it is planned for everybody counted.
   */
  readonly others?: Fraction;
  /** Set where guests with a need get it in place of another dish of the course; `others` is then set too. */
  readonly insteadOf?: InsteadOf;
  /** True: it is cooked only for those who can eat it, false: for everybody counted; undefined: as its package does. */
  readonly onlyForEaters?: boolean;
  /** Set where the kitchen states how guests take it: its own estimate, never part of an offer. */
  readonly takeRate?: TakeRate;
  /** Set for a drink of `drinks`: how it is served. Its own planning: never part of an offer. */
  readonly drink?: Drink;
}

/** The drinks of a package or an add-on besides those that are dishes of it. */
export interface Drinks {
  /** The course that its drinks make on the menu; an add-on has no courses and its own name here. */
  readonly course: string;
  readonly water?: Water;
}

export interface Course {
  readonly name: string;
  /** The client chooses so many of the dishes and everybody gets them; null where there is nothing to choose. */
  readonly choose: number | null;
  /** Every guest takes one of the dishes, and the counts by dish are given (plated mains). */
  readonly eachGuest: boolean;
  /** When it is served, where its package states it. Its own planning: never part of an offer. */
  readonly time?: Partial<CourseTime>;
  readonly dishes: readonly Dish[];
}

/** How the price per head is found: stated by guest count, or from the share of the price that food may cost. */
export type PackagePrice =
  | { readonly kind: 'tiers'; readonly tiers: readonly PriceTier[] }
  | {
      readonly kind: 'food cost';
      /** Target share of the price that the food may cost: `30 %`. */
      readonly target: string;
      /** The price is rounded up to a multiple of this, exact decimal text. */
      readonly step: string;
      /** Guest counts at which the tiers begin; each is priced at the food cost of its first count. */
      readonly from: readonly number[];
    };

/** A priced menu. */
export interface Package {
  readonly id: string;
  readonly name: string;
  readonly style: ServiceStyle;
  readonly price: PackagePrice;
  /** More guests never pay less in all. */
  readonly neverLessInAll: boolean;
  readonly tierCounts: Counts;
  readonly child: GuestRate;
  readonly vendor: GuestRate;
  readonly minimumGuests: number;
  /** Money text, null where none. */
  readonly minimumSpend: string | null;
  readonly hours: string | null;
  readonly courses: readonly Course[];
  /** Set where it has drinks, whose kinds are the dishes of a course of their own. */
  readonly drinks?: Drinks;
  /** As of its dishes, where they do not say it; undefined: as the kitchen does. */
  readonly onlyForEaters?: boolean;
  /** Add-ons that suit it; null = all the kitchen has. */
  readonly addOns: readonly string[] | null;
}
