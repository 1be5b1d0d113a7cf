import type { Recipe } from '../../food/recipe.ts';
import { usualChill } from '../../food/usual-chill.ts';
import type { Container } from '../../kitchen/container.ts';
import { endsOfCooling, isCooled } from '../../safety/cooling.ts';
import { heatSteps } from '../../safety/heat-steps.ts';
import type { CodeTemperature, SafetyRules } from '../../safety/limit.ts';
import { rawFoodIn } from '../../safety/raw-food.ts';
import type { GearLoad } from '../days/loads.ts';

/** How food gets cold. */
export interface Cooling {
  /** From the end of cooking to cold. */
  readonly minutes: number;
  /** What of it goes by until the code's first temperature on the way; undefined where the code has none before cold. */
  readonly first: { readonly temperature: CodeTemperature; readonly minutes: number } | undefined;
  /** The equipment that it is chilled in; left out where it cools in the cold room or over ice. */
  readonly chiller?: GearLoad;
  /** How it would cool without that; left out where that is not known. */
  readonly usual?: Cooling;
  /** Equipment that holds it, but in more loads than the code gives time for. */
  readonly tooSlow?: GearLoad;
}

/**
 * After which step of a recipe its food is cooled, by position from 0, and how: as the recipe states, else as usual for
 * what it is chilled in; not known where it is chilled in nothing. Undefined for food that is not cooked and then cooled.
 */
export function chillAfter(
  recipe: Recipe,
  containers: ReadonlyMap<string, Container>,
  rules: SafetyRules,
): { readonly index: number; readonly cooling: Cooling | undefined } | undefined {
  if (!isCooled(recipe)) return undefined;
  const { cooking } = heatSteps(recipe, rawFoodIn(recipe).length > 0);
  const last = cooking.at(-1);
  if (!last) return undefined;
  const minutes = recipe.chill ?? usualChill(recipe, containers);
  return {
    index: last.index,
    cooling: minutes === undefined ? undefined : coolingOf(minutes, rules, recipe.chillFirst),
  };
}

/**
 * Cooling that takes so many minutes. Where its first stage is not stated it is a third, rounded up, but no longer than
 * the code gives it. By Newton's law of cooling, food at 135 °F in a room at 38 °F takes 32 % of its time to 41 °F until
 * it is at 70 °F. For planning only: a thermometer shows when it is there.
 */
export function coolingOf(minutes: number, rules: SafetyRules, stated?: number): Cooling {
  const { first } = endsOfCooling(rules);
  if (!first) return { minutes, first: undefined };
  const third = Math.min(Math.ceil(minutes / 3), first.within);
  return { minutes, first: { temperature: first.temperature, minutes: Math.min(minutes, stated ?? third) } };
}
