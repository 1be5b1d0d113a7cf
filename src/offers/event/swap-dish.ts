import type { Book } from '../../book/book.ts';
import { convertFinishedFood } from '../../engine/food/finished-food.ts';
import type { Recipe } from '../../engine/food/recipe.ts';
import { parsePerGuest, perGuestText } from '../../engine/measure/per-guest.ts';
import { dishesOf } from '../../engine/menu/dishes-of.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { EventDish } from '../../engine/plan/event-input.ts';
import { type Served, type Swap, unknownItem } from './served-dishes.ts';

/**
 * Another recipe for a dish. Its per-guest amount is the one given, else the dish's own where the recipe is made in
 * that unit, else what a package states for the recipe; refused where none of them says how much.
 */
export function dishSwap(book: Book, dish: Served, to: string, amount: string | undefined): Parsed<Swap> {
  const recipe = book.recipes.get(to);
  if (!recipe) return unknownItem(book, 'recipe', to, [...book.recipes.keys()]);
  const perGuest = amountFor(book, dish, recipe, amount);
  if (!perGuest.ok) return perGuest;
  return parsed({
    swap: { what: 'dish', from: dish.id, to, perGuest: perGuest.value },
    names: { from: dish.name, to: recipe.name },
  });
}

function amountFor(book: Book, dish: Served, recipe: Recipe, amount: string | undefined): Parsed<string> {
  const makes = (perGuest: EventDish['perGuest']) =>
    convertFinishedFood(recipe, perGuest.amount, recipe.makes[0].unit) !== undefined;
  if (amount !== undefined) {
    const said = parsePerGuest(amount);
    if (!said.ok) return said;
    if (makes(said.value)) return parsed(perGuestText(said.value));
    return notParsed(
      `${recipe.name} is not made in ${said.value.amount.unit}`,
      `give its amount in ${recipe.makes.map(({ unit }) => unit).join(' or ')}`,
    );
  }
  if (makes(dish.perGuest)) return parsed(perGuestText(dish.perGuest));
  const offered = [...book.packages.values()].flatMap(dishesOf).find((each) => each.recipe.id === recipe.id);
  if (offered) return parsed(perGuestText(offered.perGuest));
  return notParsed(
    `how much ${recipe.name} each guest gets is not stated`,
    `add --amount, as in --amount "1 ${recipe.makes[0].unit} per guest"`,
  );
}
