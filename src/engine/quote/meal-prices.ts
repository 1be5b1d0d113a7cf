import { type Money, money, roundToMinor } from '../money/money.ts';
import { countGuests, type Guests } from './counts.ts';
import { mealPrice } from './guest-rate.ts';
import { wholeAbove } from './ratio.ts';
import type { PackageTerms } from './terms.ts';
import type { PriceTier } from './tiers.ts';

/** What one meal of each kind costs the client in a tier, at the minor unit. Staff meals cost the client nothing. */
export interface MealPrices {
  readonly adults: Money;
  readonly children: Money;
  readonly vendors: Money;
}

/** The meal prices of one tier of a package. A price finer than the minor unit is rounded half-up. */
export function mealPrices(chosen: PackageTerms, tier: PriceTier, currency: string): MealPrices {
  const made = known.get(chosen) ?? new Map<PriceTier, MealPrices>();
  known.set(chosen, made);
  const kept = made.get(tier);
  if (kept?.adults.currency === currency) return kept;
  const prices = pricesIn(chosen, tier, currency);
  made.set(tier, prices);
  return prices;
}

/** Prices worked out already: a menu is priced at many counts, and its floor asks for every tier. */
const known = new WeakMap<PackageTerms, Map<PriceTier, MealPrices>>();

function pricesIn(chosen: PackageTerms, tier: PriceTier, currency: string): MealPrices {
  const adults = roundToMinor(money(tier.perHead, currency));
  return {
    adults,
    children: mealPrice(chosen.child, adults),
    vendors: mealPrice(chosen.vendor, adults),
  };
}

/** How many more adults the menu is billed for because the party is under the package's minimum; whole, downwards. */
export function shortOfMinimum(chosen: PackageTerms, guests: Guests): number {
  const counted = countGuests(guests, chosen.minimumCounts ?? chosen.tierCounts);
  return Math.max(0, chosen.minimumGuests - Number(wholeAbove(counted)));
}
