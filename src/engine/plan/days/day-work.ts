import type { Day } from '../../calendar/day.ts';
import type { RecipeStep } from '../../food/recipe.ts';
import type { Equipment, Kitchen } from '../../kitchen/kitchen.ts';
import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import type { DayBatch } from './day-batches.ts';
import { type DayClash, type DayUse, firstFit } from './day-clashes.ts';
import { type GearLoad, loadOf } from './loads.ts';
import { spanOf, type TimedWork, timeWork, type Work } from './work-day.ts';
import type { WorkKitchen } from './work-days.ts';

/** A step of a batch on the day's one clock. */
export interface DayTask {
  readonly batch: DayBatch;
  readonly step: RecipeStep;
  /** Position among the recipe's steps, from 1. */
  readonly number: number;
  /** Minutes of all its events, each as if it were cooked by itself. */
  readonly handsOn: number;
  /** Minutes from midnight; from the beginning of the work where `clock` is false. */
  readonly begins: number;
  readonly handsOff: number;
  readonly ends: number;
  /** False where nobody has said when the crew begins, for work that no event of the day waits for. */
  readonly clock: boolean;
  readonly load: GearLoad | undefined;
}

/** The work that one event of the day waits for, or that is done for other days. */
export interface DayShift {
  /** Occasions of the events it is done for. */
  readonly events: readonly string[];
  /** By how many minutes it is done at another time than its events' own pages say: earlier below 0, later above. */
  readonly moved: number;
}

/** A day of several events on one clock, in the kitchen. */
export interface DayWork {
  readonly tasks: readonly DayTask[];
  readonly shifts: readonly DayShift[];
  /** Where ovens or hands are asked for that are not there, at any time the work could be moved to. */
  readonly clashes: readonly DayClash[];
  /** Parts that are ready only after what they go into is begun, since they are made together with another event's. */
  readonly late: readonly { readonly part: DayTask; readonly into: DayTask }[];
  /** Each kind of equipment in use: minutes of all pieces together, and the pieces there are. */
  readonly gear: readonly { readonly equipment: Equipment; readonly busy: number }[];
}

/** The most minutes by which an event's work is begun earlier, so that hot food does not stand for half a day. */
const MOST_EARLIER = 180;

/**
 * Times the kitchen's work of a day over all its events. What an event of that day waits for ends when its packing
 * begins (`packAt`, minutes from midnight by event), as on its own page; what is cooked together ends for the first of
 * them; what is for later days begins with the crew. Where ovens or hands do not reach for them at once, the later
 * event's work is begun up to 3 h earlier, and work for other days later within the crew's shift; where that does not
 * help either it stays, and the clash is named. Steps at serving are not done in the kitchen and left out.
 */
export function dayWork(
  batches: readonly DayBatch[],
  date: Day,
  packAt: ReadonlyMap<string, number>,
  kitchen: WorkKitchen,
): DayWork {
  const deadline = ({ events }: DayBatch) => {
    const ends = events.flatMap(({ plan: { input } }) =>
      input.date === date ? [packAt.get(input.id) ?? minutesOfClock(input.serveAt)] : [],
    );
    return ends.length === 0 ? undefined : Math.min(...ends);
  };
  const groups = [...Map.groupBy(batches, deadline)]
    .map(([end, own]) => ({ end, works: worksOf(own, batches, date, kitchen) }))
    .filter(({ works }) => works.length > 0)
    .sort((a, b) => (a.end ?? Number.MAX_VALUE) - (b.end ?? Number.MAX_VALUE));
  const { crew } = kitchen;
  const placed: DayUse[] = [];
  const tasks: DayTask[] = [];
  const shifts: DayShift[] = [];
  const clashes: DayClash[] = [];
  for (const { end, works } of groups) {
    const timed = timeWork(
      works.map(({ work }) => work),
      crew?.people,
    );
    const span = spanOf(timed);
    const begin = (index: number) => timed[index]?.begins ?? 0;
    const readyBy = (parts: readonly DayBatch[], minute: number) =>
      tasks.every((task) => !parts.includes(task.batch) || task.ends <= minute);
    const clock = end !== undefined || crew?.from !== undefined;
    const own = end === undefined ? fromOf(crew) : end - span;
    const uses = works.flatMap(({ batch, step, load }, index) =>
      usesOf(`${batch.recipe.name}: ${step.text}`, timed[index] as TimedWork, load),
    );
    const room = end === undefined ? Math.max(0, (crew?.each ?? 0) - span) : Math.min(MOST_EARLIER, own);
    const steps = Math.max(0, Math.floor(room / 5));
    const moves = Array.from({ length: steps + 1 }, (_, index) =>
      end === undefined ? 5 * index : 0 - 5 * index,
    ).filter(
      (move) => move === 0 || works.every(({ parts }, index) => readyBy(parts, own + move + begin(index))),
    );
    const fit = clock ? firstFit(placed, uses, own, moves, crew?.people) : { moved: 0, clashes: [] };
    const from = own + fit.moved;
    clashes.push(...fit.clashes);
    const occasions = works.flatMap(({ batch }) => batch.events.map(({ plan }) => plan.input.occasion));
    shifts.push({ events: [...new Set(occasions)], moved: fit.moved });
    if (clock)
      placed.push(...uses.map((use) => ({ ...use, from: use.from + from, until: use.until + from })));
    tasks.push(
      ...works.map(({ batch, step, number, handsOn, load }, index) => {
        const { begins, handsOff, ends } = timed[index] as TimedWork;
        const times = { begins: begins + from, handsOff: handsOff + from, ends: ends + from };
        return { batch, step, number, handsOn, load, clock, ...times };
      }),
    );
  }
  return { tasks, shifts, clashes, late: lateParts(tasks), gear: gearOf(tasks) };
}

interface BatchWork {
  readonly batch: DayBatch;
  readonly step: RecipeStep;
  readonly number: number;
  readonly handsOn: number;
  readonly load: GearLoad | undefined;
  /** What goes into it, of the same day; none for a step that is not the first of its recipe. */
  readonly parts: readonly DayBatch[];
  readonly work: Work;
}

/** The steps of batches in the kitchen on a day; what is made separately for a need comes before the rest. */
function worksOf(
  batches: readonly DayBatch[],
  all: readonly DayBatch[],
  date: Day,
  kitchen: WorkKitchen,
): BatchWork[] {
  const steps = batches
    .toSorted((a, b) => Number(b.apart) - Number(a.apart))
    .flatMap((batch) => stepsOf(batch, date).map((each) => ({ batch, ...each })));
  const idOf = ({ batch, number }: { batch: DayBatch; number: number }) =>
    `${batches.indexOf(batch)}.${number}`;
  return steps.map((each) => {
    const { batch, step, handsOn } = each;
    const { recipe, makes, events } = batch;
    const packed = events.flatMap(({ plan }) =>
      plan.dishes.filter(({ dish }) => dish.recipe.id === recipe.id).flatMap(({ containers }) => containers),
    );
    const load = loadOf(step, { recipe, makes }, packed, kitchen);
    const own = steps.filter((other) => other.batch === batch && other.number < each.number).at(-1);
    const parts = own ? [] : all.filter((part) => goesInto(part, batch));
    const lasts = parts.flatMap((part) => steps.filter((other) => other.batch === part).at(-1) ?? []);
    return {
      ...each,
      load,
      parts,
      work: {
        id: idOf(each),
        station: step.station,
        handsOn,
        unattended: step.unattended * (load?.loads ?? 1),
        after: (own ? [own] : lasts).map(idOf),
        gear: load && { id: load.equipment.id, count: load.equipment.count, uses: load.uses },
      },
    };
  });
}

function stepsOf({ recipe, events }: DayBatch, date: Day) {
  return recipe.steps.flatMap((step, index) => {
    const own = events.flatMap(({ plan: { days } }) =>
      days
        .filter((each) => each.date === date)
        .flatMap(({ tasks }) => tasks.filter((task) => task.recipe === recipe && task.number === index + 1)),
    );
    if (own.length === 0 || step.when.atServing) return [];
    const handsOn = own.reduce((sum, task) => sum + task.handsOnMinutes, 0);
    return [{ step, number: index + 1, handsOn }];
  });
}

/** Whether a batch is a part of another, for an event that both are for. */
function goesInto(part: DayBatch, into: DayBatch): boolean {
  return (
    into.recipe.lines.some(({ item }) => item.kind === 'recipe' && item.recipe === part.recipe) &&
    part.events.some(({ plan }) => into.events.some((other) => other.plan === plan))
  );
}

function lateParts(tasks: readonly DayTask[]): DayWork['late'] {
  return tasks.flatMap((into) => {
    const first = tasks.every(({ batch, number }) => batch !== into.batch || number >= into.number);
    if (!first) return [];
    const parts = tasks.filter(
      ({ batch, number, clock, ends }) =>
        clock === into.clock &&
        ends > into.begins &&
        goesInto(batch, into.batch) &&
        tasks.every((other) => other.batch !== batch || other.number <= number),
    );
    return parts.map((part) => ({ part, into }));
  });
}

function usesOf(what: string, { begins, handsOff, ends }: TimedWork, load: GearLoad | undefined): DayUse[] {
  const hands = handsOff > begins ? [{ what, gear: null, from: begins, until: handsOff, uses: 1 }] : [];
  if (!load || ends === handsOff) return hands;
  return [...hands, { what, gear: load.equipment, from: handsOff, until: ends, uses: load.uses }];
}

function gearOf(tasks: readonly DayTask[]): DayWork['gear'] {
  const busy = new Map<Equipment, number>();
  for (const { load, handsOff, ends } of tasks)
    if (load) busy.set(load.equipment, (busy.get(load.equipment) ?? 0) + load.uses * (ends - handsOff));
  return [...busy].map(([equipment, minutes]) => ({ equipment, busy: minutes }));
}

function fromOf(crew: Kitchen['crew']): number {
  return crew?.from === undefined ? 0 : minutesOfClock(crew.from);
}
