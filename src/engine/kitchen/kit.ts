import type Fraction from 'fraction.js';
import type { ServiceStyle } from '../course/service-style.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { Counts } from '../quote/counts.ts';
import type { ReturnFacts } from './return-facts.ts';

/** What so many pieces of kit go along for, besides roles and equipment of the kitchen's own. */
export const KIT_BASES = [
  'event',
  'guest',
  'staff',
  'cook',
  'table',
  'line',
  'dish',
  'hour',
  'flame',
  'plug',
] as const;

/**
 * What a rule counts: guests; everybody the offer sells, or those of them who cook at the place; tables of the guest list;
 * buffet lines; dishes of the menu; hours from the truck's arrival until all is cleared; pieces of equipment brought that burn
 * fuel (`flame`) or draw current (`plug`); people of one role; pieces brought of one kind.
 */
export type KitBase =
  | { readonly kind: (typeof KIT_BASES)[number] }
  | { readonly kind: 'role'; readonly role: string; readonly name: string }
  | { readonly kind: 'equipment'; readonly equipment: string; readonly name: string };

/** So much for so many: `1 per 50 guests`, `2 per event`. */
export interface KitRule {
  readonly amount: Quantity;
  /** How many share the amount; one or more. */
  readonly per: bigint;
  readonly base: KitBase;
  /** As it is written. */
  readonly written: string;
}

/** A fact of a venue for want of which kit goes along; `stairs` for want of a way in without them. */
export type KitVenue = 'water' | 'power' | 'cover' | 'cold' | 'stairs';

/** Weather for which kit goes along; `heat` from 80 °F (27 °C), where the US weather service begins to warn (from memory). */
export const KIT_WEATHERS = ['rain', 'wind', 'heat'] as const;
export type KitWeather = (typeof KIT_WEATHERS)[number];

/** What goes along by rule, whatever is on the menu: an extinguisher, a canopy, water to wash hands with. */
export interface KitItem {
  readonly id: string;
  readonly name: string;
  /** Summed; all in one unit. */
  readonly rules: readonly KitRule[];
  /** Which guests a rule per guest counts; left out where its entry does not state it: then the kitchen's `counts`. */
  readonly counts?: Counts;
  /** Service styles it goes with; empty = all. */
  readonly styles: readonly ServiceStyle[];
  /** All of these must be missing there, and all of such weather be stated; empty = always. */
  readonly venue: readonly KitVenue[];
  readonly weather: readonly KitWeather[];
  /** Set for what is used up at the event and does not come back: gloves, bags, water. */
  readonly usedUp?: true;
  /** What one weighs, in grams; left out where it is not stated. */
  readonly grams?: Fraction;
  /** What the crew reads beside it. */
  readonly note?: string;
  /** What is known of its way back. */
  readonly back?: ReturnFacts;
}
