import type { Book } from '../../book/book.ts';
import { KITCHENS_CREW_MEAL } from '../../book/item.ts';
import type { Recipe } from '../../engine/food/recipe.ts';
import type { Quantity } from '../../engine/measure/quantity.ts';
import type { CrewMeal } from '../../engine/menu/crew-meal.ts';
import type { Proposal } from '../../engine/menu/proposal.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { crewDishesOf } from '../../engine/plan/crew-dishes.ts';
import type { EventDish } from '../../engine/plan/event-input.ts';
import type { Guests } from '../../engine/quote/counts.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import { wordsIn } from '../../words/words-in.ts';
import { servedRecipe } from './recipes.ts';

/** What the crew of a proposal's event eats; undefined where neither it nor the kitchen says. */
export function crewMealOf(
  { kitchen }: Pick<Book, 'kitchen'>,
  proposal: Proposal | undefined,
): CrewMeal | undefined {
  return proposal?.crewMeal ?? kitchen.crewMeal;
}

/**
 * The dishes of an event's crew: the kitchen's own, in no offer and on no client's page. Fails where the event goes by
 * what kitchen.yaml says and that is held back.
 */
export function crewDishes(
  book: Book,
  event: string,
  menu: readonly EventDish[],
  guests: Guests,
  substitutions: readonly SubstitutionFact[],
): Parsed<EventDish[]> {
  const proposal = book.proposals.get(event);
  const reason = proposal?.crewMeal ? undefined : book.held.get(KITCHENS_CREW_MEAL);
  if (reason && guests.staff > 0)
    return notParsed(
      `what the crew eats can’t be known: ${reason}`,
      'fix what `check` reports about “crew meal” in kitchen.yaml',
    );
  const meal = crewMealOf(book, proposal);
  const cooked = meal?.kind === 'dishes' ? withSwaps(book, meal, substitutions) : parsed(meal);
  if (!cooked.ok) return cooked;
  const say = wordsIn(book.kitchen.locale);
  const words = {
    course: say('lists.crew-meal'),
    called: (dish: string) => say('lists.crew-dish', { dish }),
  };
  return parsed(crewDishesOf(cooked.value, menu, guests, words));
}

/** Dishes of the crew's own with the foods that the event takes instead of others, so that one recipe is cooked one way. */
function withSwaps(
  book: Book,
  { dishes }: Extract<CrewMeal, { kind: 'dishes' }>,
  substitutions: readonly SubstitutionFact[],
): Parsed<CrewMeal> {
  const foods = substitutions.filter(({ what }) => what === 'ingredient');
  const swapped: { recipe: Recipe; each: Quantity }[] = [];
  for (const { recipe, each } of dishes) {
    const served = servedRecipe(book, recipe.id, recipe.name, foods);
    if (!served.ok) return served;
    swapped.push({ recipe: served.value.recipe, each });
  }
  return parsed({ kind: 'dishes', dishes: swapped });
}
