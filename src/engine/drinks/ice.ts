import Fraction from 'fraction.js';
import { degreesIn, type Temperature } from '../measure/temperature.ts';

/** What a kilogram of ice takes up as it melts at 0 °C: 333.55 kJ (CRC Handbook of Chemistry and Physics; from memory). */
const LATENT_HEAT = new Fraction('333.55');

/** What a kilogram of water gives off per degree Celsius: 4.186 kJ, the 15 °C calorie (from memory); drinks are taken for water. */
const WATER_HEAT = new Fraction('4.186');

/** Kilograms that a liter of a drink weighs; sugar makes it up to 5 % more, alcohol less. */
const KG_PER_LITER = new Fraction(1n);

/**
 * How cold iced drinks are served. A point under the 41 °F of FDA Food Code 3-501.16, which asks it only of drinks that
 * need it, such as milk; for all others it is common practice, no source.
 */
export const ICED_TO: Temperature = { degrees: new Fraction(40n), scale: 'F' };

/**
 * Kilograms of ice that melt to cool so many liters of drinks from a temperature to that of iced drinks, exact. The cold
 * of the melted water, the bottles' own warmth and what melts while they stand are not in it: a share for melting is.
 */
export function coolingIce(liters: Fraction, from: Temperature): Fraction {
  const degrees = degreesIn('C', from).sub(degreesIn('C', ICED_TO));
  if (degrees.s <= 0n) return new Fraction(0n);
  return liters.mul(KG_PER_LITER).mul(WATER_HEAT).mul(degrees).div(LATENT_HEAT);
}
