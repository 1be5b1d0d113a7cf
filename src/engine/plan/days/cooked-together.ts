import Fraction from 'fraction.js';
import type { Quantity } from '../../measure/quantity.ts';
import type { EventPlan, PlannedPurchase } from '../event-plan.ts';
import { dayBatches } from './day-batches.ts';

/**
 * Plans with what they buy as their days cook it: where several events share the batches of a recipe, each of its uses
 * is the event's own times the batches cooked ÷ the batches that each would take by itself. Summed over the events, that is
 * what the day's card weighs out. Everything else of a plan stays as it is, and so does a plan that shares nothing.
 */
export function cookedTogether(plans: readonly EventPlan[]): EventPlan[] {
  const shares = sharesOf(plans);
  return plans.map((plan) => {
    const own = shares.get(plan.input.id);
    return own ? { ...plan, purchases: plan.purchases.map((each) => scaled(each, own)) } : plan;
  });
}

/** By event and recipe, what is cooked of what the event would cook by itself; only where that is less than all. */
function sharesOf(plans: readonly EventPlan[]): Map<string, Map<string, Fraction>> {
  const shares = new Map<string, Map<string, Fraction>>();
  for (const date of new Set(plans.flatMap(({ days }) => days.map((day) => day.date))))
    for (const { recipe, events, batches, separate } of dayBatches(plans, date)) {
      if (events.length < 2 || batches.gte(separate)) continue;
      for (const { plan } of events) {
        const own = shares.get(plan.input.id) ?? new Map<string, Fraction>();
        shares.set(plan.input.id, own.set(recipe.id, batches.div(separate)));
      }
    }
  return shares;
}

function scaled(bought: PlannedPurchase, shares: ReadonlyMap<string, Fraction>): PlannedPurchase {
  if (!bought.usedBy.some(({ recipe }) => shares.has(recipe))) return bought;
  const usedBy = bought.usedBy.map((use) => {
    const share = shares.get(use.recipe);
    if (!share) return use;
    const need: Quantity = { amount: use.need.amount.mul(share), unit: use.need.unit };
    return {
      recipe: use.recipe,
      need,
      // Said only when asked, as it was planned.
      get why() {
        return use.why;
      },
    };
  });
  const amount = usedBy.reduce((sum, { need }) => sum.add(need.amount), new Fraction(0n));
  return { ...bought, need: { amount, unit: bought.need.unit }, usedBy };
}
