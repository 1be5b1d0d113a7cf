import Fraction from 'fraction.js';
import type { Explosion, IngredientUse } from '../../food/explode.ts';
import type { Ingredient } from '../../food/ingredient.ts';
import type { Recipe } from '../../food/recipe.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { meltOf } from './drinks-plan.ts';
import type { EventDrinks } from './event-drinks.ts';
import { type PlannedDrink, pounds } from './planned-drink.ts';

/**
 * What recipes need of each food, and on top of it the ice of the drinks and the plain water, each used by the drink that
 * takes it. The share for melting is on every drink's ice.
 */
export function withDrinkSupplies(
  ingredients: Explosion['ingredients'],
  drinks: readonly PlannedDrink[],
  setting: EventDrinks | undefined,
): Explosion['ingredients'] {
  if (!setting || drinks.length === 0) return ingredients;
  const all = new Map(ingredients);
  const add = (ingredient: Ingredient | undefined, drink: PlannedDrink, amount: Quantity) => {
    if (!ingredient || amount.amount.n === 0n) return;
    const known = all.get(ingredient.id);
    const use = useOf(ingredient, drink.dish?.recipe ?? poured(setting.water ?? ingredient), amount);
    all.set(ingredient.id, { ingredient, uses: [...(known?.uses ?? []), use] });
  };
  for (const drink of drinks) {
    const ice = drink.iceInGlasses.add(drink.iceInTubs).mul(meltOf(setting).add(1n));
    add(setting.ice, drink, pounds(ice));
    if (!drink.dish) add(setting.water, drink, drink.carried);
  }
  return all;
}

function useOf(ingredient: Ingredient, recipe: Recipe, amount: Quantity): IngredientUse {
  return {
    recipe,
    line: {
      item: { kind: 'ingredient', ingredient },
      preparation: null,
      asPurchased: true,
      amount,
      note: undefined,
    },
    amount,
    yield: { share: new Fraction(1n), basis: 'as purchased' },
    asPurchased: amount,
  };
}

/** Plain water is made of nothing: it is poured as it comes, and no recipe of the kitchen's. */
function poured({ id, name }: Ingredient): Recipe {
  return {
    id,
    name,
    makes: [{ amount: new Fraction(1n), unit: 'gal' }],
    batches: 'exact',
    lines: [],
    steps: [],
    keepsDays: undefined,
    hold: 'cold',
    reheat: false,
    pack: {},
    finish: undefined,
    containsRaw: false,
  };
}
