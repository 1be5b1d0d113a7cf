import Fraction from 'fraction.js';
import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { PACK_STAGES } from '../book/link/prices/pack-rules.ts';
import { convertFinishedFood, finishedFoodConversions } from '../engine/food/finished-food.ts';
import type { Recipe } from '../engine/food/recipe.ts';
import { trimUnstated } from '../engine/food/trim.ts';
import { yieldOf } from '../engine/food/yield.ts';
import { contradictions, conversionText } from '../engine/measure/conversions.ts';
import { writtenText } from '../engine/measure/quantity.ts';

/** Two statements of what a batch makes may differ by rounding. */
const TOLERANCE = new Fraction(1n, 50n);

/** What a recipe says that a cook would ask about. */
export function checkRecipes(book: Book): Finding[] {
  return [...book.recipes.values()].flatMap((recipe) => [
    ...missingYields(book, recipe),
    ...unstatedTrim(book, recipe),
    ...disagreeingBatch(book, recipe),
    ...oddContainers(book, recipe),
  ]);
}

function missingYields(book: Book, recipe: Recipe): Finding[] {
  return recipe.lines.flatMap((each, line) => {
    const { item, preparation } = each;
    if (item.kind !== 'ingredient') return [];
    const { id, yields } = item.ingredient;
    if (yieldOf(item.ingredient, each).basis !== 'unsaid') return [];
    const known = [...yields.keys()].map((each) => `“${each}”`).join(', ');
    const what = `“${id}” states a yield for ${known} but none for ${preparation ? `“${preparation}”` : 'this line'}, so nothing extra is bought for trim`;
    const wayOut = `use one of those words, or give ${id} a “yield:” for any other prep`;
    return [
      findingAt(book, 'yield-unsaid', `recipe/${recipe.id}`, ['ingredients', line], what, wayOut, 'key'),
    ];
  });
}

function unstatedTrim(book: Book, recipe: Recipe): Finding[] {
  return recipe.lines.flatMap((each, line) => {
    const { item, preparation, amount } = each;
    if (item.kind !== 'ingredient' || !trimUnstated(item.ingredient, each)) return [];
    const { id } = item.ingredient;
    const written = writtenText(amount);
    const what = `“${id}” states no yield, so ${written} ${preparation ?? 'ready to cook'} is bought as ${written}, with nothing extra for trim`;
    const wayOut = `write “yield:” for ${id}, 100 % if nothing comes off`;
    return [
      findingAt(book, 'trim-not-stated', `recipe/${recipe.id}`, ['ingredients', line], what, wayOut, 'key'),
    ];
  });
}

function disagreeingBatch(book: Book, recipe: Recipe): Finding[] {
  const conversions = finishedFoodConversions(recipe);
  return contradictions(conversions, TOLERANCE).map(({ conversion }) => {
    const path = ['makes', conversions.indexOf(conversion) + 1];
    const what = `“${conversionText(conversion)}” does not match the other amounts that a batch makes`;
    const wayOut = 'weigh and measure a batch again, and keep the right one';
    return findingAt(book, 'conversions-disagree', `recipe/${recipe.id}`, path, what, wayOut);
  });
}

function oddContainers(book: Book, recipe: Recipe): Finding[] {
  const item = `recipe/${recipe.id}` as const;
  return PACK_STAGES.flatMap((stage) => {
    const rule = recipe.pack[stage];
    const container = rule && book.kitchen.containers.get(rule.container);
    if (!rule || !container) return [];
    const findings: Finding[] = [];
    const measured = rule.each ?? container.holds;
    if (!convertFinishedFood(recipe, measured, recipe.makes[0].unit)) {
      const what = `“${container.id}” is measured by the ${measured.unit}, but “${recipe.id}” does not state what it makes in that unit`;
      const wayOut = `add to “makes” what a batch is in ${measured.unit}, or write how much goes in each, such as “20 servings per ${container.id}”`;
      findings.push(findingAt(book, 'container-not-reached', item, ['pack', stage], what, wayOut));
    }
    if (stage === 'serve' && recipe.hold === 'hot' && container.for === 'cold') {
      const what = `“${container.id}” is for cold food, but “${recipe.id}” is served hot`;
      findings.push(
        findingAt(book, 'container-temperature', item, ['pack', stage], what, 'name another container'),
      );
    }
    return findings;
  });
}
