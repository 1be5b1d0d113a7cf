import { expect, test } from 'vitest';
import { readYaml } from '../../../src/book/files/yaml-source.ts';
import { openLedger } from '../../../src/book/ledger.ts';
import { readIngredients, storeRoomTexts } from '../../../src/book/read/ingredients.ts';
import { explode, purchasedIn } from '../../../src/engine/food/explode.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import { line, recipe } from '../../unit/plan/builders.ts';

/*
 * USDA National Nutrient Database for Standard Reference, Release 28: "Lettuce, butterhead" (11250), 163 g edible in a
 * head; "Lemons, raw, without peel" (09150), 58 g edible in one; "Corn, sweet, yellow, raw" (11167), 102 g of kernels
 * in an ear. Eight pieces as bought are what so many grams made ready have to be bought as, to half a gram of the
 * rounded weight of each.
 */
test.each([
  ['butter-lettuce', 'trimmed', 'heads', 163],
  ['lemon', 'peeled', 'each', 58],
  ['corn-on-the-cob', 'cut from the cob', 'ears', 102],
])('8 of %s, %s, leave what USDA finds edible in 8 %s', (id, preparation, unit, edible) => {
  const of = readIngredients(openLedger(readYaml), storeRoomTexts(), []).get(id) as Ingredient;
  const grams = (amount: string) => {
    const dish = recipe('dish', '1 serving', [line(of, amount, preparation)]);
    const { ingredients } = explode([{ recipe: dish, need: dish.makes[0], by: 'test' }], (exact) => exact);
    const [use] = ingredients.get(id)?.uses ?? [];
    return (use && purchasedIn(use, 'g', of)?.amount.valueOf()) ?? 0;
  };
  expect(grams(`8 ${unit}`) / 8).toBeCloseTo(grams(`${8 * edible} g`) / 8, 0);
});
