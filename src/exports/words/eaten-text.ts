import { nearFraction } from '../../engine/learning/near-fraction.ts';
import { HALF_WAY_EVENTS } from '../../engine/learning/proposed-amount.ts';
import { EATEN_CONFIDENCE, type EatenDish } from '../../offers/learned/eaten-so-far.ts';
import { decimalAmountText } from './each-text.ts';

/** What earlier events tell of a dish, printed; texts are empty for what nobody can say yet. */
export interface EatenText {
  /** How many events it rests on, and at how many of them nothing was left. */
  readonly events: number;
  readonly nothingLeft: number;
  /** `0.88 piece`, for each guest who came: the mean, where it lies, how far events lie apart. */
  readonly mean: string;
  readonly from: string;
  readonly to: string;
  readonly spread: string;
  /** The most that was eaten where nothing was left, which is the least that guests would eat there. */
  readonly atLeast: string;
  /** The same in a sentence without full stop. */
  readonly said: string;
}

/** What few events are worth, as a sentence. */
export const FEW_EVENTS = `With ${HALF_WAY_EVENTS} events, what was eaten counts for half of a proposed amount; with ${HALF_WAY_EVENTS * 3}, three quarters. The current amount counts for the rest`;

/** What all earlier events tell of a dish, for people and programs. */
export function eatenText({ estimate, unit, style }: EatenDish): EatenText {
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
  return { events, nothingLeft: ranOut, ...texts, said: saidOf(texts, events, ranOut, style) };
}

function saidOf(
  { mean, from, to, atLeast }: Pick<EatenText, 'mean' | 'from' | 'to' | 'atLeast'>,
  events: number,
  ranOut: number,
  style: string,
): string {
  const where = `at ${events} earlier ${events === 1 ? 'event' : 'events'} with this menu (${style})`;
  const sure = `${EATEN_CONFIDENCE * 100} %`;
  if (mean === '')
    return `${where} each guest ate ${atLeast} or more: nothing was left at ${ranOut === events ? 'any of them' : `${ranOut} of them`}`;
  const range =
    from === ''
      ? 'one event can’t show how much events vary'
      : from === to
        ? `the average is about ${from} (${sure} interval)`
        : `the average is from ${from} to ${to} (${sure} interval)`;
  const least = ranOut === 0 ? '' : `; at ${ranOut} nothing was left, so guests may have wanted more there`;
  return `${where} each guest ate ${mean}; ${range}${least}`;
}
