import { addDays, compareDays, type Day } from '../../calendar/day.ts';
import type { Recipe } from '../../food/recipe.ts';
import { writtenId } from '../../food/variant.ts';
import { cookedDishes } from '../cooked-dishes.ts';
import { movesFrom, movesUnasked } from '../days/work-day-moves.ts';
import type { EarlierWork, EventInput, FullDay } from '../event-input.ts';
import type { EventPlan } from '../event-plan.ts';
import type { ClockFinding } from './clock-finding.ts';
import type { DayClock } from './day-clock.ts';
import type { Schedule } from './event-work.ts';
import { hasRoom } from './has-room.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { scheduleOf } from './schedule.ts';
import { isWorse } from './worse.ts';

/** Events as they are planned, by id, and the one schedule over them. */
export interface PlannedEvents {
  readonly plans: ReadonlyMap<string, EventPlan>;
  readonly schedule: Schedule;
}

/** What moving work asks besides the plans. */
export interface MovingSetting {
  readonly kitchen: ClockKitchen;
  /** Plans an event as its input says. */
  readonly planned: (input: EventInput) => EventPlan;
  /** What was done on days before a date, where none of it can be changed any more; undefined where it is still open. */
  readonly settled: (date: Day) => readonly EarlierWork[] | undefined;
  /** How many days before a date can still be planned for, and what of its work was done on days before those. */
  readonly open: (date: Day) => { readonly days: number; readonly done: readonly EarlierWork[] };
  /** Whether what a recipe of an event is made of is there so many days before. */
  readonly isThere: (recipe: Recipe, plan: EventPlan, days: number) => boolean;
}

/** How many recipes are tried one by one, and how many go together at most. */
const TRIED = { alone: 6, together: 4 } as const;
/** How many days before a full one are tried, the nearest first. */
export const MOST_DAYS = 3;

/** A recipe's work of a date, over all events served that day. */
interface DayWork {
  readonly recipe: string;
  /** Its own id and those of what is made of it separately. */
  readonly ids: readonly string[];
  readonly handsOnMinutes: number;
}

/**
 * Plans with what keeps done on an earlier day, the nearest that does, wherever the events' own day is full, one schedule
 * over all. A recipe moves for all events of its date, so that it stays one batch; as few recipes as are enough, the most
 * work first; and only where then all of the date fits and no day from then on has something found of it that it had not. `dates` are tried from the first on: room
 * that one day makes is there for the next.
 */
export function workAhead(
  written: ReadonlyMap<string, EventPlan>,
  dates: readonly Day[],
  setting: MovingSetting,
): PlannedEvents {
  const schedule = scheduleOf([...written.values()], setting.kitchen);
  return [...new Set(dates)]
    .sort(compareDays)
    .reduce((now, date) => movedFrom(now, date, setting), { plans: written, schedule } as PlannedEvents);
}

function movedFrom(now: PlannedEvents, date: Day, setting: MovingSetting): PlannedEvents {
  const served = [...now.plans.values()].filter(({ input }) => input.date === date);
  const settled = setting.settled(date);
  if (settled) return settled.length === 0 ? now : withEarlier(now, served, settled, setting);
  const { days, done } = setting.open(date);
  const start = done.length === 0 ? now : withEarlier(now, served, done, setting);
  const { clock, findings } = start.schedule.on(date);
  const because = whyFull(clock, findings);
  if (!because) return start;
  const fits = fitsWithout(clock);
  for (let by = 1; by <= Math.min(days, MOST_DAYS); by++)
    for (const works of triedFrom(movable(served, by, done, setting))) {
      if (!fits(works)) continue;
      const moved = works.map(
        ({ recipe }): EarlierWork => ({ recipe, because, ...(by > 1 && { days: by }) }),
      );
      const tried = withEarlier(start, served, [...done, ...moved], setting);
      if (isBetter(start, tried, date, by, setting.kitchen)) return tried;
    }
  return start;
}

/** Whether a date fits without some work: the same for whatever day that is done on, so it is worked out once. */
function fitsWithout({ fitsWith }: DayClock): (works: readonly DayWork[]) => boolean {
  const known = new Map<string, boolean>();
  return (works) => {
    const ids = works.flatMap((work) => work.ids);
    const key = JSON.stringify(ids);
    const fits = known.get(key) ?? fitsWith({ without: new Set(ids) });
    known.set(key, fits);
    return fits;
  };
}

function whyFull({ kept }: DayClock, findings: readonly ClockFinding[]): FullDay | undefined {
  const early = findings.find((found) => found.kind === 'before crew');
  if (early) return { kind: 'early', at: early.at, crew: early.crew };
  if (findings.some(({ kind }) => kind === 'clash')) return { kind: 'clash' };
  if (!kept.vehicles) return { kind: 'vehicles' };
  return kept.quality ? undefined : { kind: 'stands' };
}

/** What may move for every event that is served, the most work first. */
function movable(
  served: readonly EventPlan[],
  by: number,
  done: readonly EarlierWork[],
  { isThere }: MovingSetting,
): DayWork[] {
  const stays = new Set<string>();
  const moves = served.flatMap((plan) => {
    const day = plan.days.find(({ daysBefore }) => daysBefore === 0);
    if (!day) return [];
    const dishes = cookedDishes(plan).map(({ dish }) => dish.recipe);
    const { days: mostDays } = plan.foodSafety.limits['date mark'];
    const own = movesFrom(day, dishes, plan.input.date, mostDays, by).filter(
      ({ recipe }) =>
        movesUnasked(recipe) &&
        isThere(recipe, plan, by) &&
        !done.some((work) => work.recipe === writtenId(recipe.id)),
    );
    for (const { recipe } of day.tasks)
      if (!own.some((move) => move.recipe === recipe)) stays.add(writtenId(recipe.id));
    return own;
  });
  return [...Map.groupBy(moves, ({ recipe }) => writtenId(recipe.id))]
    .filter(([recipe]) => !stays.has(recipe))
    .map(
      ([recipe, all]): DayWork => ({
        recipe,
        ids: [...new Set(all.map((move) => move.recipe.id))],
        handsOnMinutes: all.reduce((sum, move) => sum + move.handsOnMinutes, 0),
      }),
    )
    .sort((a, b) => b.handsOnMinutes - a.handsOnMinutes || (a.recipe < b.recipe ? -1 : 1));
}

/** What is tried, in order: each by itself, then the first two, and so on. */
function triedFrom(works: readonly DayWork[]): DayWork[][] {
  const alone = works.slice(0, TRIED.alone).map((each) => [each]);
  const most = Math.min(works.length, TRIED.together);
  return [...alone, ...Array.from({ length: Math.max(0, most - 1) }, (_, at) => works.slice(0, at + 2))];
}

function withEarlier(
  now: PlannedEvents,
  served: readonly EventPlan[],
  earlier: readonly EarlierWork[],
  { kitchen, planned }: MovingSetting,
): PlannedEvents {
  const plans = new Map(now.plans);
  for (const { input, recipes } of served) {
    const cooked = new Set(recipes.map(({ recipe }) => recipe.id));
    const own = earlier.filter(({ recipe }) => cooked.has(recipe));
    if (own.length > 0) plans.set(input.id, planned({ ...input, earlier: own }));
  }
  const before = { plans: [...now.plans.values()], schedule: now.schedule };
  return { plans, schedule: scheduleOf([...plans.values()], kitchen, before) };
}

/** Whether a date is full no longer, the days before it have room, and neither they nor any plan has something new found of it. */
function isBetter(
  now: PlannedEvents,
  tried: PlannedEvents,
  date: Day,
  by: number,
  kitchen: ClockKitchen,
): boolean {
  const found = (each: PlannedEvents, on: Day) => each.schedule.on(on).findings;
  const before = Array.from({ length: by }, (_, at) => addDays(date, -at - 1));
  const plans = [...tried.plans.values()];
  if (whyFull(tried.schedule.on(date).clock, found(tried, date))) return false;
  if (before.some((on) => !hasRoom(plans, on, kitchen))) return false;
  if ([date, ...before].some((on) => isWorse(found(now, on), found(tried, on)))) return false;
  return [...tried.plans].every(
    ([id, { findings }]) => findings.length <= (now.plans.get(id)?.findings.length ?? 0),
  );
}
