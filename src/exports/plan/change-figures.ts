import { durationText, minutes } from '../../engine/measure/duration.ts';
import { type Money, moneyText } from '../../engine/money/money.ts';
import type { Figures } from '../form/text.ts';

/** Counts before and after. */
export function counted(before: number, after: number): Figures {
  const by = after - before;
  const sign = by === 0 ? '' : by > 0 ? `+${by}` : `−${-by}`;
  return { before: String(before), after: String(after), by: sign };
}

/** Minutes before and after, as durations. */
export function timed(before: number, after: number): Figures {
  const by = after - before;
  const size = durationText(minutes(Math.abs(by)));
  return {
    before: durationText(minutes(before)),
    after: durationText(minutes(after)),
    by: by === 0 ? '' : by > 0 ? `+${size}` : `−${size}`,
  };
}

/** Money before and after, as money text; empty on a side that has none. `by` is undefined where it is not known. */
export function moneyFigures(before: Money | null, after: Money | null, by: Money | undefined): Figures {
  const text = by === undefined || by.amount.isZero() ? '' : moneyText(by);
  return {
    before: before ? moneyText(before) : '',
    after: after ? moneyText(after) : '',
    by: text === '' || text.startsWith('-') ? text.replace('-', '−') : `+${text}`,
  };
}
