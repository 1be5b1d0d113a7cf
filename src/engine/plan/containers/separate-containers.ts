import Fraction from 'fraction.js';
import { isAllergy, parseNeed } from '../../food/need.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { statement } from '../../text/statement.ts';
import type { DishPortions } from '../event-input.ts';
import type { PlannedContainer } from '../event-plan.ts';
import { plainAmount } from '../figure-text.ts';

/**
 * The containers of portions made separately: for an allergy one sealed container for each guest; else one of their own,
 * unless they fill a whole one of the kitchen's (`usual`, as the recipe packs them). They never share one with
 * the dish they are made separately from.
 */
export function separateContainers(
  portions: DishPortions,
  need: Quantity,
  usual: readonly PlannedContainer[],
): PlannedContainer[] {
  const sealed = isSealed(portions);
  if (!sealed && usual.some(({ stage, count }) => stage === 'carry' && count > 1)) return [...usual];
  const count = sealed ? Number(portions.guests.ceil().n) : 1;
  const each = { ...need, amount: need.amount.div(BigInt(count)) };
  return [
    {
      stage: 'carry',
      container: 'own',
      containerName: statement(sealed ? 'labels.container.sealed' : 'labels.container.own'),
      count,
      lastFull: new Fraction(1n),
      each,
      last: each,
      why: [
        sealed
          ? statement('why.sealed', { amount: plainAmount(each) })
          : statement('why.own', { amount: plainAmount(need) }),
      ],
    },
  ];
}

/** Whether portions made separately are for guests with an allergy, so that each is sealed. */
export function isSealed(portions: DishPortions | undefined): boolean {
  return (
    portions?.apart !== undefined &&
    portions.needs.some((each) => {
      const need = parseNeed(each.need);
      return !need.ok || isAllergy(need.value);
    })
  );
}
