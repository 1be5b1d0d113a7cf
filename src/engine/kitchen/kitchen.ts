import type Fraction from 'fraction.js';
import type { DaysBefore } from '../calendar/offset.ts';
import type { ServiceStyle } from '../course/service-style.ts';
import type { DrinksHabits } from '../drinks/drinks-habits.ts';
import type { AllergenLaw } from '../food/allergen-law.ts';
import type { Minutes } from '../measure/duration.ts';
import type { PerGuest } from '../measure/per-guest.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { Crew } from '../menu/crew.ts';
import type { CrewMeal } from '../menu/crew-meal.ts';
import type { DeliveryZone } from '../menu/delivery-zone.ts';
import type { Dish, Drinks } from '../menu/package.ts';
import type { Place } from '../menu/place.ts';
import type { Vehicle } from '../menu/vehicle.ts';
import type { StatedAttendance } from '../odds/attendance.ts';
import type { Counts } from '../quote/counts.ts';
import type { LineClass } from '../quote/line-class.ts';
import type { GuaranteeTerms, InstalmentTerms, MaybeNamed, ServiceChargeTerms } from '../quote/terms.ts';
import type { SafetyRules } from '../safety/limit.ts';
import type { AnswerWay } from './answer-way.ts';
import type { Carrier } from './carrier.ts';
import type { Container } from './container.ts';
import type { DayTimes } from './day-times.ts';
import type { FontPair } from './font-pair.ts';
import type { KitItem } from './kit.ts';
import type { LabelSheet } from './label-sheet.ts';
import type { Mark } from './mark.ts';
import type { Burns } from './parse-burns.ts';
import type { ReturnFacts } from './return-facts.ts';

/** A role that serves: what the client pays and what the crew member is paid, both money text per hour. */
export interface StaffRole {
  readonly id: string;
  readonly name: string;
  readonly price: string;
  readonly pay: string;
  /** Guests for one of them, by service style; a style not named needs none. */
  readonly guestsEach: ReadonlyMap<ServiceStyle, number>;
  /** Hours as decimal text, used where package and proposal say none. */
  readonly hours: string;
  readonly atLeast: number;
  /** Which guests it serves. */
  readonly counts: Counts;
  /** True: people of this role cook at the event’s place. */
  readonly cooks?: true;
  /** Set where their hours begin and end at the event’s place; else at the kitchen. */
  readonly reportsTo?: 'place';
}

/** Something rented per guest or per drink, for the pack-out list. */
export interface Rental {
  readonly id: string;
  readonly name: string;
  readonly amount: PerGuest;
  /** True: `amount` is for drinks and not for guests; those served in it, or all where no drink names it. */
  readonly perDrink?: true;
  readonly spare: Fraction;
  /** Which guests get it; left out where its entry does not state it: then the kitchen's `counts`. */
  readonly counts?: Counts;
  /** Service styles it goes with; empty = all. */
  readonly styles: readonly ServiceStyle[];
  /** What one piece costs the kitchen, money text; left out where not stated. */
  readonly cost?: string;
  /** What one piece weighs, in grams; left out where not stated. */
  readonly grams?: Fraction;
  /** What is known of its way back. */
  readonly back?: ReturnFacts;
}

export interface AddOn {
  readonly id: string;
  readonly name: string;
  readonly class: LineClass;
  /** As written: `6.50 per guest`, `240.00 per hour`, `180.00 per 50 guests`, `350.00`. */
  readonly price: string;
  readonly counts: Counts;
  /** Food that comes with it. */
  readonly dishes: readonly Dish[];
  /** Set where it brings drinks, whose kinds are among its dishes. */
  readonly drinks?: Drinks;
  /** What it costs the kitchen besides that food, written as a price is; left out where not stated. */
  readonly cost?: string;
}

export interface Equipment {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  /** What one holds at a time, one kind of container or another; empty where not stated. */
  readonly holds: readonly { readonly count: number; readonly container: string }[];
  /** How many batches of a recipe one takes at a time; left out where it is stated by container, or not at all. */
  readonly batches?: number;
  /**
   * True: it is in use as long as hands are at work at its station, as a grill or a mixer is; false: only in a step's
   * unattended time, as an oven is. Left out: in unattended time, and in the hands-on time of a step without any.
   */
  readonly byHand?: boolean;
  /** How long food takes in it from the end of cooking to cold; left out where nothing is cooled in it. */
  readonly chills?: Minutes;
  /** How finished food waits in it until its truck is loaded; left out where none does. */
  readonly keeps?: 'hot' | 'cold';
  /** Id of the station it stands at; undefined where it is at none. */
  readonly station: string | undefined;
  /** True: it can be taken to an event's place, where `station`'s work is then done on it. */
  readonly travels?: boolean;
  /** What one draws from a circuit, in amperes; left out where it needs no power or that is not stated. */
  readonly amperes?: number;
  /** Time to light or heat it at the place; none where left out. */
  readonly heats?: Minutes;
  /** What one burns; left out where it burns nothing or that is not stated. */
  readonly burns?: Burns;
  /** What its fuel is bought in: a cylinder, a bag. */
  readonly fuelIn?: Quantity;
  /** What one weighs, in grams; left out where not stated. */
  readonly grams?: Fraction;
  /** What is known of its way back. */
  readonly back?: ReturnFacts;
}

/** The caterer: name, rates and defaults that every proposal and plan starts from. */
export interface Kitchen {
  readonly name: string;
  readonly town: string | undefined;
  readonly email: string | undefined;
  readonly phone: string | undefined;
  readonly site: string | undefined;
  /** How clients' acceptances come back. */
  readonly acceptances: AnswerWay;
  /** Whether clients are told of guest counts at which more guests cost less in all. */
  readonly tellPriceSteps: boolean;
  readonly locale: string;
  readonly currency: string;
  readonly measures: 'us' | 'metric';
  readonly timeZone: string;
  readonly paper: 'letter' | 'a4';
  /** What container labels are printed on. */
  readonly labelSheet: LabelSheet;
  /** Accent colour as #rrggbb. */
  readonly accent: string;
  /** The typefaces of all pages and prints. */
  readonly fonts: FontPair;
  readonly mark: Mark | undefined;
  /** Days before the event on which food is bought: the prices of that day count. */
  readonly buying: DaysBefore;
  /** What each supplier beyond the first must save more than, money text. */
  readonly secondSupplierSaves: string;
  readonly allergenLaws: readonly AllergenLaw[];
  readonly overage: ReadonlyMap<ServiceStyle, Fraction>;
  /** From arriving at the place to serving; undefined where not stated. */
  readonly setUp: Minutes | undefined;
  /** How long packing, loading and clearing take on an event's day. */
  readonly day: DayTimes;
  readonly crew: Crew | undefined;
  /** What the crew eats at events that do not say it; left out where it is not stated. */
  readonly crewMeal?: CrewMeal;
  /** The food code it works by. */
  readonly foodSafety: SafetyRules;
  /** Below what dishes without gluten-containing ingredients are tested, `20 mg/kg`; undefined where they are not. */
  readonly glutenTested: string | undefined;
  /** Share of guests planned for as eating no meat where the client has not stated it. */
  readonly noMeat: Fraction;
  /** True: a dish is cooked only for those who can eat it, where neither it nor its package says otherwise. */
  readonly onlyForEaters?: boolean;
  /** How guests come, for the odds of running short; left out where it is not stated: then everybody does. */
  readonly attendance?: StatedAttendance | undefined;
  readonly taxBy: 'invoice' | 'line';
  /** True: an invoice has a line on which to write a tip. */
  readonly tipLine?: true;
  readonly places: ReadonlyMap<string, Place>;
  readonly serviceCharge: MaybeNamed<ServiceChargeTerms> | null;
  readonly guarantee: GuaranteeTerms;
  readonly payments: readonly InstalmentTerms[];
  /** What the prices do not include, item by item, as the client reads it. */
  readonly notIncluded: readonly string[];
  /** Terms and conditions, Markdown. */
  readonly terms: string | undefined;
  /** Whom a rule that divides by people counts where it states nothing of its own. */
  readonly counts: Counts;
  readonly capacity: { readonly guests: number | undefined; readonly events: number | undefined };
  readonly stations: ReadonlyMap<string, string>;
  /** How many can work at a station at once, by its id; one where it is not stated. */
  readonly stationPlaces?: ReadonlyMap<string, number>;
  /** The skill that hands-on work at a station takes where its step names no other; left out where anybody may do all. */
  readonly stationSkills?: ReadonlyMap<string, string>;
  readonly staff: ReadonlyMap<string, StaffRole>;
  /** Which hours at an event its quotes are meant to sell; left out: all. */
  readonly hoursQuoted?: 'service';
  readonly containers: ReadonlyMap<string, Container>;
  readonly equipment: ReadonlyMap<string, Equipment>;
  /** What containers travel in; left out where none is stated: then they go as they are. */
  readonly carriers?: ReadonlyMap<string, Carrier>;
  /** Left out where none is stated: then nobody counts them. */
  readonly vehicles?: ReadonlyMap<string, Vehicle>;
  /** Where it delivers to at which price; left out where none are stated. */
  readonly deliveryZones?: ReadonlyMap<string, DeliveryZone>;
  readonly rentals: ReadonlyMap<string, Rental>;
  /** How drinks are planned; left out where nothing of it is stated: then as usual. */
  readonly drinks?: DrinksHabits;
  /** What goes along by rule; left out where nothing does. */
  readonly kit?: ReadonlyMap<string, KitItem>;
  readonly addOns: ReadonlyMap<string, AddOn>;
}
