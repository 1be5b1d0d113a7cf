import Fraction from 'fraction.js';
import type { Book } from '../../book/book.ts';
import { isHotDay, USUAL_HABITS } from '../../engine/drinks/drinks-habits.ts';
import type { Temperature } from '../../engine/measure/temperature.ts';
import type { EventDrinks, EventWater, HotDay } from '../../engine/plan/drinks/event-drinks.ts';
import type { EventDish } from '../../engine/plan/event-input.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { PackageTerms } from '../../engine/quote/terms.ts';

/** The food that is plain water where a kitchen names no other: it comes with Salver. */
const TAP = 'water';

/**
 * How an event's drinks are planned: all of it is the kitchen's own, as overage is, and as it is now. Undefined for an
 * event without drinks.
 */
export function eventDrinks(
  book: Book,
  accepted: PackageTerms,
  choice: Choice,
  dishes: readonly EventDish[],
  high: Temperature | undefined,
): EventDrinks | undefined {
  const waters = watersOf(book, accepted, choice);
  if (waters.length === 0 && dishes.every(({ drink }) => drink === undefined)) return undefined;
  const habits = book.kitchen.drinks ?? USUAL_HABITS;
  const ice = habits.ice === undefined ? undefined : book.ingredients.get(habits.ice);
  const water = book.ingredients.get(habits.water ?? TAP);
  return {
    habits,
    ...(high && { high }),
    ...(isHotDay(high, habits) && { hotDay: { high, more: habits.hotDay.more } }),
    waters,
    ...(ice && { ice }),
    ...(water && { water }),
  };
}

/** The dishes with what a hot day adds to those drunk cold. */
export function onHotDay(dishes: readonly EventDish[], hotDay: HotDay): EventDish[] {
  return dishes.map((dish) => (dish.drink && dish.recipe.hold !== 'hot' ? { ...dish, hotDay } : dish));
}

/** The plain water of the menu and of the add-ons taken. */
function watersOf(book: Book, accepted: PackageTerms, choice: Choice): EventWater[] {
  const usual = book.kitchen.overage.get(accepted.style) ?? new Fraction(0n);
  const taken = Object.entries(choice.addOns).filter(([, quantity]) => quantity > 0);
  const drinks = [
    book.packages.get(accepted.id)?.drinks,
    ...taken.map(([id]) => book.kitchen.addOns.get(id)?.drinks),
  ];
  return drinks.flatMap((each) => (each?.water ? [{ ...each.water, overage: usual }] : []));
}
