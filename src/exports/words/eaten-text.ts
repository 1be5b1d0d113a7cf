import { nearFraction } from '../../engine/learning/near-fraction.ts';
import { HALF_WAY_EVENTS } from '../../engine/learning/proposed-amount.ts';
import { EATEN_CONFIDENCE, type EatenDish } from '../../offers/learned/eaten-so-far.ts';
import type { Say } from '../../words/words-in.ts';
import { decimalAmountText } from './each-text.ts';

/** What earlier events tell of a dish, printed; texts are empty for what nobody can say yet. */
export interface EatenText {
  /** How many events it rests on, and at how many of them nothing was left. */
  readonly events: number;
  readonly nothingLeft: number;
  /** `0.88 pieces`, for each guest who came: the mean, its interval, how much events vary. */
  readonly mean: string;
  readonly from: string;
  readonly to: string;
  readonly spread: string;
  /** The most that was eaten where nothing was left, which is the least that guests would eat there. */
  readonly atLeast: string;
  /** The same in a sentence without full stop. */
  readonly said: string;
}

/** What few events are worth. */
export function fewEventsText(say: Say): string {
  return say('leftovers.note.few', { half: HALF_WAY_EVENTS, most: HALF_WAY_EVENTS * 3 });
}

/** What all earlier events tell of a dish, for people and programs. */
export function eatenText({ estimate, unit, style }: EatenDish, say: Say): EatenText {
  const { events, ranOut, mean, from, to, spread, atLeast } = estimate;
  const print = (value: number | undefined) =>
    value === undefined ? '' : decimalAmountText({ amount: nearFraction(value), unit });
  const texts = {
    mean: print(mean),
    from: print(from),
    to: print(to),
    spread: print(spread),
    atLeast: print(atLeast),
  };
  return { events, nothingLeft: ranOut, ...texts, said: saidOf(texts, events, ranOut, style, say) };
}

function saidOf(
  { mean, from, to, atLeast }: Pick<EatenText, 'mean' | 'from' | 'to' | 'atLeast'>,
  events: number,
  ranOut: number,
  style: string,
  say: Say,
): string {
  const at = { n: events, style };
  if (mean === '')
    return ranOut === events
      ? say('leftovers.eaten.least', { ...at, least: atLeast })
      : say('leftovers.eaten.least-of-one', { ...at, least: atLeast, out: ranOut });
  const [inAll, whereOut] = KEYS[from === '' ? 'one' : from === to ? 'about' : 'range'];
  const values = { ...at, mean, from, to, sure: `${EATEN_CONFIDENCE * 100} %` };
  return ranOut === 0 ? say(inAll, values) : say(whereOut, { ...values, out: ranOut });
}

/** By what is known of the mean: without and with events at which nothing was left. */
const KEYS = {
  one: ['leftovers.eaten.one', 'leftovers.eaten.one-out'],
  about: ['leftovers.eaten.about', 'leftovers.eaten.about-out'],
  range: ['leftovers.eaten.range', 'leftovers.eaten.range-out'],
} as const;
