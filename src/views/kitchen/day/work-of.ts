import type { Day } from '../../../engine/calendar/day.ts';
import type { Equipment, Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { durationText, minutes } from '../../../engine/measure/duration.ts';
import type { TimedStep } from '../../../engine/plan/clock/clock-step.ts';
import type { ChainLink } from '../../../engine/plan/clock/day-chain.ts';
import type { DayClock } from '../../../engine/plan/clock/day-clock.ts';
import type { Schedule } from '../../../engine/plan/clock/event-work.ts';
import { fillings } from '../../../engine/plan/clock/holding.ts';
import { placeRota, type Rota } from '../../../engine/plan/clock/rota.ts';
import { inUseFrom } from '../../../engine/plan/days/loads.ts';
import type { PlanLoad } from '../../../exports/form/day.ts';
import type { DrawnHolding } from '../../../exports/plan/picture.ts';
import { type ChainLine, chainLine } from '../../../exports/words/chain-words.ts';
import { afterText, clockOf } from '../../../exports/words/clock-text.ts';
import { clockFinding } from '../../../exports/words/clock-words.ts';
import { coolingText } from '../../../exports/words/cooling-words.ts';
import { keeperNames, waitsInText } from '../../../exports/words/holding-words.ts';
import { allOf, statementsIn } from '../../../exports/words/statement-text.ts';
import { stepWhy } from '../../../exports/words/step-why.ts';
import { stepWords } from '../../../exports/words/step-words.ts';
import { whoText } from '../../../exports/words/who-text.ts';
import { wordsIn } from '../../../words/words-in.ts';
import type { DayView } from './view.ts';

/** When a task of an event is done on the day's clock. */
export interface DayTime {
  /** Minutes from midnight; from the beginning of the work where `clock` is false. A step in waves lasts until its last. */
  readonly begins: number;
  readonly handsOff: number;
  readonly ends: number;
  readonly clock: boolean;
  readonly at: string;
  /** Who does it; empty where it is not stated who cooks. */
  readonly who: string;
  readonly why: string;
  /** What chills it, what it is cooled to on the way to cold, and when; empty where neither is known. */
  readonly cooledBy: string;
  /** When it is cold; empty where it is not cooled. */
  readonly coldBy: string;
  /** Where what it finishes waits until it is loaded; empty where no equipment keeps it. */
  readonly waitsIn: string;
}

/** A day's work in the kitchen as its page shows it. */
export interface DayWorkView extends Pick<DayView, 'loads' | 'gear' | 'findings'> {
  /** By `dayTimeKey`. */
  readonly times: ReadonlyMap<string, DayTime>;
  readonly clock: DayClock;
  readonly rota: Rota;
  /** What keeps food until it is loaded, and how full it is. */
  readonly holding: readonly DrawnHolding[];
  /** Its longest chains; `task` is the key of a step among `times`, empty for what is no step. */
  readonly chains: readonly {
    readonly of: 'served' | 'prep';
    /** For which event, where there are several. */
    readonly event: string;
    readonly links: readonly (ChainLine & { readonly task: string })[];
  }[];
  /** When the work for events of this very day begins; null where there is none. */
  readonly cookAt: number | null;
}

/** Names a step of an event's recipe among the times of a day. */
export function dayTimeKey(event: string, recipe: string, number: number): string {
  return JSON.stringify([event, recipe, number]);
}

/** All work of one day by the one schedule, its loads in the order they go in, and what does not fit. */
export function dayWorkView(schedule: Schedule, date: Day, kitchen: Kitchen): DayWorkView {
  const { locale, stations, equipment, measures: system } = kitchen;
  const say = wordsIn(locale);
  const words = { say, locale, system, stations, equipment };
  const { clock, rota, findings } = schedule.on(date);
  const inKitchen = clock.steps;
  const occasions = new Map(clock.served.map(({ plan: { input } }) => [input.id, input.occasion]));
  const steps = [
    ...inKitchen.map((step) => ({ step, cooks: rota.cooks.get(step.id) ?? [] })),
    ...clock.served.flatMap(({ place }) => {
      const { cooks } = placeRota(place);
      return place.steps.map((step) => ({ step, cooks: cooks.get(step.id) ?? [] }));
    }),
  ];
  const timed = steps.flatMap(({ step, cooks }): (readonly [string, DayTime])[] =>
    step.batch.events
      .filter(({ plan }) => step.where === 'kitchen' || step.where.event === plan.input.id)
      .map(
        ({ plan }) =>
          [
            dayTimeKey(plan.input.id, step.batch.recipe.id, step.number),
            {
              begins: step.begins,
              handsOff: step.handsOff,
              ends: step.ends,
              clock: step.clock,
              at: atOf(step, step.begins),
              who: whoText(cooks, say),
              why: stepWhy(step, words),
              cooledBy: step.clock ? coolingText(step, words) : '',
              coldBy: step.clock && step.coldBy !== undefined ? clockOf(step.coldBy) : '',
              waitsIn: waitsInText(
                clock.held.filter(({ event, after }) => event === plan.input.id && after.includes(step.id)),
                equipment,
                words,
              ),
            },
          ] as const,
      ),
  );
  const times = new Map<string, DayTime>();
  for (const [key, time] of timed) {
    const first = times.get(key);
    times.set(
      key,
      first
        ? {
            ...first,
            handsOff: Math.max(first.handsOff, time.handsOff),
            ends: Math.max(first.ends, time.ends),
          }
        : time,
    );
  }
  const own = inKitchen.filter(({ batch }) => batch.events.some(({ plan }) => plan.input.date === date));
  return {
    clock,
    rota,
    holding: holdingOf(clock, equipment, locale),
    chains: clock.chains.map(({ of, event, links }) => ({
      of,
      event: (clock.served.length > 1 && event !== undefined && occasions.get(event)) || '',
      links: links.map((link) => ({ ...chainLine(link, { ...words, occasions }), task: taskOf(link) })),
    })),
    times,
    cookAt: own.length === 0 ? null : Math.min(...own.map(({ begins }) => begins)),
    loads: loadsOf(inKitchen, kitchen),
    gear: gearOf(inKitchen).map(([{ name, count }, busy]) =>
      say('day.gear-used', { name, time: durationText(minutes(busy)), n: count }),
    ),
    findings: findings.map((finding) => clockFinding(finding, words)),
  };
}

function holdingOf(
  { held }: DayClock,
  equipment: Kitchen['equipment'],
  locale: string,
): readonly DrawnHolding[] {
  return (['hot', 'cold'] as const).flatMap((as): DrawnHolding[] => {
    const own = fillings(held, as);
    return own.length === 0 ? [] : [{ name: keeperNames(equipment, as, locale), as, fillings: own }];
  });
}

function taskOf({ what }: ChainLink): string {
  if (what.kind !== 'step') return '';
  const { batch, number } = what.step;
  return dayTimeKey(batch.events[0]?.plan.input.id ?? '', batch.recipe.id, number);
}

function loadsOf(
  steps: readonly TimedStep[],
  { measures: system, locale }: Pick<Kitchen, 'measures' | 'locale'>,
): PlanLoad[] {
  const say = wordsIn(locale);
  const inWords = statementsIn(locale);
  return steps
    .flatMap((step) =>
      step.load ? [{ ...step, load: step.load, goesIn: step.begins + inUseFrom(step) }] : [],
    )
    .sort((a, b) => Number(b.clock) - Number(a.clock) || a.goesIn - b.goesIn)
    .map(({ load, goesIn, ...step }) => ({
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
      goesIn: atOf(step, goesIn),
      comesOut: atOf(step, step.ends),
      minutes: step.ends - goesIn,
      why: load.why.map(inWords),
    }));
}

/** Each kind of equipment in use: minutes of all pieces together. */
function gearOf(steps: readonly TimedStep[]): [Equipment, number][] {
  const busy = new Map<Equipment, number>();
  for (const step of steps) {
    const { load, begins, ends } = step;
    if (!load) continue;
    const minutes = load.uses * (ends - begins - inUseFrom(step));
    busy.set(load.equipment, (busy.get(load.equipment) ?? 0) + minutes);
  }
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
