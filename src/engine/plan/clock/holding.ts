import Fraction from 'fraction.js';
import type { Day } from '../../calendar/day.ts';
import type { Recipe } from '../../food/recipe.ts';
import { travelsAs } from '../../safety/travels-as.ts';
import { type HeldContainers, heldContainers, holdingRoom, type Keeps } from '../days/holding-room.ts';
import type { ClockStep } from './clock-step.ts';
import { coolOf } from './cooling-tasks.ts';
import { loadOfEvent } from './day-problem.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { leaving } from './leaves.ts';
import type { ServedEvent } from './stands.ts';

/** Food that is finished on its event's day and waits in equipment that keeps it, until loading begins. */
export interface Held extends HeldContainers {
  readonly recipe: Recipe;
  /** Id of the event. */
  readonly event: string;
  readonly keeps: Keeps;
  /** Ids of the tasks after which it waits: its last step in the kitchen and, where it is cooled, its cooling. */
  readonly after: readonly string[];
}

/** The same with its hours, in minutes from midnight. */
export interface HeldFood extends Held {
  readonly from: number;
  readonly until: number;
}

/**
 * What of a date's events takes up room in equipment that keeps food hot or cold. Food in a container that none of it
 * holds, and cold food finished on an earlier day, which stands in the cold room (`cold-room.ts`), is left out.
 */
export function heldOf(
  steps: readonly ClockStep[],
  served: readonly ServedEvent[],
  date: Day,
  { equipment }: Pick<ClockKitchen, 'equipment'>,
): Held[] {
  const rooms = new Map(
    (['hot', 'cold'] as const).map((keeps) => [keeps, holdingRoom(equipment, keeps)] as const),
  );
  if ([...rooms.values()].every((room) => room.size === 0)) return [];
  const goes = leaving(steps, date);
  return [...Map.groupBy(steps, ({ batch }) => batch)].flatMap(([batch, own]): Held[] => {
    const { recipe } = batch;
    const keeps = travelsAs(recipe);
    if (!goes.has(batch) || (keeps !== 'hot' && keeps !== 'cold')) return [];
    const last = own.reduce((a, b) => (b.number > a.number ? b : a));
    const cooled = own.find(({ cools }) => cools !== undefined);
    const after = [last.id, ...(cooled ? [coolOf(cooled.id)] : [])];
    return batch.events.flatMap(({ plan }): Held[] => {
      const { id: event } = plan.input;
      if (!served.some((each) => each.plan.input.id === event)) return [];
      const packed = plan.dishes
        .filter(({ dish }) => dish.recipe.id === recipe.id)
        .flatMap(({ containers }) => containers);
      const waits = heldContainers(packed, rooms.get(keeps) ?? new Map());
      return waits.containers.length === 0 ? [] : [{ recipe, event, keeps, after, ...waits }];
    });
  });
}

/** When held food waits, by the times found for a date's tasks; what has no time is left out. */
export function heldAt(
  held: readonly Held[],
  at: (id: string) => { readonly begins: number; readonly ends: number } | undefined,
): HeldFood[] {
  return held.flatMap((food): HeldFood[] => {
    const until = at(loadOfEvent(food.event))?.begins;
    const ends = food.after.flatMap((id) => at(id)?.ends ?? []);
    if (until === undefined || ends.length === 0) return [];
    const from = Math.max(...ends);
    return from < until ? [{ ...food, from, until }] : [];
  });
}

/** A stretch in which the same food waits. */
export interface Filling {
  readonly from: number;
  readonly until: number;
  readonly share: Fraction;
  readonly foods: readonly HeldFood[];
}

/** How full what keeps food hot, or cold, is, stretch by stretch; where nothing waits in it there is none. */
export function fillings(foods: readonly HeldFood[], keeps: Keeps): Filling[] {
  const own = foods.filter((food) => food.keeps === keeps);
  const times = [...new Set(own.flatMap(({ from, until }) => [from, until]))].sort((a, b) => a - b);
  return times.flatMap((from, index): Filling[] => {
    const until = times[index + 1];
    const there = own.filter((food) => food.from <= from && food.until > from);
    if (until === undefined || there.length === 0) return [];
    const share = there.reduce((sum, food) => sum.add(food.share), new Fraction(0n));
    return [{ from, until, share, foods: there }];
  });
}
