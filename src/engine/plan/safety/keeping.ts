import type { Day } from '../../calendar/day.ts';
import { daysBeforeText } from '../../calendar/offset.ts';
import type { Recipe } from '../../food/recipe.ts';
import { dateMark } from '../../safety/date-mark.ts';
import type { PlanFinding } from '../event-plan.ts';

/**
 * Where the recipes of a plan do not fit in time: food whose date mark has run out before it is served, and a
 * part that is finished on a later day than what it goes into. `served` are the ids of the dishes' recipes;
 * `mostDaysCold` is the food code's.
 */
export function keepingFindings(
  recipes: readonly Recipe[],
  served: ReadonlySet<string>,
  date: Day,
  mostDaysCold: number,
): PlanFinding[] {
  return recipes.flatMap((recipe) => [
    ...(served.has(recipe.id) ? outdated(recipe, date, mostDaysCold) : []),
    ...recipe.lines.flatMap(({ item }) =>
      item.kind === 'recipe' ? finishedTooLate(item.recipe, recipe) : [],
    ),
  ]);
}

function outdated(recipe: Recipe, date: Day, mostDaysCold: number): PlanFinding[] {
  const { madeOn, atTheLatest } = dateMark(recipe, date, mostDaysCold);
  if (atTheLatest === undefined || atTheLatest >= date) return [];
  return [
    {
      about: recipe.id,
      what: `${recipe.name}, started on ${madeOn}, must be used by ${atTheLatest} but is served on ${date}; the day it or any part of it is started counts as day 1`,
      wayOut:
        'start it later or freeze it; the local food code and a licensed food-safety manager decide how long it may be kept',
    },
  ];
}

function finishedTooLate(part: Recipe, user: Recipe): PlanFinding[] {
  const [partLast, userLast] = [lastStep(part), lastStep(user)];
  if (partLast >= userLast) return [];
  return [
    {
      about: part.id,
      what: `${part.name} is finished ${daysBeforeText(partLast)}, after ${user.name}, which it goes into (${daysBeforeText(userLast)})`,
      wayOut: `do its last step ${daysBeforeText(userLast)} or earlier`,
    },
  ];
}

/** Whole days before the event on which a recipe's last step is done; 0 for a recipe without steps. */
function lastStep(recipe: Recipe): number {
  return recipe.steps.length === 0 ? 0 : Math.min(...recipe.steps.map(({ when }) => when.daysBefore));
}
