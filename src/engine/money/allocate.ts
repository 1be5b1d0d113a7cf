import { minorUnits } from './currency.ts';
import { Decimal, ZERO } from './decimal.ts';
import { type Money, noMoney } from './money.ts';

/**
 * Splits a sum (already at its minor unit) over parts in proportion to their weights, each part at the minor
 * unit and all parts summing exactly to the sum. Each part is the difference of two rounded running shares
 * (half-up), so that no part is more than one minor unit from its exact share. Weights are not negative; where
 * all are 0 every part is 0 and nothing is split.
 */
export function allocate(m: Money, weights: readonly Decimal[]): Money[] {
  const whole = weights.reduce((total, weight) => total.plus(weight), ZERO);
  if (whole.isZero()) return weights.map(() => noMoney(m.currency));
  const digits = minorUnits(m.currency);
  let running = ZERO;
  let given = ZERO;
  return weights.map((weight) => {
    running = running.plus(weight);
    const due = m.amount.times(running).div(whole).toDecimalPlaces(digits, Decimal.ROUND_HALF_UP);
    const part = due.minus(given);
    given = due;
    return { amount: part, currency: m.currency };
  });
}
