import Fraction from 'fraction.js';
import { convert } from '../../measure/conversions.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { unitKind } from '../../measure/units.ts';
import { plannedIce } from '../drinks/drinks-plan.ts';
import type { EventPlan } from '../event-plan.ts';
import type { PackedKit } from './kit.ts';

/** Whether plain water for guests goes along: it is bought, or the place is not known to have any. */
export function bringsWater({ input }: Pick<EventPlan, 'input'>): boolean {
  return input.drinks?.habits.water !== undefined || input.venueKit?.water !== true;
}

/**
 * What the ice of the drinks, the plain water that goes along, and kit that is measured by weight or by volume weigh
 * together, in grams, exact. What is measured by volume counts as water, which all of the usual kit's is.
 */
export function suppliesGrams(plan: EventPlan, kit: readonly PackedKit[]): Fraction {
  const ice = plan.input.drinks && plannedIce(plan.drinks, plan.input.drinks)?.total;
  const water = bringsWater(plan) ? plan.drinks.filter(({ dish }) => !dish) : [];
  const amounts = [
    ...(ice ? [ice] : []),
    ...water.map(({ carried }) => carried),
    ...kit.filter(isMeasured).map(({ count }) => count),
  ];
  return amounts.reduce((sum, each) => sum.add(gramsOf(each) ?? 0n), new Fraction(0n));
}

/** Whether a piece of kit is measured, so that its weight is known: 10 gallons, and not one box. */
export function isMeasured({ count }: Pick<PackedKit, 'count'>): boolean {
  return unitKind(count.unit) !== 'count';
}

/** A milliliter of water weighs a gram. */
function gramsOf(amount: Quantity): Fraction | undefined {
  return (convert(amount, 'g', []) ?? convert(amount, 'ml', []))?.amount;
}
