import { scaleOf } from '../../engine/measure/temperature.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { ClockFinding } from '../../engine/plan/clock/clock-finding.ts';
import type { CooledTo, TimedStep } from '../../engine/plan/clock/clock-step.ts';
import { limitTemperatureText } from '../../engine/safety/limit-said.ts';
import type { Say } from '../../words/words-in.ts';
import { clockOf } from './clock-text.ts';
import { dateText } from './date-text.ts';
import { statementsIn } from './statement-text.ts';

/** What words about cooling need besides the figures; temperatures are in the scale of the measures. */
interface CoolingWords {
  readonly say: Say;
  readonly system: MeasureSystem;
}

/** The code's first temperature on the way to cold, and when food is at it: `at 70 °F by 10:20`. */
export function cooledText({ temperature, at }: CooledTo, { say, system }: CoolingWords) {
  return say('clock.cooled-to', {
    temperature: limitTemperatureText(temperature, scaleOf(system)),
    time: clockOf(at),
  });
}

/** How a step's food gets cold: what chills it, and what it is cooled to on the way; empty where neither is known. */
export function coolingText(
  { cools, cooledTo }: Pick<TimedStep, 'cools' | 'cooledTo'>,
  words: CoolingWords,
): string {
  const { equipment, loads } = cools?.chiller ?? {};
  return [
    ...(equipment ? [words.say('clock.chilled-in', { equipment: equipment.name, n: loads ?? 1 })] : []),
    ...(cooledTo ? [cooledText(cooledTo, words)] : []),
  ].join(' · ');
}

/** Food that has no room in what chills it in time, and what was tried. */
export function chillerFinding(
  { date, equipment, recipes, source }: Extract<ClockFinding, { kind: 'chiller' }>,
  ways: string,
  { say, locale }: { readonly say: Say; readonly locale: string },
) {
  const names = new Intl.ListFormat(locale, { type: 'conjunction' }).format(recipes);
  const defers = say('safety.defers');
  return {
    about: equipment,
    what: say('clock.chiller', {
      day: dateText(date, locale),
      recipes: names,
      source: statementsIn(locale)(source),
    }),
    wayOut: ways ? say('clock.chiller-tried', { ways, defers }) : say('clock.chiller-way', { defers }),
  };
}
