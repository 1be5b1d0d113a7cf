import type { TimedStep } from '../../engine/plan/clock/clock-step.ts';
import { earlierWork } from '../../engine/plan/clock/earlier-work.ts';
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

function earlyWhy({ step, batch }: TimedStep, { say, locale }: ClockWords): string {
  const found = step.when.early && earlierWork(batch);
  if (!found) return '';
  const { because, date } = found;
  const day = dateText(date, locale);
  return because.kind === 'clash'
    ? say('clock.early.full', { day })
    : say('clock.early.crew', { day, time: clockOf(because.at), crew: clockOf(because.crew) });
}
