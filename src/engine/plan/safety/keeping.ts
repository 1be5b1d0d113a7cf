import type { Day } from '../../calendar/day.ts';
import type { Recipe } from '../../food/recipe.ts';
import { dateMark } from '../../safety/date-mark.ts';
import { type Statement, statement } from '../../text/statement.ts';
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
      what: statement('found.outdated', {
        recipe: recipe.name,
        madeOn: { day: madeOn },
        until: { day: atTheLatest },
        date: { day: date },
      }),
      wayOut: statement('found.outdated.way'),
    },
  ];
}

function finishedTooLate(part: Recipe, user: Recipe): PlanFinding[] {
  const [partLast, userLast] = [lastStep(part), lastStep(user)];
  if (partLast >= userLast) return [];
  return [
    {
      about: part.id,
      what: statement('found.finished-late', {
        part: part.name,
        when: daysBeforeSaid(partLast),
        recipe: user.name,
        other: daysBeforeSaid(userLast),
      }),
      wayOut: statement('found.finished-late.way', { when: daysBeforeSaid(userLast) }),
    },
  ];
}

function daysBeforeSaid(days: number): Statement {
  if (days === 0) return statement('found.on-the-day');
  return statement(days > 0 ? 'found.days-before' : 'found.days-after', { n: Math.abs(days) });
}

/** Whole days before the event on which a recipe's last step is done; 0 for a recipe without steps. */
function lastStep(recipe: Recipe): number {
  return recipe.steps.length === 0 ? 0 : Math.min(...recipe.steps.map(({ when }) => when.daysBefore));
}
