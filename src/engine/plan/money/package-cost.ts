import type Fraction from 'fraction.js';
import type { Day } from '../../calendar/day.ts';
import { roundBatches } from '../../food/batches.ts';
import type { Course, Dish, Package } from '../../menu/package.ts';
import { costOfNeeds, type FoodCost } from '../../purchase/food-cost.ts';
import { decimalOfFraction, fractionOfPrice } from '../../purchase/price-fraction.ts';
import type { PriceList } from '../../purchase/price-list.ts';
import type { Guests } from '../../quote/counts.ts';
import { withDemands } from '../demand/demands.ts';
import type { EventDish } from '../event-input.ts';
import { servedAmount } from '../servings/servings.ts';

/** Share of overage for a dish that states none of its own: the kitchen's for the package's service style. */
export type DefaultOverage = Fraction;

/** What a dish costs for one adult, overage included, in exact batches: the unrounded rate. */
export function dishCostPerGuest(
  dish: Dish,
  defaultOverage: DefaultOverage,
  prices: PriceList,
  day: Day,
): FoodCost {
  const { recipe, perGuest } = dish;
  const overage = (dish.overage ?? defaultOverage).add(1n);
  const need = {
    amount: perGuest.amount.amount.div(perGuest.guests).mul(overage),
    unit: perGuest.amount.unit,
  };
  return costOfNeeds([{ recipe, need, by: recipe.name }], prices, day);
}

/**
 * What the food of a package costs per guest for so many adults (one or more): the needs of all dishes with
 * overage, or with what a chosen risk of running short carries if all of them come, whole units and batches as they
 * would be cooked, at the rate of the packs but not in whole packs, divided by the adults. Where the client has a
 * choice, the costliest dishes are taken, so that a price made from it holds whatever is chosen. Unrounded.
 */
export function packageCostPerHead(
  chosen: Package,
  adults: number,
  defaultOverage: DefaultOverage,
  prices: PriceList,
  day: Day,
): FoodCost {
  if (!Number.isSafeInteger(adults) || adults < 1)
    throw new RangeError(`a cost per guest is for 1 adult or more, not ${adults}`);
  const guests: Guests = { adults, children: 0, vendors: 0, staff: 0 };
  const served = chosen.courses.flatMap((course) =>
    costliest(course, defaultOverage, prices, day).map(
      (dish): EventDish => ({
        ...dish,
        course: course.name,
        name: dish.recipe.name,
        overage: dish.overage ?? defaultOverage,
        chosenBy: undefined,
      }),
    ),
  );
  const needs = withDemands(served, guests, [], undefined).dishes.map((dish) => ({
    recipe: dish.recipe,
    need: servedAmount(dish, guests),
    by: dish.name,
  }));
  const { amount, unpriced } = costOfNeeds(needs, prices, day, roundBatches);
  return { amount: decimalOfFraction(fractionOfPrice(amount).div(BigInt(adults))), unpriced };
}

/** Of two dishes of which a guest gets the one in place of the other, the dearer. */
function dearerOfTwo(
  dishes: readonly Dish[],
  overage: DefaultOverage,
  prices: PriceList,
  day: Day,
): readonly Dish[] {
  const cost = (dish: Dish) => dishCostPerGuest(dish, overage, prices, day).amount;
  const pairs = dishes.flatMap((dish) => {
    const original = dishes.find(({ recipe }) => recipe.id === dish.insteadOf?.recipe);
    return original ? [[dish, original] as const] : [];
  });
  const cheaper = new Set(pairs.map(([dish, other]) => (cost(dish).gt(cost(other)) ? other : dish)));
  return cheaper.size === 0 ? dishes : dishes.filter((dish) => !cheaper.has(dish));
}

function costliest(course: Course, overage: DefaultOverage, prices: PriceList, day: Day): readonly Dish[] {
  const served = course.eachGuest ? 1 : course.choose;
  if (served === null || served >= course.dishes.length)
    return dearerOfTwo(course.dishes, overage, prices, day);
  return course.dishes
    .map((dish) => ({ dish, cost: dishCostPerGuest(dish, overage, prices, day).amount }))
    .sort((a, b) => b.cost.comparedTo(a.cost))
    .slice(0, served)
    .map(({ dish }) => dish);
}
