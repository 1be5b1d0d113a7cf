import type Fraction from 'fraction.js';
import type { Day } from '../calendar/day.ts';
import type { CourseTime } from '../course/course-time.ts';
import type { DishRole } from '../course/dish-role.ts';
import type { InsteadOf } from '../course/instead-of.ts';
import type { ServiceStyle } from '../course/service-style.ts';
import type { Drink } from '../drinks/drink.ts';
import type { Recipe } from '../food/recipe.ts';
import type { CallChanged } from '../food/recipe-called.ts';
import type { Minutes } from '../measure/duration.ts';
import type { PerGuest } from '../measure/per-guest.ts';
import type { Crew } from '../menu/crew.ts';
import type { MenuDish } from '../menu/fillers.ts';
import type { KeepBack } from '../menu/keep-back.ts';
import type { Vehicle } from '../menu/vehicle.ts';
import type { VenueKit } from '../menu/venue-kit.ts';
import type { Weather } from '../menu/weather.ts';
import type { StatedAttendance } from '../odds/attendance.ts';
import type { DishDemand } from '../odds/dish-demand.ts';
import type { TakeRate } from '../odds/take-rate.ts';
import type { Counts, Guests } from '../quote/counts.ts';
import type { TimeAway } from '../safety/time-without-control.ts';
import type { Said, Statement } from '../text/statement.ts';
import type { EventDrinks, HotDay } from './drinks/event-drinks.ts';

/** A dish that will be served: the accepted terms joined to the live recipe. */
export interface EventDish {
  readonly course: string;
  readonly name: string;
  readonly recipe: Recipe;
  readonly perGuest: PerGuest;
  readonly counts: Counts;
  /** Share over the per-guest amount, resolved: the dish's own or the kitchen's for the style. */
  readonly overage: Fraction;
  /** Guests who chose it where every guest takes one of a course; undefined = all that `counts` counts. */
  readonly chosenBy: number | undefined;
  /** Set for the food of an add-on, which is no course of the meal that must feed everybody. */
  readonly extra?: true;
  /** What it is in its course; undefined where nothing tells. */
  readonly role?: DishRole | undefined;
  /** As `Dish.others`: the share of the rest who take a dish that is there for those who need it. */
  readonly others?: Fraction;
  /** As `Dish.insteadOf`; the recipe is the one served now. */
  readonly insteadOf?: InsteadOf;
  /** True: it is cooked only for those who can eat it, which the kitchen's stated needs tell. */
  readonly onlyForEaters?: boolean;
  /** As `Dish.taking`: how guests take it, as far as the kitchen says it. */
  readonly takeRate?: TakeRate;
  /** Set for a drink of a menu's or an add-on's `drinks`: how it is served. */
  readonly drink?: Drink;
  /** Set where the day is hot and it is drunk cold. */
  readonly hotDay?: HotDay;
  /** Set once it is known who eats: what they will want together, and what is carried for it. */
  readonly demand?: DishDemand;
  /** Set once portions are split by need: for whom it is planned, where that is not everybody counted. */
  readonly portions?: DishPortions;
}

/** Guests with one need, or those without any. */
export interface NeedGuests {
  /** The need as written: `vegan + no gluten`. */
  readonly need: string;
  readonly guests: number;
}

/** For how many guests a dish is planned, and for which. */
export interface DishPortions {
  /** Exact; may be a fraction where a child counts as a part. */
  readonly guests: Fraction;
  /** Guests with a need that it suits, in the order of the needs; the others have none. */
  readonly needs: readonly NeedGuests[];
  /** What it is made separately from, and how it differs; undefined for the dish as it is. */
  readonly apart: { readonly recipe: string; readonly changes: readonly Statement[] } | undefined;
  /** Recipe of the dish that they would else have; undefined where it takes the place of none. */
  readonly insteadOf?: string;
  /** Stated needs of guests it is not cooked for, since they cannot eat it. */
  readonly notFor?: readonly string[];
  /** How the number comes about. */
  readonly why: readonly Said[];
}

/** A role as an offer sells it. */
export interface SoldRole {
  /** The role’s id in the kitchen. */
  readonly role: string;
  readonly name: string;
  readonly people: number;
  /** What each of them is sold for. */
  readonly each: Minutes;
  /** Set where their hours begin and end at the event’s place; else at the kitchen. */
  readonly reportsTo?: 'place';
}

/** Why a day has no room for more. Minutes are from its midnight. */
export type FullDay =
  /** Its work would begin before the crew comes. */
  | { readonly kind: 'early'; readonly at: number; readonly crew: number }
  /** More is needed at once than there is, wherever the work is put. */
  | { readonly kind: 'clash' }
  /** Other food would stand longer than it may, or a truck be loaded before it is back. */
  | { readonly kind: 'stands' | 'vehicles' };

/** Work that an event's own day has no room for, done on an earlier day. */
export interface EarlierWork {
  /** Id of the recipe; what is made of it separately for a need is done with it. */
  readonly recipe: string;
  /** How many days before the event; one where left out. */
  readonly days?: number;
  readonly because: FullDay;
}

/** All that planning one event needs besides the kitchen and the price list. */
export interface EventInput {
  readonly id: string;
  readonly occasion: string;
  readonly client: string;
  readonly date: Day;
  /** HH:MM in the kitchen's time zone. */
  readonly serveAt: string;
  readonly placeName: string;
  readonly venue: ReadonlyMap<string, string>;
  /** Id of the place’s site sheet; left out where the proposal names none. */
  readonly siteSheet?: string;
  readonly style: ServiceStyle;
  readonly packageName: string;
  /** The package's id; left out where nobody need look for other dishes of it. */
  readonly packageId?: string;
  readonly guests: Guests;
  /** Guests by dietary need or allergy, as the client said; each guest once, under all that he or she needs. */
  readonly needs: ReadonlyMap<string, number>;
  /** Share of the table planned as eating no meat where the client has not stated it; none where left out. */
  readonly noMeat?: Fraction;
  /** The dishes of the kitchen's menus, by which a gap could be filled. */
  readonly alternatives?: readonly MenuDish[];
  readonly dishes: readonly EventDish[];
  /** What the crew eats, which counts the crew and is on no menu; left out where nothing is planned for them. */
  readonly crewDishes?: readonly EventDish[];
  /** Set where it is stated that the crew brings its own meals. */
  readonly crewBringsOwn?: true;
  /** What is kept back of each dish at the place; left out for nothing. */
  readonly keepBack?: KeepBack;
  /** What a dish made separately is called. */
  readonly callChanged: CallChanged;
  /** What of its own day's work is done on an earlier day; none where left out. */
  readonly earlier?: readonly EarlierWork[];
  readonly lines: number;
  /** How guests come, for the odds of running short; left out where it is not stated: then everybody does. */
  readonly attendance?: StatedAttendance | undefined;
  /** How long its food is away from the kitchen; left out where it is not stated. */
  readonly away?: TimeAway;
  /** The day whose prices count. */
  readonly buyingDay: Day;
  /** Who cooks in the kitchen on the event's own day, where that is not the kitchen's usual crew. */
  readonly cooks?: Crew;
  /** What its food travels in; left out where any vehicle will do. */
  readonly vehicle?: Vehicle;
  /** What the place has to cook with; left out where nothing of it is stated. */
  readonly venueKit?: VenueKit;
  /** The weather it is planned for; left out where it is not stated. */
  readonly weather?: Weather;
  /** When each course is served and for how long; a course not named is served at once, for as long as is served. */
  readonly courseTimes?: ReadonlyMap<string, CourseTime>;
  /** Cooks at the place, as the offer sells them; left out where that is not known. */
  readonly placeCooks?: number;
  /** How its drinks are planned; left out where it has none. */
  readonly drinks?: EventDrinks;
  /** Who works at the event, as the offer sells them; left out where that is not known. */
  readonly soldCrew?: readonly SoldRole[];
}
