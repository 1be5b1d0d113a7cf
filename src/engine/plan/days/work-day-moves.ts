import type { Day } from '../../calendar/day.ts';
import { isAtPlace, type Recipe } from '../../food/recipe.ts';
import { partsFirst } from '../../food/walk.ts';
import { dateMark } from '../../safety/date-mark.ts';
import type { PlannedDay } from '../event-plan.ts';

/** Work of one recipe that could be done on an earlier day, as far as keeping goes. */
export interface Move {
  readonly recipe: Recipe;
  readonly handsOnMinutes: number;
}

/**
 * What of a day could be done so many days earlier without breaking how long it keeps, the most work first: all steps of a
 * recipe on that day together, where no other step of it lies between, its parts are ready by then, its file says how long it keeps, what is hot is
 * made to be reheated, and the date marks of every dish with it in (FDA Food Code 3-501.17) still reach the event. What
 * is done at serving stays, and what the recipe says is for that day `only`. Whether the food is as good a day older is the cook's to say.
 */
export function movesFrom(
  day: PlannedDay,
  served: readonly Recipe[],
  date: Day,
  mostDays: number,
  by = 1,
): Move[] {
  const recipes = new Map(day.tasks.map(({ recipe }) => [recipe.id, recipe]));
  return [...recipes.values()]
    .filter((recipe) =>
      mayMove(recipe, { from: day.daysBefore, to: day.daysBefore + by }, served, date, mostDays),
    )
    .map((recipe) => ({
      recipe,
      handsOnMinutes: day.tasks
        .filter((task) => task.recipe.id === recipe.id)
        .reduce((sum, task) => sum + task.handsOnMinutes, 0),
    }))
    .filter(({ handsOnMinutes }) => handsOnMinutes > 0)
    .sort((a, b) => b.handsOnMinutes - a.handsOnMinutes);
}

/**
 * Whether work of the event's own day may be done the day before without asking the cook, since what it makes loses nothing by
 * waiting overnight. What is held hot would have to be heated again, which no
 * step of the recipe does; a stated `stands` is the cook's own word for how long it is good; and what stands at
 * room temperature may only where it is safe there.
 */
export function movesUnasked({ stands, hold, temperatureControl }: Recipe): boolean {
  if (stands !== undefined || hold === 'hot') return false;
  return hold !== 'room' || temperatureControl === false;
}

function mayMove(
  recipe: Recipe,
  { from, to }: { readonly from: number; readonly to: number },
  served: readonly Recipe[],
  date: Day,
  mostDays: number,
): boolean {
  const own = recipe.steps.filter(({ when }) => when.daysBefore === from);
  const finishes = recipe.steps.at(-1)?.when.daysBefore === from;
  if (recipe.steps.some(({ when }) => when.daysBefore > from && when.daysBefore < to)) return false;
  if (own.some((step) => isAtPlace(step) || step.when.only) || recipe.keepsDays === undefined) return false;
  if (finishes && recipe.hold === 'hot' && !recipe.reheat) return false;
  const parts = recipe.lines.flatMap(({ item }) => (item.kind === 'recipe' ? [item.recipe] : []));
  if (parts.some((part) => part.steps.some(({ when }) => when.daysBefore < to))) return false;
  const earlier = {
    ...recipe,
    steps: recipe.steps.map((step) =>
      own.includes(step) ? { ...step, when: { ...step.when, daysBefore: to } } : step,
    ),
  };
  return served
    .filter((dish) => partsFirst([dish]).some(({ id }) => id === recipe.id))
    .every((dish) => (dateMark(replaced(dish, earlier), date, mostDays).atTheLatest ?? date) >= date);
}

function replaced(dish: Recipe, part: Recipe): Recipe {
  if (dish.id === part.id) return part;
  const lines = dish.lines.map((line) =>
    line.item.kind === 'recipe'
      ? { ...line, item: { ...line.item, recipe: replaced(line.item.recipe, part) } }
      : line,
  );
  return { ...dish, lines };
}
