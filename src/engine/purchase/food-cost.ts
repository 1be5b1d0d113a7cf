import Fraction from 'fraction.js';
import type { Day } from '../calendar/day.ts';
import {
  type BatchRounding,
  explode,
  type FoodNeed,
  type IngredientUse,
  purchasedIn,
} from '../food/explode.ts';
import type { Ingredient } from '../food/ingredient.ts';
import { isTapWater } from '../food/tap-water.ts';
import type { Decimal } from '../money/decimal.ts';
import { packsOn } from './packs-on.ts';
import { decimalOfFraction, fractionOfPrice } from './price-fraction.ts';
import type { PricedPack, PriceList } from './price-list.ts';
import { isPinned } from './usable-packs.ts';

/** What food costs at the rate of its packs, without rounding up to whole packs; in the kitchen's currency. */
export interface FoodCost {
  /** Unrounded. Too low while anything is `unpriced`. */
  readonly amount: Decimal;
  /** Ids of ingredients that no pack on offer prices in the unit they are used in, and of recipes whose need no conversion reaches; sorted. */
  readonly unpriced: readonly string[];
}

const EXACTLY: BatchRounding = (exact) => exact;

/**
 * What is needed costs on a day: as-purchased amounts, unrounded, each at the lowest rate of the packs on offer
 * (the pinned pack's where there is one). Calculated in exact fractions; only the sum becomes a decimal. `round`
 * says what batches are cooked; by default exactly those needed.
 */
export function costOfNeeds(
  needs: readonly FoodNeed[],
  prices: PriceList,
  day: Day,
  round: BatchRounding = EXACTLY,
): FoodCost {
  const { ingredients, gaps } = explode(needs, round);
  const unpriced = new Set(gaps.map(({ recipe }) => recipe.id));
  let sum = new Fraction(0n);
  for (const { ingredient, uses } of ingredients.values()) {
    const offered = ratesOn(ingredient, prices, day);
    for (const use of uses) {
      const cost = costAt(use, ingredient, offered);
      if (cost) sum = sum.add(cost);
      else if (!isTapWater(ingredient)) unpriced.add(ingredient.id);
    }
  }
  return { amount: decimalOfFraction(sum), unpriced: [...unpriced].sort() };
}

/** A price by amount: so much money for one of `unit`. */
interface Rate {
  readonly rate: Fraction;
  readonly unit: string;
}

function ratesOn(ingredient: Ingredient, prices: PriceList, day: Day): Rate[] {
  const packs = packsOn(prices.get(ingredient.id) ?? [], day);
  const pinned = packs.filter((pack) => isPinned(pack, ingredient.pinned));
  return (pinned.length > 0 ? pinned : packs).map(rateOf);
}

/** Every cost asks for the rates of the same packs. */
const rates = new WeakMap<PricedPack, Rate>();

function rateOf(pack: PricedPack): Rate {
  const { price, contents } = pack;
  const rate = rates.get(pack) ?? {
    rate: fractionOfPrice(price).div(contents.amount),
    unit: contents.unit,
  };
  rates.set(pack, rate);
  return rate;
}

function costAt(use: IngredientUse, ingredient: Ingredient, offered: readonly Rate[]): Fraction | undefined {
  let lowest: Fraction | undefined;
  for (const { rate, unit } of offered) {
    const amount = purchasedIn(use, unit, ingredient)?.amount;
    const cost = amount?.mul(rate);
    if (cost && (!lowest || cost.lt(lowest))) lowest = cost;
  }
  return lowest;
}
