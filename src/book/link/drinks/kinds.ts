import Fraction from 'fraction.js';
import { type Drink, mayHoldAlcohol } from '../../../engine/drinks/drink.ts';
import { convertFinishedFood } from '../../../engine/food/finished-food.ts';
import type { Recipe } from '../../../engine/food/recipe.ts';
import { parseQuantity } from '../../../engine/measure/parse-quantity.ts';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import type { Quantity } from '../../../engine/measure/quantity.ts';
import { unitKind } from '../../../engine/measure/units.ts';
import { looksLikeRisk, parseRisk } from '../../../engine/odds/risk.ts';
import type { Parsed } from '../../../engine/parsed.ts';
import type { DrinksText } from '../../../schema/drinks.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

/** A kind of drink before it is known how much of it is taken. */
export interface LinkedKind {
  readonly recipe: Recipe;
  readonly drink: Omit<Drink, 'taken'>;
  readonly overage: Fraction | undefined;
  /** The chosen risk that it runs short, one event in so many; undefined where its overage decides. */
  readonly shortOneIn: number | undefined;
}

/** One drink where nothing is stated: common practice, no source. */
export const USUAL_GLASS: Quantity = { amount: new Fraction(8n), unit: 'fl oz' };

/** The kinds of drinks, each with its recipe and how it is served; those with an error are left out. */
export function linkKinds(
  reading: Reading,
  { kinds }: DrinksText,
  recipes: ReadonlyMap<string, Recipe>,
): LinkedKind[] {
  return Object.entries(kinds).flatMap(([id, text]): LinkedKind[] => {
    const path = ['drinks', 'kinds', id];
    const recipe = lookUp(reading, 'recipe', id, recipes, path, 'key');
    const risk = text.overage !== undefined && looksLikeRisk(text.overage);
    const extra = <T>(grammar: (words: string) => Parsed<T>) =>
      reading.understand([...path, 'overage'], text.overage ?? '', grammar);
    const overage = text.overage === undefined || risk ? undefined : extra(parseShare);
    const shortOneIn = risk ? extra(parseRisk) : undefined;
    if (!recipe) return [];
    const glass =
      text.glass === undefined
        ? usualGlass(recipe)
        : reading.understand([...path, 'glass'], text.glass, parseQuantity);
    if (!glass) return [];
    if (!convertFinishedFood(recipe, glass, recipe.makes[0].unit)) {
      const what = `“${id}” is poured by the ${glass.unit}, but its recipe makes ${recipe.makes[0].unit}`;
      const wayOut = `write “glass” in ${recipe.makes[0].unit}, or add to the recipe’s “makes” what a batch is in ${glass.unit}`;
      reading.say('unit-not-made', text.glass === undefined ? path : [...path, 'glass'], what, wayOut);
    }
    const place = text.ice ?? 'none';
    const drink = {
      glass,
      iceInGlass: place.includes('glass'),
      iceInTub: place.includes('tub'),
      ...(text.in !== undefined && { servedIn: text.in }),
      alcohol: mayHoldAlcohol(recipe),
    };
    return [{ recipe, drink, overage, shortOneIn }];
  });
}

/** One of what is made by the piece, a bottle or a can; else a glass. */
function usualGlass({ makes: [{ unit }] }: Recipe): Quantity {
  return unitKind(unit) === 'count' ? { amount: new Fraction(1n), unit } : USUAL_GLASS;
}
