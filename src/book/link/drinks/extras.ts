import type { DrinksTaken, Water } from '../../../engine/drinks/drink.ts';
import { countedPortion, type DrinkPortion } from '../../../engine/drinks/drink-portion.ts';
import type { DrinkShare } from '../../../engine/drinks/drink-shares.ts';
import type { Recipe } from '../../../engine/food/recipe.ts';
import { parseQuantity } from '../../../engine/measure/parse-quantity.ts';
import { unitKind } from '../../../engine/measure/units.ts';
import type { Dish } from '../../../engine/menu/package.ts';
import type { Counts } from '../../../engine/quote/counts.ts';
import type { DrinksText } from '../../../schema/drinks.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';
import { type LinkedKind, USUAL_GLASS } from './kinds.ts';
import { portionOf } from './portions.ts';

/** What is served with drinks: one dish for each recipe, the amounts of all drinks that take it added up. */
export function linkExtras(
  reading: Reading,
  text: DrinksText,
  kinds: readonly LinkedKind[],
  shares: readonly DrinkShare[],
  takes: DrinksTaken,
  { counts, recipes }: { readonly counts: Counts; readonly recipes: ReadonlyMap<string, Recipe> },
): Dish[] {
  const portions = new Map<Recipe, DrinkPortion>();
  for (const [index, kind] of kinds.entries()) {
    const { id } = kind.recipe;
    for (const [extra, words] of Object.entries(text.kinds[id]?.with ?? {})) {
      const path = ['drinks', 'kinds', id, 'with', extra];
      const recipe = lookUp(reading, 'recipe', extra, recipes, path, 'key');
      const amount = reading.understand(path, words, parseQuantity);
      if (!recipe || !amount) continue;
      const portion = portionOf(amount, takes, shares[index] as DrinkShare, !kind.drink.alcohol);
      const known = portions.get(recipe);
      if (known && known.unit !== portion.unit) {
        const what = `“${extra}” is served with two drinks, by the ${known.unit} and by the ${portion.unit}`;
        reading.say('unit-not-made', path, what, `write both amounts in ${known.unit}`);
      } else portions.set(recipe, known ? bothOf(known, portion) : portion);
    }
  }
  return [...portions].flatMap(([recipe, portion]): Dish[] => {
    const counted = countedPortion(portion, counts);
    return counted ? [{ recipe, ...counted, overage: undefined, role: 'drink' }] : [];
  });
}

function bothOf(one: DrinkPortion, other: DrinkPortion): DrinkPortion {
  return {
    unit: one.unit,
    adult: one.adult.add(other.adult),
    child: one.child.add(other.child),
    forWorkers: one.forWorkers || other.forWorkers,
  };
}

/** Plain water with its share of the drinks. */
export function linkWater(
  reading: Reading,
  { water }: DrinksText,
  takes: DrinksTaken,
  share: DrinkShare | undefined,
  counts: Counts,
): Water | undefined {
  if (!water || !share) return undefined;
  const glass =
    water.glass === undefined
      ? USUAL_GLASS
      : reading.understand(['drinks', 'water', 'glass'], water.glass, parseQuantity);
  if (!glass) return undefined;
  if (unitKind(glass.unit) !== 'volume') {
    const what = `a glass of water is measured by volume, not by the ${glass.unit}`;
    reading.say('not-understood', ['drinks', 'water', 'glass'], what, 'write for example “8 fl oz”');
    return undefined;
  }
  const counted = countedPortion(portionOf(glass, takes, share, true), counts);
  const place = water.ice ?? 'none';
  return (
    counted && {
      ...counted,
      glass,
      iceInGlass: place.includes('glass'),
      iceInTub: place.includes('tub'),
      ...(water.in !== undefined && { servedIn: water.in }),
    }
  );
}
