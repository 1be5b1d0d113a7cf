import { addDays, type Day } from '../../calendar/day.ts';
import { isAtPlace } from '../../food/recipe.ts';
import type { PlannedDay, PlannedRecipe, PlannedTask } from '../event-plan.ts';
import { handsOnMinutes } from './hands-on.ts';

/**
 * Every step of every recipe cooked, by the day it is done, the earliest day first. Within a day what is made separately
 * for guests with a need, and what goes into it (`first`, by id), comes before all else, while benches and tools are
 * clean; parts come before what they go into, steps in their order, and what is done at serving last. Hands-on
 * time that counts for a batch follows the batches cooked.
 */
export function planDays(
  recipes: readonly PlannedRecipe[],
  date: Day,
  first: ReadonlySet<string> = new Set(),
): PlannedDay[] {
  const byDay = new Map<number, PlannedTask[]>();
  const ordered = [
    ...recipes.filter(({ recipe }) => first.has(recipe.id)),
    ...recipes.filter(({ recipe }) => !first.has(recipe.id)),
  ];
  for (const { recipe, batches } of ordered) {
    if (batches.n === 0n) continue;
    for (const [index, step] of recipe.steps.entries()) {
      const tasks = byDay.get(step.when.daysBefore) ?? [];
      const minutes = handsOnMinutes(step, batches);
      tasks.push({ recipe, step, number: index + 1, batches, handsOnMinutes: minutes });
      byDay.set(step.when.daysBefore, tasks);
    }
  }
  return [...byDay]
    .sort(([a], [b]) => b - a)
    .map(([daysBefore, tasks]) => ({
      date: addDays(date, -daysBefore),
      daysBefore,
      tasks: [
        ...tasks.filter(({ step }) => !isAtPlace(step)),
        ...tasks.filter(({ step }) => isAtPlace(step)),
      ],
    }));
}
