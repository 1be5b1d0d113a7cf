import type { Recipe } from '../../food/recipe.ts';
import type { PlannedContainer, PlannedRecipe, PlannedTask } from '../event-plan.ts';
import { type GearLoad, type LoadSetting, loadOf } from './loads.ts';
import { type TimedWork, timeWork, type Work } from './work-day.ts';

/** A task of a day with its time and, where it goes through equipment, its loads. */
export interface TimedTask {
  readonly task: PlannedTask;
  readonly time: TimedWork;
  readonly load: GearLoad | undefined;
}

/** What timing a day needs besides its tasks. */
export interface WorkSetting extends LoadSetting {
  readonly people: number | undefined;
  /** Whether a station is one pair of hands, or as many as it has tasks. */
  readonly atStation: 'one' | 'any';
}

/** What of a plan, or of several put together, the loads are reckoned from. */
export interface CookedFood {
  readonly recipes: readonly Pick<PlannedRecipe, 'recipe' | 'makes'>[];
  /** Containers of the dishes made by a recipe, by its id. */
  readonly packed: ReadonlyMap<string, readonly PlannedContainer[]>;
}

/**
 * Times tasks that share a day and a place. A step waits for the step before it of the same recipe, and the first
 * step of a recipe for the last of each part that it calls for, as far as these are done in the same list. Equipment is
 * taken up for as many loads as it takes, one after the other.
 */
export function timeTasks(
  tasks: readonly PlannedTask[],
  food: CookedFood,
  setting: WorkSetting,
): TimedTask[] {
  const loads = tasks.map(({ recipe, step }) => {
    const cooked = food.recipes.find((each) => each.recipe.id === recipe.id);
    return cooked && loadOf(step, cooked, food.packed.get(recipe.id) ?? [], setting);
  });
  const works = tasks.map((task, index): Work => {
    const load = loads[index];
    return {
      id: idOf(task),
      station: setting.atStation === 'one' ? task.step.station : idOf(task),
      handsOn: task.handsOnMinutes,
      unattended: task.step.unattended * (load?.loads ?? 1),
      after: before(task, tasks).map(idOf),
      gear: load && { id: load.equipment.id, count: load.equipment.count, uses: load.uses },
    };
  });
  const timed = timeWork(works, setting.people);
  return tasks.map((task, index) => ({ task, time: timed[index] as TimedWork, load: loads[index] }));
}

function idOf({ recipe, number }: PlannedTask): string {
  return `${recipe.id}.${number}`;
}

function before(task: PlannedTask, tasks: readonly PlannedTask[]): PlannedTask[] {
  const own = lastOf(
    task.recipe,
    tasks.filter(({ number }) => number < task.number),
  );
  if (own) return [own];
  return task.recipe.lines.flatMap(({ item }) => {
    const part = item.kind === 'recipe' ? lastOf(item.recipe, tasks) : undefined;
    return part ? [part] : [];
  });
}

function lastOf({ id }: Recipe, tasks: readonly PlannedTask[]): PlannedTask | undefined {
  return tasks
    .filter(({ recipe }) => recipe.id === id)
    .sort((a, b) => a.number - b.number)
    .at(-1);
}
