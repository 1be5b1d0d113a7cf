import { convertFinishedFood } from '../../../engine/food/finished-food.ts';
import type { Recipe } from '../../../engine/food/recipe.ts';
import { parseQuantity } from '../../../engine/measure/parse-quantity.ts';
import type { CrewMeal } from '../../../engine/menu/crew-meal.ts';
import { parseCrewMeal } from '../../../engine/menu/parse-crew-meal.ts';
import type { CrewMealText } from '../../../schema/crew-meal.ts';
import type { Path } from '../../files/place-of.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

/** What the crew eats, as kitchen.yaml or a proposal writes it at `path`; undefined with an error, which has its finding. */
export function linkCrewMeal(
  reading: Reading,
  path: Path,
  { eats, dishes = {} }: CrewMealText,
  recipes: ReadonlyMap<string, Recipe>,
): CrewMeal | undefined {
  if (eats !== undefined) return reading.understand(path, eats, parseCrewMeal);
  const linked = Object.entries(dishes).map(([id, text]) => {
    const recipe = lookUp(reading, 'recipe', id, recipes, [...path, id], 'key');
    const each = reading.understand([...path, id], text, parseQuantity);
    if (!recipe || !each) return undefined;
    if (!convertFinishedFood(recipe, each, recipe.makes[0].unit)) {
      const units = [...new Set(recipe.makes.map(({ unit }) => unit))].join(', ');
      const what = `“${id}” is given to the crew by the ${each.unit}, but its recipe makes ${units}`;
      const wayOut = `write the amount in ${units}, or add to the recipe’s “makes” what a batch is in ${each.unit}`;
      reading.say('unit-not-made', [...path, id], what, wayOut);
    }
    return { recipe, each };
  });
  const whole = linked.filter((dish) => dish !== undefined);
  return whole.length < linked.length ? undefined : { kind: 'dishes', dishes: whole };
}
