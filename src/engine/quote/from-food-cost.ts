import { Decimal } from '../money/decimal.ts';

/**
 * The price per head at which food costs at most the target share of it: cost ÷ target, rounded up to a whole
 * number of steps (`0.50`, `1.00`). Exact; a quotient that is a whole number of steps stays. Throws where target
 * or step is not above zero, or the cost is below it.
 */
export function perHeadFromFoodCost(cost: Decimal, target: Decimal, step: Decimal): Decimal {
  if (!target.gt(0)) throw new RangeError('the food-cost target must be above 0 %');
  if (!step.gt(0)) throw new RangeError('the step to round up to must be above nothing');
  if (cost.lt(0)) throw new RangeError('a food cost cannot be negative');
  const costOfStep = step.times(target);
  const whole = cost.divToInt(costOfStep);
  const steps = whole.times(costOfStep).lt(cost) ? whole.plus(1) : whole;
  return new Decimal(steps.times(step));
}
