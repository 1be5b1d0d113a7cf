import type { AllergenGroup } from '../../engine/food/allergen.ts';
import { allergensKnown, leftOutAllergens } from '../../engine/food/allergens-known.ts';
import { ingredientsOf } from '../../engine/food/walk.ts';
import type { Dish } from '../../engine/menu/package.ts';
import { notParsed, type Parsed } from '../../engine/parsed.ts';

interface UnknownFood {
  readonly ingredient: string;
  /** What its `contains` leaves out although it comes from it; empty where it has no `contains`. */
  readonly leftOut: readonly AllergenGroup[];
  /** Names of the dishes that hold it. */
  readonly dishes: Set<string>;
}

/**
 * The refusal to promise dishes with an ingredient whose allergens are not known: none are stated, or they contradict
 * what it comes from. Undefined where all are known.
 */
export function unknownAllergens(dishes: readonly Pick<Dish, 'recipe'>[]): Parsed<never> | undefined {
  const foods = unknownFoods(dishes);
  const missing = foods.filter(({ leftOut }) => leftOut.length === 0).map(foodText);
  const wrong = foods.flatMap((food) =>
    food.leftOut.map(
      (origin) => `${foodText(food)} comes from ${origin}, but its \`contains\` does not list it`,
    ),
  );
  if (missing.length === 0 && wrong.length === 0) return undefined;
  return notParsed(
    [
      ...(missing.length > 0 ? [`the allergens are not stated for ${missing.join('; ')}`] : []),
      ...wrong,
    ].join('; '),
    [
      ...(missing.length > 0 ? ['fill in `contains` for each, with `none` where there are none'] : []),
      ...(wrong.length > 0 ? ['read the label and list in `contains` every allergen that `from` names'] : []),
    ].join('; '),
  );
}

function unknownFoods(dishes: readonly Pick<Dish, 'recipe'>[]): UnknownFood[] {
  const found = new Map<string, UnknownFood>();
  for (const { recipe } of dishes)
    for (const ingredient of ingredientsOf(recipe)) {
      if (allergensKnown(ingredient)) continue;
      const { id } = ingredient;
      const food = found.get(id) ?? {
        ingredient: id,
        leftOut: leftOutAllergens(ingredient),
        dishes: new Set(),
      };
      food.dishes.add(recipe.name);
      found.set(id, food);
    }
  return [...found.values()].sort((a, b) => (a.ingredient < b.ingredient ? -1 : 1));
}

function foodText({ ingredient, dishes }: UnknownFood): string {
  return `${ingredient} (in ${[...dishes].join(', ')})`;
}
