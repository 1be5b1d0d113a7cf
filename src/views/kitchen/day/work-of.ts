import type { Day } from '../../../engine/calendar/day.ts';
import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { minutesOfClock } from '../../../engine/kitchen/parse-clock.ts';
import { durationText, minutes } from '../../../engine/measure/duration.ts';
import type { MeasureSystem } from '../../../engine/measure/units.ts';
import type { Crew } from '../../../engine/menu/crew.ts';
import { dayBatches } from '../../../engine/plan/days/day-batches.ts';
import type { DayClash } from '../../../engine/plan/days/day-clashes.ts';
import { type DayTask, type DayWork, dayWork } from '../../../engine/plan/days/day-work.ts';
import { planWork } from '../../../engine/plan/days/work-days.ts';
import type { EventPlan } from '../../../engine/plan/event-plan.ts';
import type { PlanLoad } from '../../../exports/form/day.ts';
import { afterText, clockOf } from '../../../exports/words/clock-text.ts';
import { stepWords } from '../../../exports/words/step-words.ts';
import { type Say, wordsIn } from '../../../words/words-in.ts';
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
  const say = wordsIn(kitchen.locale);
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
    loads: loadsOf(work, kitchen.measures, say),
    gear: work.gear.map(({ equipment, busy }) =>
      say('day.gear-used', {
        name: equipment.name,
        time: durationText(minutes(busy)),
        n: equipment.count,
      }),
    ),
    moved: work.shifts.flatMap(({ events, moved }) =>
      moved === 0
        ? []
        : [
            say('day.work-moved', {
              events: events.join(' and '),
              time: durationText(minutes(Math.abs(moved))),
              direction: moved < 0 ? 'earlier' : 'later',
            }),
          ],
    ),
    findings: [
      ...earlyFindings(work, kitchen.crew, say),
      ...work.clashes.map((clash) => clashFinding(clash, say)),
      ...work.late.map(({ part, into }) => ({
        about: part.batch.recipe.name,
        what: say('day.late-part', {
          events: occasions(part),
          ready: atOf(part, part.ends),
          dish: into.batch.recipe.name,
          starts: atOf(into, into.begins),
        }),
        wayOut: say('day.late-part-way'),
      })),
    ],
  };
}

function loadsOf({ tasks }: DayWork, system: MeasureSystem, say: Say): PlanLoad[] {
  return tasks
    .flatMap((task) => (task.load ? [{ ...task, load: task.load }] : []))
    .sort((a, b) => Number(b.clock) - Number(a.clock) || a.handsOff - b.handsOff)
    .map(({ load, ...task }) => ({
      task: `${task.batch.recipe.id}.${task.number}`,
      recipeName: task.batch.recipe.name,
      text: say('day.load-for', {
        events: occasions(task),
        step: stepWords(task.step.text, task.batch.batches, system),
      }),
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
function earlyFindings({ tasks }: DayWork, crew: Crew | undefined, say: Say): DayView['findings'] {
  if (crew?.from === undefined) return [];
  const begins = Math.min(...tasks.filter(({ clock }) => clock).map((task) => task.begins));
  if (begins >= minutesOfClock(crew.from)) return [];
  return [
    {
      about: say('day.start-early'),
      what: say('day.start-early-what', { time: clockOf(begins), crew: crew.from }),
      wayOut: say('day.start-early-way'),
    },
  ];
}

function clashFinding(
  { gear, from, until, asked, has, what }: DayClash,
  say: Say,
): DayView['findings'][number] {
  return {
    about: gear ? gear.name : say('day.hands'),
    what: say('day.clash', {
      from: clockOf(from),
      until: clockOf(until),
      n: asked,
      has,
      what: what.join('; '),
    }),
    wayOut: gear ? say('day.clash-gear') : say('day.clash-hands'),
  };
}

function occasions({ batch }: Pick<DayTask, 'batch'>): string {
  return batch.events.map(({ plan }) => plan.input.occasion).join(' and ');
}

function atOf({ clock }: Pick<DayTask, 'clock'>, minute: number): string {
  return clock ? clockOf(minute) : afterText(minute);
}
