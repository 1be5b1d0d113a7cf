import type { Day } from '../../../engine/calendar/day.ts';
import type { Equipment, Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { durationText, minutes } from '../../../engine/measure/duration.ts';
import type { TimedStep } from '../../../engine/plan/clock/clock-step.ts';
import type { DayClock } from '../../../engine/plan/clock/day-clock.ts';
import type { Schedule } from '../../../engine/plan/clock/event-work.ts';
import type { PlanLoad } from '../../../exports/form/day.ts';
import { afterText, clockOf } from '../../../exports/words/clock-text.ts';
import { clockFinding, startWhy } from '../../../exports/words/clock-words.ts';
import { allOf, statementsIn } from '../../../exports/words/statement-text.ts';
import { stepWords } from '../../../exports/words/step-words.ts';
import { wordsIn } from '../../../words/words-in.ts';
import type { DayView } from '../view.ts';

/** When a task of an event is done on the day's clock. */
export interface DayTime {
  /** Minutes, for putting tasks in order. */
  readonly begins: number;
  readonly at: string;
  readonly why: string;
  /** When it is cold; empty where it is not cooled. */
  readonly coldBy: string;
}

/** A day's work in the kitchen as its page shows it. */
export interface DayWorkView extends Pick<DayView, 'loads' | 'gear' | 'findings'> {
  /** By `dayTimeKey`. */
  readonly times: ReadonlyMap<string, DayTime>;
  readonly clock: DayClock;
  /** When the work for events of this very day begins; null where there is none. */
  readonly cookAt: number | null;
}

/** Names a step of an event's recipe among the times of a day. */
export function dayTimeKey(event: string, recipe: string, number: number): string {
  return JSON.stringify([event, recipe, number]);
}

/** All work of one day by the one schedule, its loads in the order they go in, and what does not fit. */
export function dayWorkView(schedule: Schedule, date: Day, kitchen: Kitchen): DayWorkView {
  const { locale, stations, equipment } = kitchen;
  const say = wordsIn(locale);
  const words = { say, locale, stations, equipment };
  const { clock, findings } = schedule.on(date);
  const inKitchen = clock.steps;
  const steps = [...inKitchen, ...clock.served.flatMap(({ place }) => place.steps)];
  const times = steps.flatMap((step) =>
    step.batch.events
      .filter(({ plan }) => step.where === 'kitchen' || step.where.event === plan.input.id)
      .map(
        ({ plan }) =>
          [
            dayTimeKey(plan.input.id, step.batch.recipe.id, step.number),
            {
              begins: step.begins,
              at: atOf(step, step.begins),
              why: step.clock ? startWhy(step, words) : '',
              coldBy: step.clock && step.coldBy !== undefined ? clockOf(step.coldBy) : '',
            },
          ] as const,
      ),
  );
  const own = inKitchen.filter(({ batch }) => batch.events.some(({ plan }) => plan.input.date === date));
  return {
    clock,
    // A later wave of a step has the same key as the first, which is when it begins.
    times: new Map(times.reverse()),
    cookAt: own.length === 0 ? null : Math.min(...own.map(({ begins }) => begins)),
    loads: loadsOf(inKitchen, kitchen),
    gear: gearOf(inKitchen).map(([{ name, count }, busy]) =>
      say('day.gear-used', { name, time: durationText(minutes(busy)), n: count }),
    ),
    findings: findings.map((finding) => clockFinding(finding, words)),
  };
}

function loadsOf(
  steps: readonly TimedStep[],
  { measures: system, locale }: Pick<Kitchen, 'measures' | 'locale'>,
): PlanLoad[] {
  const say = wordsIn(locale);
  const inWords = statementsIn(locale);
  return steps
    .flatMap((step) => (step.load ? [{ ...step, load: step.load }] : []))
    .sort((a, b) => Number(b.clock) - Number(a.clock) || a.handsOff - b.handsOff)
    .map(({ load, ...step }) => ({
      task: `${step.batch.recipe.id}.${step.number}`,
      recipeName: step.batch.recipe.name,
      text: say('day.load-for', {
        events: occasions(step, locale),
        step: stepWords(step.step.text, step.batch.batches, system),
      }),
      equipment: load.equipment.name,
      uses: load.uses,
      containers: load.containers
        ? say('plan.counted', { count: load.containers.count, what: inWords(load.containers.name) })
        : '',
      loads: load.loads,
      goesIn: atOf(step, step.handsOff),
      comesOut: atOf(step, step.ends),
      minutes: step.ends - step.handsOff,
      why: load.why.map(inWords),
    }));
}

/** Each kind of equipment in use: minutes of all pieces together. */
function gearOf(steps: readonly TimedStep[]): [Equipment, number][] {
  const busy = new Map<Equipment, number>();
  for (const { load, handsOff, ends } of steps)
    if (load) busy.set(load.equipment, (busy.get(load.equipment) ?? 0) + load.uses * (ends - handsOff));
  return [...busy];
}

function occasions({ batch }: Pick<TimedStep, 'batch'>, locale: string): string {
  return allOf(
    batch.events.map(({ plan }) => plan.input.occasion),
    locale,
  );
}

function atOf({ clock }: Pick<TimedStep, 'clock'>, minute: number): string {
  return clock ? clockOf(minute) : afterText(minute);
}
