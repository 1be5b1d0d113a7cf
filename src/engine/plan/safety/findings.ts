import type { Recipe } from '../../food/recipe.ts';
import type { Kitchen } from '../../kitchen/kitchen.ts';
import { scaleOf } from '../../measure/temperature.ts';
import { recipeSafety } from '../../safety/recipe-safety.ts';
import { type TimeAway, timeOut } from '../../safety/time-without-control.ts';
import type { PlanFinding } from '../event-plan.ts';

const NOTHING_SAID: TimeAway = { travel: undefined, setUp: undefined, service: undefined };

/**
 * What the kitchen's food code asks of what is cooked for an event: of each recipe, and of the dishes that stand
 * neither hot nor cold until the end of service. `served` are the ids of the dishes' recipes.
 */
export function safetyFindings(
  recipes: readonly Recipe[],
  served: ReadonlySet<string>,
  away: TimeAway | undefined,
  { measures, foodSafety: rules, containers }: Pick<Kitchen, 'measures' | 'foodSafety' | 'containers'>,
): PlanFinding[] {
  const scale = scaleOf(measures);
  return recipes.flatMap((recipe) => {
    const called = recipe.name;
    const isServed = served.has(recipe.id);
    // Where all of its time is stated, the clock tells when it has to be thrown away, and whether that is too early.
    const stands =
      isServed && !isStated(away) ? timeOut(recipe, away ?? NOTHING_SAID, rules, scale, called) : undefined;
    const found = recipeSafety(recipe, { rules, scale, called, containers, served: isServed });
    return [...found, ...(stands ? [stands] : [])].map(({ what, wayOut }) => ({
      about: recipe.id,
      what,
      wayOut,
    }));
  });
}

function isStated(away: TimeAway | undefined): boolean {
  return away?.travel !== undefined && away.setUp !== undefined && away.service !== undefined;
}
