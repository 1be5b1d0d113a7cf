import type { Recipe, RecipeStep } from '../food/recipe.ts';
import { degreesIn, type HeldTemperature } from '../measure/temperature.ts';

/** A step that says to what temperature the food is brought. */
export interface HeatStep {
  readonly step: RecipeStep;
  /** Its position among the recipe's steps, from 0. */
  readonly index: number;
  readonly cookTo: HeldTemperature;
}

/** The steps of a recipe that say a temperature, by what they are for. */
export interface HeatSteps {
  /** Those that cook, in their order. */
  readonly cooking: readonly HeatStep[];
  /** The one that heats again what was cooked before; undefined where none does. */
  readonly reheating: HeatStep | undefined;
  /** Whether the food is cooked ahead, cooled and has to be heated again. */
  readonly needsReheating: boolean;
}

/**
 * Tells cooking from heating again. A recipe is heated again where it says so, and where it is held hot although its
 * last step with a temperature is on an earlier day. The last such step is then taken for the heating again, if
 * there is an earlier one, or if `cooksRaw` is false: plants may have been cooked in a step without a temperature.
 * A lone one on the day itself does both where work was done on a day before: raw fish is poached in a broth made
 * ahead.
 */
export function heatSteps(recipe: Recipe, cooksRaw: boolean): HeatSteps {
  const heated = recipe.steps.flatMap((step, index): HeatStep[] =>
    step.cookTo ? [{ step, index, cookTo: step.cookTo }] : [],
  );
  const last = heated.at(-1);
  const leftOvernight = recipe.hold === 'hot' && last !== undefined && last.step.when.daysBefore > 0;
  if (leftOvernight) return { cooking: heated, reheating: undefined, needsReheating: true };
  if (!recipe.reheat) return { cooking: heated, reheating: undefined, needsReheating: false };
  if (heated.length > 1 || !cooksRaw)
    return { cooking: heated.slice(0, -1), reheating: last, needsReheating: true };
  const doesBoth = last?.step.when.daysBefore === 0 && recipe.steps.some(({ when }) => when.daysBefore > 0);
  return { cooking: heated, reheating: doesBoth ? last : undefined, needsReheating: true };
}

/** The step that gets hottest, the first of equals; undefined of none. */
export function hottestOf(steps: readonly HeatStep[]): HeatStep | undefined {
  const [hottest] = [...steps].sort((a, b) => degreesIn('F', b.cookTo).compare(degreesIn('F', a.cookTo)));
  return hottest;
}
