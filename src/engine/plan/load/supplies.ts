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
 * What the ice of the drinks, the plain water that goes along, and kit whose weight is stated or that is measured by weight
 * or by volume weigh together, in grams, exact. What is measured by volume counts as water, which all of the usual kit's is.
 */
export function suppliesGrams(plan: EventPlan, kit: readonly PackedKit[]): Fraction {
  const ice = plan.input.drinks && plannedIce(plan.drinks, plan.input.drinks)?.total;
  const water = bringsWater(plan) ? plan.drinks.filter(({ dish }) => !dish) : [];
  const amounts = [...(ice ? [ice] : []), ...water.map(({ carried }) => carried)];
  const weights = [...amounts.map(gramsOf), ...kit.map(kitGrams)];
  return weights.reduce<Fraction>((sum, each) => sum.add(each ?? 0n), new Fraction(0n));
}

/**
 * What kit weighs, in grams, exact: one of it, as stated, times how many, else its amount where that is measured, 10 gallons
 * and not one box. Undefined where neither tells.
 */
export function kitGrams({ item, count }: Pick<PackedKit, 'item' | 'count'>): Fraction | undefined {
  if (item.grams) return item.grams.mul(count.amount);
  return unitKind(count.unit) === 'count' ? undefined : gramsOf(count);
}

/** Kit whose weight nothing tells, by name; one word for all of it where no item states what one weighs. */
export function unweighedKit(kit: readonly PackedKit[], inOneWord: string): string[] {
  const unknown = kit.filter((each) => !kitGrams(each)).map(({ item }) => item.name);
  return unknown.length > 0 && kit.every(({ item }) => !item.grams) ? [inOneWord] : unknown;
}

/** A milliliter of water weighs a gram. */
function gramsOf(amount: Quantity): Fraction | undefined {
  return (convert(amount, 'g', []) ?? convert(amount, 'ml', []))?.amount;
}
