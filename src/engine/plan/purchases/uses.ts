import { losesTrim } from '../../food/as-bought.ts';
import { type IngredientUse, purchasedIn } from '../../food/explode.ts';
import type { Ingredient } from '../../food/ingredient.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { statement } from '../../text/statement.ts';
import type { PlanFinding, PlannedPurchase, Why } from '../event-plan.ts';
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
        what: statement('found.stray', {
          recipe: use.recipe.name,
          amount: plainAmount(use.amount),
          food: ingredient.name,
          units: unitsText(unit),
        }),
        wayOut: statement('found.add-conversion', {
          food: ingredient.id,
          from: use.amount.unit,
          to: unit,
        }),
      });
    }
  }
  return { usedBy, stray };
}

function useWhy(
  { amount, yield: left, line, asPurchased, recipe }: IngredientUse,
  need: Quantity,
  { conversions }: Ingredient,
): Why {
  const loses = !left.share.equals(1n) && losesTrim(line, need.unit, conversions);
  const bought = loses ? asPurchased : amount;
  const { preparation } = line;
  const kept = {
    amount: plainAmount(amount),
    share: percent(left.share),
    result: comesTo(asPurchased),
  };
  return [
    statement('why.in-recipe', { amount: plainAmount(amount), recipe: recipe.name }),
    ...(loses
      ? [
          preparation
            ? statement('why.yield', { ...kept, preparation })
            : statement('why.yield-prepped', kept),
        ]
      : []),
    ...(need.unit === bought.unit
      ? []
      : [statement('why.same', { amount: plainAmount(bought), result: comesTo(need) })]),
  ];
}
