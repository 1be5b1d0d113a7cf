import type { Day } from '../../../engine/calendar/day.ts';
import type { Crew, Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { minutesOfClock } from '../../../engine/kitchen/parse-clock.ts';
import { durationText, minutes } from '../../../engine/measure/duration.ts';
import { dayBatches } from '../../../engine/plan/days/day-batches.ts';
import type { DayClash } from '../../../engine/plan/days/day-clashes.ts';
import { type DayTask, type DayWork, dayWork } from '../../../engine/plan/days/day-work.ts';
import { planWork } from '../../../engine/plan/days/work-days.ts';
import type { EventPlan } from '../../../engine/plan/event-plan.ts';
import type { PlanLoad } from '../../../exports/form/day.ts';
import { afterText, clockOf } from '../../../exports/words/clock-text.ts';
import type { DayView } from '../view.ts';

/** When a task of an event is done on the day's clock. */
export interface DayTime {
  /** Minutes, for putting tasks in order. */
  readonly begins: number;
  readonly at: string;
}

/** A day's work in the kitchen as its page shows it. */
export interface DayWorkView extends Pick<DayView, 'loads' | 'gear' | 'moved' | 'findings'> {
  /** By `dayTimeKey`. */
  readonly times: ReadonlyMap<string, DayTime>;
  /** When the work for events of this very day begins; null where there is none. */
  readonly cookAt: number | null;
}

/** Names a step of an event's recipe among the times of a day. */
export function dayTimeKey(event: string, recipe: string, number: number): string {
  return JSON.stringify([event, recipe, number]);
}

/** All work in the kitchen on one day on one clock, its loads in the order they go in, and what does not fit. */
export function dayWorkView(plans: readonly EventPlan[], date: Day, kitchen: Kitchen): DayWorkView {
  const today = plans.filter(({ input }) => input.date === date);
  const packAt = new Map(
    today.flatMap((plan) => {
      const pack = planWork(plan, kitchen).timeline.find(({ part }) => part === 'pack');
      return pack ? [[plan.input.id, pack.begins] as const] : [];
    }),
  );
  const work = dayWork(dayBatches(plans, date), date, packAt, kitchen);
  const times = work.tasks.flatMap((task) =>
    task.batch.events.map(
      ({ plan }) =>
        [
          dayTimeKey(plan.input.id, task.batch.recipe.id, task.number),
          { begins: task.begins, at: atOf(task, task.begins) },
        ] as const,
    ),
  );
  const own = work.tasks.filter(({ batch }) => batch.events.some(({ plan }) => plan.input.date === date));
  return {
    times: new Map(times),
    cookAt: own.length === 0 ? null : Math.min(...own.map(({ begins }) => begins)),
    loads: loadsOf(work),
    gear: work.gear.map(
      ({ equipment, busy }) =>
        `${equipment.name}: in use ${durationText(minutes(busy))} over all, with ${equipment.count} of them`,
    ),
    moved: work.shifts.flatMap(({ events, moved }) =>
      moved === 0
        ? []
        : [
            `Work for ${events.join(' and ')} begins ${durationText(minutes(Math.abs(moved)))} ${moved < 0 ? 'earlier' : 'later'} than it would by itself: ovens or hands are taken`,
          ],
    ),
    findings: [
      ...earlyFindings(work, kitchen.crew),
      ...work.clashes.map(clashFinding),
      ...work.late.map(({ part, into }) => ({
        about: part.batch.recipe.name,
        what: `made together for ${occasions(part)}, it is ready at ${atOf(part, part.ends)}, and ${into.batch.recipe.name}, into which it goes, is begun at ${atOf(into, into.begins)}`,
        wayOut: 'make it before everything else, or apart for that event',
      })),
    ],
  };
}

function loadsOf({ tasks }: DayWork): PlanLoad[] {
  return tasks
    .flatMap((task) => (task.load ? [{ ...task, load: task.load }] : []))
    .sort((a, b) => Number(b.clock) - Number(a.clock) || a.handsOff - b.handsOff)
    .map(({ load, ...task }) => ({
      task: `${task.batch.recipe.id}.${task.number}`,
      recipeName: task.batch.recipe.name,
      text: `For ${occasions(task)}: ${task.step.text}`,
      equipment: load.equipment.name,
      uses: load.uses,
      containers: load.containers ? `${load.containers.count} × ${load.containers.name}` : '',
      loads: load.loads,
      goesIn: atOf(task, task.handsOff),
      comesOut: atOf(task, task.ends),
      minutes: task.ends - task.handsOff,
      why: load.why,
    }));
}

/** Work that has to begin before the crew does. */
function earlyFindings({ tasks }: DayWork, crew: Crew | undefined): DayView['findings'] {
  if (crew?.from === undefined) return [];
  const begins = Math.min(...tasks.filter(({ clock }) => clock).map((task) => task.begins));
  if (begins >= minutesOfClock(crew.from)) return [];
  return [
    {
      about: 'Beginning',
      what: `the work has to begin at ${clockOf(begins)} to be ready for packing, and the crew begins at ${crew.from}`,
      wayOut: 'begin earlier on this day, or do what keeps the day before',
    },
  ];
}

function clashFinding({ gear, from, until, asked, has, what }: DayClash): DayView['findings'][number] {
  return {
    about: gear ? gear.name : 'Hands',
    what: `from ${clockOf(from)} to ${clockOf(until)} ${asked} are asked for at once, and there ${has === 1 ? 'is' : 'are'} ${has}: ${what.join('; ')}`,
    wayOut: gear
      ? 'cook one of these the day before where it keeps, or use an oven elsewhere'
      : 'move work to another day, or take on more hands',
  };
}

function occasions({ batch }: Pick<DayTask, 'batch'>): string {
  return batch.events.map(({ plan }) => plan.input.occasion).join(' and ');
}

function atOf({ clock }: Pick<DayTask, 'clock'>, minute: number): string {
  return clock ? clockOf(minute) : afterText(minute);
}
