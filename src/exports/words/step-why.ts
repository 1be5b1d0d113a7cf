import type { TimedStep } from '../../engine/plan/clock/clock-step.ts';
import { earlierWork } from '../../engine/plan/clock/earlier-work.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { clockOf } from './clock-text.ts';
import { startWhy } from './clock-why.ts';
import type { ClockWords } from './clock-words.ts';
import { dateText } from './date-text.ts';

/** Why a step is done when it is: that its own day had no room for it, and what holds it at its minute. Empty where nothing does. */
export function stepWhy(step: TimedStep, words: ClockWords): string {
  return [earlyWhy(step, words), step.clock ? startWhy(step, words) : '']
    .filter((why) => why !== '')
    .join(' · ');
}

const EARLY = {
  clash: 'clock.early.full',
  stands: 'clock.early.stands',
  vehicles: 'clock.early.vehicles',
} as const satisfies Readonly<Record<string, WordKey>>;

function earlyWhy({ step, batch }: TimedStep, { say, locale }: ClockWords): string {
  const found = step.when.early && earlierWork(batch);
  if (!found) return '';
  const { because, days: n, date } = found;
  const day = dateText(date, locale);
  return because.kind === 'early'
    ? say('clock.early.crew', { n, day, time: clockOf(because.at), crew: clockOf(because.crew) })
    : say(EARLY[because.kind], { n, day });
}
