import { isAtPlace, type Recipe, type RecipeLine } from '../food/recipe.ts';
import { firstStepOf } from '../food/step-lines.ts';
import { heldTemperatureText } from '../measure/temperature.ts';
import { type LeavesRaw, leavesRaw, lineLeavesRaw } from './leaves-raw.ts';
import { rungMet, type SafetyRules } from './limit.ts';

/** A line that takes a part, with the recipe of the line. */
interface Taker {
  readonly line: RecipeLine;
  readonly recipe: Recipe;
}

/** From what is done with raw food for certain to what nobody states. */
const WORST_LAST = ['cooked there', 'served raw', 'not stated'] as const;

/**
 * What of a part made ahead is raw while it waits in the kitchen, and what is done with it after: `cooked there` where
 * every recipe that takes it cooks it to its limit (FDA Food Code 3-401.11), with the step's own temperature where all
 * takers state the same. Of several the worst is taken. `takersOf` names who takes a recipe, none for a dish. Undefined
 * where the part is ready to eat or cooked.
 */
export function rawAhead(
  part: Recipe,
  takersOf: (recipe: Recipe) => readonly Taker[],
  rules: SafetyRules,
): LeavesRaw | undefined {
  const raw = leavesRaw(part, rules);
  const takers = takersOf(part);
  if (!raw || raw.foods.length === 0 || takers.length === 0) return raw;
  const fates = takers.map((taker) => fateOf(raw, taker, takersOf, rules));
  const next = WORST_LAST.findLast((each) => fates.some((fate) => fate.next === each)) ?? 'not stated';
  const [first, ...others] = fates.map(({ cookTo }) => cookTo);
  const text = (each: typeof first) => each && heldTemperatureText(each);
  const same = others.every((each) => text(each) === text(first));
  return { foods: raw.foods, next, cookTo: next === 'cooked there' && same ? first : undefined };
}

function fateOf(
  { foods }: LeavesRaw,
  { line, recipe }: Taker,
  takersOf: (recipe: Recipe) => readonly Taker[],
  rules: SafetyRules,
): Pick<LeavesRaw, 'next' | 'cookTo'> {
  const after = lineLeavesRaw(line, recipe, rules);
  if (!after) {
    const cookTo = recipe.steps
      .slice(firstStepOf(line))
      .flatMap((step) => (step.cookTo && !isAtPlace(step) ? [step.cookTo] : []))
      .find((each) => foods.every(({ limit }) => rungMet(rules.limits[limit], each)));
    return { next: 'cooked there', cookTo };
  }
  return (takersOf(recipe).length > 0 && rawAhead(recipe, takersOf, rules)) || after;
}
