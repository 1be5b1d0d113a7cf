import { losesTrim } from '../../food/as-bought.ts';
import { type IngredientUse, purchasedIn } from '../../food/explode.ts';
import type { Ingredient } from '../../food/ingredient.ts';
import type { Quantity } from '../../measure/quantity.ts';
import type { PlanFinding, PlannedPurchase } from '../event-plan.ts';
import { comesTo, percent, plainAmount, unitsText } from '../figure-text.ts';

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
    const need = purchasedIn(use, unit, ingredient);
    if (need) {
      usedBy.push({
        recipe: use.recipe.id,
        need,
        // Said only when asked: most plans are made for their figures.
        get why() {
          return useWhy(use, need, ingredient);
        },
      });
    } else {
      stray.push({
        about: ingredient.id,
        what: `${use.recipe.name} needs ${plainAmount(use.amount)} of ${ingredient.name}, but there is no conversion to ${unitsText(unit)}, so the shopping list leaves it out`,
        wayOut: `add a conversion to ${ingredient.id}, such as 1 ${use.amount.unit} = … ${unit}`,
      });
    }
  }
  return { usedBy, stray };
}

function useWhy(
  { amount, yield: left, line, asPurchased, recipe }: IngredientUse,
  need: Quantity,
  { conversions }: Ingredient,
): string[] {
  const loses = !left.share.equals(1n) && losesTrim(line, need.unit, conversions);
  const made = line.preparation ? ` left when ${line.preparation}` : ' left when prepped';
  const bought = loses ? asPurchased : amount;
  return [
    `${plainAmount(amount)} in ${recipe.name}`,
    ...(loses
      ? [`${plainAmount(amount)} ÷ ${percent(left.share)}${made} ${comesTo(asPurchased)} as purchased`]
      : []),
    ...(need.unit === bought.unit ? [] : [`${plainAmount(bought)} ${comesTo(need)}`]),
  ];
}
