import { type Money, roundToMinor } from '../../money/money.ts';

/** What so many minutes of work cost, half-up to the minor unit; negative for fewer. */
export function payFor(work: number, { amount, currency }: Money): Money {
  return roundToMinor({ amount: amount.times(work).div(60), currency });
}
