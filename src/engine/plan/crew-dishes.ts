import Fraction from 'fraction.js';
import { type Quantity, timesQuantity } from '../measure/quantity.ts';
import type { CrewMeal } from '../menu/crew-meal.ts';
import type { Counts, Guests } from '../quote/counts.ts';
import { shareOut } from '../quote/scaled-choice.ts';
import type { EventDish } from './event-input.ts';

/**
 * What the crew eats, as dishes that count the crew and nobody else: dishes of their own, or a share of the guests' menu.
 * Vendors, whom the client pays for, eat with the crew where no dish of the menu counts them. Of a course of which each
 * guest takes one dish, the crew has them in the guests' proportions. What the crew has by a dish's own `counts` is not
 * planned twice; drinks, extras and what is there for guests' needs are left out. Nothing extra is carried: the crew is known.
 */
export function crewDishesOf(
  meal: CrewMeal | undefined,
  menu: readonly EventDish[],
  guests: Guests,
  { course, called }: { readonly course: string; readonly called: (dish: string) => string },
): EventDish[] {
  const counts = crewCounts(menu);
  const people = guests.staff + (counts.vendors === undefined ? 0 : guests.vendors);
  if (!meal || meal.kind === 'none' || people === 0) return [];
  const crewDish = (recipe: EventDish['recipe'], amount: Quantity, sharedBy: bigint): EventDish => ({
    course,
    name: called(recipe.name),
    recipe,
    perGuest: { amount, guests: sharedBy },
    counts,
    overage: new Fraction(0n),
    chosenBy: undefined,
    extra: true,
  });
  if (meal.kind === 'dishes') return meal.dishes.map(({ recipe, each }) => crewDish(recipe, each, 1n));
  const shared = menu.filter(
    ({ counts, drink, extra, others, insteadOf }) =>
      counts.staff === undefined && !drink && !extra && others === undefined && !insteadOf,
  );
  return shared.flatMap((dish): EventDish[] => {
    const { amount, guests: sharedBy } = dish.perGuest;
    const one = crewDish(dish.recipe, timesQuantity(amount, meal.share), sharedBy);
    const named = { ...one, name: called(dish.name) };
    if (dish.chosenBy === undefined) return [named];
    const mains = shared.filter(({ course, chosenBy }) => course === dish.course && chosenBy !== undefined);
    const taken = shareOut(
      people,
      mains.map(({ chosenBy }) => chosenBy ?? 0),
    )[mains.indexOf(dish)];
    return taken ? [{ ...named, chosenBy: taken }] : [];
  });
}

/** Whom a crew dish counts: those who work for the kitchen, and vendors whom the menu leaves out. */
function crewCounts(menu: readonly EventDish[]): Counts {
  const fed = menu.some(({ counts, extra }) => !extra && counts.vendors !== undefined);
  return fed ? { staff: '1' } : { vendors: '1', staff: '1' };
}
