import { durationText, minutes } from '../../engine/measure/duration.ts';
import type { StartReason, TimedStep } from '../../engine/plan/clock/clock-step.ts';
import type { TimelineWhy } from '../../engine/plan/clock/event-timeline.ts';
import type { WordKey } from '../../words/catalogues.ts';
import type { Say } from '../../words/words-in.ts';
import { clockOf } from './clock-text.ts';
import type { ClockWords } from './clock-words.ts';
import { cooledText } from './cooling-words.ts';
import { skillText } from './skill-text.ts';

/** Why a part of an event's day has its hours. */
export function timelineWhy(why: TimelineWhy, say: Say): string {
  const time = 'minutes' in why ? durationText(minutes(why.minutes)) : '';
  switch (why.kind) {
    case 'takes':
      return say('clock.why.takes', { time });
    case 'before serving':
      return say('clock.why.before-serving', { time });
    case 'on the road':
      return say('clock.why.on-the-road', { time });
    case 'usual set-up':
      return say('clock.why.usual-set-up', { time });
    case 'cook':
      return say('clock.why.cook', { dish: why.dish });
    case 'finish':
      return say('clock.why.finish', { time: durationText(minutes(why.handsOn)), people: why.people });
    case 'course':
      return say('clock.why.course');
    case 'discard':
      return say('clock.why.left-control', {
        time: clockOf(why.at),
        within: durationText(minutes(why.within)),
      });
    case 'travel not stated':
      return say('clock.why.travel-not-stated');
    case 'service not stated':
      return say('clock.why.service-not-stated');
    case 'packed up':
      return say('clock.why.packed-up');
    case 'way back':
      return say('clock.why.way-back');
  }
}

/** Why a step begins when it does, `since packing starts at 14:10`; empty where nothing holds it there. */
export function startWhy({ why, batch, number: own }: TimedStep, words: Omit<ClockWords, 'locale'>): string {
  const { say } = words;
  if (why.kind === 'none') return '';
  if (why.kind === 'in use') return inUseWhy(why, words);
  const time = clockOf(why.at);
  if (why.kind === 'crew comes') return say('clock.start.crew-comes', { time });
  if (why.kind === 'crew goes') return say('clock.start.crew-goes', { time });
  if (why.kind === 'after') {
    const { recipe, number } = why;
    return recipe === batch.recipe.name
      ? say('clock.start.after-own', { number, time })
      : say('clock.start.after', { recipe, number, time });
  }
  const { of } = why;
  if (of.kind === 'cold' && of.first)
    return say('clock.start.cooled', { time, first: cooledText(of.first, words) });
  if (of.kind !== 'step') return say(NEXT[of.kind], { time });
  const { recipe, number } = of;
  if (recipe === batch.recipe.name && number === own) return say('clock.start.next-wave', { time });
  return recipe === batch.recipe.name
    ? say('clock.start.own-step', { number, time })
    : say('clock.start.step', { recipe, number, time });
}

const NEXT = {
  pack: 'clock.start.pack',
  load: 'clock.start.load',
  serve: 'clock.start.serve',
  cold: 'clock.start.cold',
} as const satisfies Readonly<Record<string, WordKey>>;

const IN_HAND = { pack: 'clock.packing', load: 'clock.loading' } as const;

function inUseWhy(
  { what, name, by: holder, from, until }: Extract<StartReason, { kind: 'in use' }>,
  { say, stations, equipment }: Omit<ClockWords, 'locale'>,
): string {
  const by = holder.kind === 'step' ? holder.recipe : say(IN_HAND[holder.kind]);
  const side = from === undefined ? 'until' : 'from';
  const time = clockOf(from ?? until ?? 0);
  if (what === 'hands') return say('clock.start.hands', { by, side, time });
  if (what === 'skill') return say('clock.start.skill', { skill: skillText(name), by, side, time });
  const where = what === 'station' ? (stations.get(name) ?? name) : (equipment.get(name)?.name ?? name);
  return say('clock.start.taken', { where, by, side, time });
}
