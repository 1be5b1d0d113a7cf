import Fraction from 'fraction.js';
import type { Carrier } from '../../kitchen/carrier.ts';

/** Joules that melt a gram of ice: 334, its latent heat of fusion (from memory; handbooks print 333.5 to 334). */
const MELTS = new Fraction(334n);
/** Joules that warm a gram of water by one degree Celsius: 4.186, the calorie at 15 °C (from memory). */
const WARMS_WATER = new Fraction(4186n, 1000n);
/**
 * Cooked and fresh food takes about eight tenths of the heat of water: Siebel’s rule, 0.2 + 0.8 × its share of water, for
 * food of three quarters water (from memory, not checked against the publication).
 */
const FOOD_TO_WATER = new Fraction(8n, 10n);
/** A gram of ice takes as much heat as warms so many grams of water by one degree Celsius. */
export const ICE_IN_WATER = MELTS.div(WARMS_WATER);

/** What passes the walls of a foam-walled box of about 100 liters: 1 watt for a degree Celsius. Common practice, no source. */
const USUAL_WATTS = new Fraction(1n);
/** Lids are opened and ice melts on the way to the truck: a quarter more. Common practice, no source. */
const SPARE = new Fraction(5n, 4n);
/** Cold food goes in at 5 °C (41 °F) at the worst and is brought down to 3 °C: common practice, no source. */
const COOLED_BY = new Fraction(2n);
/** Hot food goes in at 71 °C (160 °F) where nothing is stated: common practice, no source. */
export const USUAL_HOT = new Fraction(640n, 9n);
/** It is 25 °C (77 °F) around the carriers where no weather is stated: common practice, no source. */
export const USUAL_OUTSIDE = new Fraction(25n);

/**
 * How fast heat passes a carrier's walls: grams of water that are warmed by one degree Celsius in an hour, for each degree
 * between inside and outside. From its trial, by the mean difference between the water and what was around it, which is
 * within a hundredth of the logarithmic mean where the water lost less than a third of that difference; else the usual one.
 */
export function leakOf({ trial }: Pick<Carrier, 'trial'>): Fraction {
  if (!trial) return USUAL_WATTS.mul(3600n).div(WARMS_WATER);
  const { grams, from, to, hours, around } = trial;
  return grams.mul(from.sub(to)).div(hours.mul(from.add(to).div(2n).sub(around)));
}

/**
 * The ice for a carrier of cold food, in grams, exact: what the walls let in over these hours while the inside is at 0 °C,
 * and what cools the food by 2 °C, with a quarter to spare. None where it is no warmer outside than ice. Water ice keeps
 * nothing frozen: that is for cold food only.
 */
export function iceFor(
  carrier: Pick<Carrier, 'trial'>,
  { grams, hours, outside }: { grams: Fraction; hours: Fraction; outside: Fraction },
): Fraction {
  if (outside.lte(0n)) return new Fraction(0n);
  const throughWalls = leakOf(carrier).mul(outside).mul(hours);
  const fromFood = grams.mul(FOOD_TO_WATER).mul(COOLED_BY);
  return throughWalls.add(fromFood).div(ICE_IN_WATER).mul(SPARE);
}

/** Hot food of some weight in a carrier for some hours, with so many degrees Celsius around it. */
export interface Ride {
  readonly grams: Fraction;
  readonly hours: Fraction;
  readonly outside: Fraction;
}

/**
 * How warm hot food still is after these hours, in degrees Celsius, exact: worked out in eight steps, in each of which it
 * loses as much as at the step's beginning. That is a little more than it does lose, by Newton's law of cooling.
 */
export function stillAt(
  carrier: Pick<Carrier, 'trial'>,
  { at, ...ride }: Ride & { readonly at: Fraction },
): Fraction {
  const { outside } = ride;
  return outside.add(at.sub(outside).mul(keptShare(carrier, ride)));
}

/**
 * How hot food must go in to be no colder than `least` after these hours, in degrees Celsius, exact; undefined where it
 * would lose all its heat on the way.
 */
export function goesInAt(
  carrier: Pick<Carrier, 'trial'>,
  { least, ...ride }: Ride & { readonly least: Fraction },
): Fraction | undefined {
  const { outside } = ride;
  const kept = keptShare(carrier, ride);
  return kept.n === 0n ? undefined : outside.add(least.sub(outside).div(kept));
}

const STEPS = 8;

/** The share of the difference to the outside that is left after all steps, in [0, 1]. */
function keptShare(carrier: Pick<Carrier, 'trial'>, { grams, hours }: Ride): Fraction {
  const lost = leakOf(carrier).mul(hours).div(grams.mul(FOOD_TO_WATER)).div(STEPS);
  const kept = new Fraction(1n).sub(lost);
  return kept.lte(0n) ? new Fraction(0n) : (kept.pow(STEPS) ?? kept);
}
