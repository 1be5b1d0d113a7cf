import type { IngredientUse } from '../food/explode.ts';
import type { Ingredient } from '../food/ingredient.ts';
import { convert } from '../measure/conversions.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { PlanFinding, PlannedPurchase } from './event-plan.ts';
import { comesTo, percent, plainAmount, unitsText } from './figure-text.ts';

/**
 * What each recipe line needs of a food as purchased, turned into the unit it is bought in, with its why. A use
 * that no conversion of the food turns into that unit strays: it is left out and told.
 */
export function usesIn(
  unit: string,
  ingredient: Ingredient,
  uses: readonly IngredientUse[],
): { usedBy: PlannedPurchase['usedBy'][number][]; stray: PlanFinding[] } {
  const usedBy: PlannedPurchase['usedBy'][number][] = [];
  const stray: PlanFinding[] = [];
  for (const use of uses) {
    const need = convert(use.asPurchased, unit, ingredient.conversions);
    if (need) {
      usedBy.push({
        recipe: use.recipe.id,
        need,
        // Said only when asked: most plans are made for their figures.
        get why() {
          return useWhy(use, need);
        },
      });
    } else {
      stray.push({
        about: ingredient.id,
        what: `${use.recipe.name} needs ${plainAmount(use.asPurchased)} of ${ingredient.name}, which no conversion turns into ${unitsText(unit)}; it is missing from the shopping`,
        wayOut: `write a conversion at ${ingredient.id}, as in 1 ${use.asPurchased.unit} = … ${unit}`,
      });
    }
  }
  return { usedBy, stray };
}

function useWhy({ amount, yield: left, line, asPurchased, recipe }: IngredientUse, need: Quantity): string[] {
  const kept = left.share.equals(1n) ? undefined : left.share;
  const made = line.preparation ? ` left when ${line.preparation}` : ' left when made ready';
  return [
    `${plainAmount(amount)} in ${recipe.name}`,
    ...(kept
      ? [`${plainAmount(amount)} ÷ ${percent(kept)}${made} ${comesTo(asPurchased)} as purchased`]
      : []),
    ...(need.unit === asPurchased.unit ? [] : [`${plainAmount(asPurchased)} ${comesTo(need)}`]),
  ];
}
