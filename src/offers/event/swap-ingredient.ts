import type { Book } from '../../book/book.ts';
import { nearest } from '../../book/findings/nearest.ts';
import { addDays, type Day } from '../../engine/calendar/day.ts';
import { convertFinishedFood } from '../../engine/food/finished-food.ts';
import type { LineItem, Recipe } from '../../engine/food/recipe.ts';
import { callsFor, itemName, linesCallingFor } from '../../engine/food/swap-item.ts';
import { convert } from '../../engine/measure/conversions.ts';
import type { Quantity } from '../../engine/measure/quantity.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { packsOn } from '../../engine/purchase/packs-on.ts';
import type { CurrentEvent } from './current-event.ts';
import { itemCalled, soundSwap } from './recipes.ts';
import { type Served, type Swap, unknownItem } from './served-dishes.ts';

/**
 * Another ingredient, or another recipe where dishes are made with one, in every line of the event that calls for it.
 * Refused where no line does, a line's unit leads to none the new food is sold or made in, or a recipe would contain
 * itself.
 */
export function ingredientSwap(
  book: Book,
  { status }: CurrentEvent,
  served: readonly Served[],
  { from, to, amount }: { readonly from: string; readonly to: string; readonly amount: string | undefined },
): Parsed<Swap> {
  const recipes = served.flatMap(({ recipe }) => recipe ?? []);
  const users = recipes.filter((recipe) => callsFor(recipe, from));
  const old = users.flatMap((recipe) => linesCallingFor(recipe, from)).at(0)?.line.item;
  if (!old) {
    const inUse = recipes.flatMap((recipe) => [recipe.id, ...itemsIn(recipe)]);
    const close = nearest(from, inUse);
    return notParsed(
      `this event has no dish or ingredient ${from}`,
      close ? `did you mean ${close}?` : 'run `plan` to see its dishes and ingredients',
    );
  }
  if (amount !== undefined)
    return notParsed('--amount is only for a dish', 'an ingredient keeps the amount of each recipe line');
  const instead = itemCalled(book, to);
  if (!instead)
    return unknownItem(book, 'ingredient', to, [...book.ingredients.keys(), ...book.recipes.keys()]);
  const lines = users.flatMap((recipe) => linesCallingFor(recipe, from));
  for (const { recipe, line } of lines) {
    const reached = reaches(book, instead, line.amount, status.date ?? status.lastDate);
    if (!reached.ok)
      return notParsed(
        `${recipe.name} calls for ${from} in ${line.amount.unit}, ${reached.what}`,
        reached.wayOut,
      );
  }
  for (const recipe of users) {
    const swapped = soundSwap(recipe, from, instead);
    if (!swapped.ok) return swapped;
  }
  return parsed({
    swap: { what: 'ingredient', from, to },
    names: { from: itemName(old), to: itemName(instead) },
  });
}

/** Whether an amount of the food taken instead can be bought, or cooked, in a unit the line's unit leads to. */
function reaches(book: Book, item: LineItem, amount: Quantity, date: Day): Parsed<true> {
  if (item.kind === 'recipe') {
    const { makes, name, id } = item.recipe;
    return convertFinishedFood(item.recipe, amount, makes[0].unit)
      ? parsed(true)
      : notParsed(
          `and ${name} is not made in that`,
          `add to recipes/${id}.mdx what a batch makes in ${amount.unit}`,
        );
  }
  const { id, name, conversions } = item.ingredient;
  const packs = packsOn(book.prices.get(id) ?? [], addDays(date, -book.kitchen.buying));
  if (packs.length === 0 || packs.some(({ contents }) => convert(amount, contents.unit, conversions)))
    return parsed(true);
  const sold = [...new Set(packs.map(({ contents }) => contents.unit))];
  return notParsed(
    `and ${name} is sold by the ${sold.join(' or ')}, with no conversion to that`,
    `add a conversion to ${id}, such as 1 ${amount.unit} = … ${sold[0]}`,
  );
}

function itemsIn(recipe: Recipe): string[] {
  return recipe.lines.flatMap(({ item }) =>
    item.kind === 'recipe' ? [item.recipe.id, ...itemsIn(item.recipe)] : [item.ingredient.id],
  );
}
