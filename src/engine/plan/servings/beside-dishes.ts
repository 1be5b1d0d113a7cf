import { allergensOf } from '../../food/allergens-of.ts';
import { dietsOf } from '../../food/diets-of.ts';
import { convertFinishedFood } from '../../food/finished-food.ts';
import type { Recipe, RecipeLine } from '../../food/recipe.ts';
import type { Container } from '../../kitchen/container.ts';
import { addQuantities, type Quantity, timesQuantity } from '../../measure/quantity.ts';
import { several, statement } from '../../text/statement.ts';
import { containersFor } from '../containers/containers.ts';
import type { PlannedDish, PlannedRecipe } from '../event-plan.ts';

/** A part and the dish it goes with; the amount is what the dish's batches take of it. */
interface Part {
  readonly recipe: Recipe;
  readonly with: PlannedDish;
  readonly amount: Quantity;
}

/**
 * What travels and is given out beside dishes instead of in them, as their recipes say: a sauce in its jugs. Each is
 * planned as a dish of its own would be, once over all dishes that take it, in its own containers. A portion made
 * separately for a guest's need has its own in its sealed or own container.
 */
export function besideDishes(
  dishes: readonly PlannedDish[],
  recipes: readonly PlannedRecipe[],
  lines: number,
  containers: ReadonlyMap<string, Container>,
): PlannedDish[] {
  const parts = dishes.flatMap((dish) => (dish.dish.portions?.apart ? [] : partsOf(dish, recipes)));
  return [...Map.groupBy(parts, ({ recipe }) => recipe.id).values()].map((same) =>
    plannedPart(same as [Part, ...Part[]], lines, containers),
  );
}

function partsOf(planned: PlannedDish, recipes: readonly PlannedRecipe[]): Part[] {
  const { recipe } = planned.dish;
  const cooked = recipes.find((each) => each.recipe.id === recipe.id);
  return (recipe.beside ?? []).flatMap((id): Part[] =>
    recipe.lines.flatMap((line): Part[] => {
      if (line.item.kind !== 'recipe' || line.item.recipe.id !== id) return [];
      const amount = amountWith(planned, line, line.item.recipe, cooked);
      return amount ? [{ recipe: line.item.recipe, with: planned, amount }] : [];
    }),
  );
}

/** What the dish's share of its batches takes of a part, in the unit the part is made in. */
function amountWith(
  { needAsMade, dish }: PlannedDish,
  line: RecipeLine,
  part: Recipe,
  cooked: PlannedRecipe | undefined,
): Quantity | undefined {
  if (!cooked || cooked.need.amount.n === 0n) return undefined;
  const [batch] = dish.recipe.makes;
  const share = needAsMade.amount.div(cooked.need.amount);
  const batches = cooked.makes.amount.mul(share).div(batch.amount);
  return convertFinishedFood(part, timesQuantity(line.amount, batches), part.makes[0].unit);
}

function plannedPart(
  parts: readonly [Part, ...Part[]],
  lines: number,
  containers: ReadonlyMap<string, Container>,
): PlannedDish {
  const [first] = parts;
  const { recipe } = first;
  const need = parts.slice(1).reduce((sum, { amount }) => addQuantities(sum, amount), first.amount);
  const { contains, mayContain, unsaid } = allergensOf(recipe);
  const { portions: _, ...dish } = first.with.dish;
  return {
    dish: { ...dish, recipe, name: recipe.name },
    counted: first.with.counted,
    base: need,
    need,
    needAsMade: need,
    containers: containersFor(recipe, need, lines, containers).containers,
    contains,
    mayContain,
    unsaid: unsaid.map((path) => path.at(-1) as string),
    diets: dietsOf(recipe),
    why: [
      statement('why.served-with', {
        dishes: several(
          'and',
          parts.map((part) => part.with.dish.name),
        ),
      }),
    ],
  };
}
