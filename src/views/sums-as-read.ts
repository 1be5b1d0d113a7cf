import type { Terms } from '../engine/quote/terms.ts';
import type { PlanOrder, PlanPurchase } from '../exports/form/buying.ts';
import type { PlanChangesDocument } from '../exports/form/changes.ts';
import type { PlanOdds } from '../exports/form/odds.ts';
import type { PrepPlanDocument } from '../exports/form/prep-plan.ts';
import type { Figures } from '../exports/form/text.ts';
import { figuresAsRead } from '../exports/words/figures-as-read.ts';
import { shown } from './quote-view-of.ts';

/** A currency, and the locale whose people read its sums. */
type Sums = Pick<Terms, 'currency' | 'locale'>;

/**
 * A prep plan for people: each sum, clock, percentage and decimal as the locale writes it, `$1,234.50` and `5:30 PM` where
 * the document's data has `1234.50` and, in one place, `USD`, and `17:30`. All else is as it was. Fails for a plan that is
 * read so already.
 */
export function planAsRead(plan: PrepPlanDocument, locale: string): PrepPlanDocument {
  const { event, odds, lastChange } = plan;
  const sums = { currency: event.currency, locale };
  return figuresAsRead(
    {
      ...plan,
      event: {
        ...event,
        payments: event.payments.map((row) => ({ ...row, amount: shown(row.amount, sums) })),
        received: event.received.map((row) => ({ ...row, amount: shown(row.amount, sums) })),
        total: shown(event.total, sums),
      },
      ...(odds && { odds: oddsAsRead(odds, sums) }),
      shopping: plan.shopping.map((bought) => purchaseAsRead(bought, sums)),
      orders: plan.orders.map((order) => orderAsRead(order, sums)),
      foodCost: plan.foodCost && shown(plan.foodCost, sums),
      deliveryFees: shown(plan.deliveryFees, sums),
      foodUsed: plan.foodUsed && shown(plan.foodUsed, sums),
      lastChange: lastChange && sumsOfChange(lastChange, sums),
    },
    locale,
  );
}

/** What a change makes of a plan, for people. */
export function changeAsRead(change: PlanChangesDocument, sums: Sums): PlanChangesDocument {
  return figuresAsRead(sumsOfChange(change, sums), sums.locale);
}

function sumsOfChange(change: PlanChangesDocument, sums: Sums): PlanChangesDocument {
  const { orders, deliveryFees, payments, balance } = change;
  const read = <F extends Figures>(rows: readonly F[]) =>
    rows.map((row) => ({ ...row, ...changedAsRead(row, sums) }));
  return {
    ...change,
    ...(orders && { orders: read(orders) }),
    ...(deliveryFees && { deliveryFees: read(deliveryFees) }),
    ...(payments && { payments: read(payments) }),
    ...(balance && { balance: changedAsRead(balance, sums) }),
    total: changedAsRead(change.total, sums),
    foodCost: changedAsRead(change.foodCost, sums),
  };
}

/** An order of one supplier, for people. */
export function orderAsRead(order: PlanOrder, sums: Sums): PlanOrder {
  return {
    ...order,
    goods: shown(order.goods, sums),
    minimumOrder: shown(order.minimumOrder, sums),
    deliveryFee: shown(order.deliveryFee, sums),
    total: shown(order.total, sums),
    short: order.short && shown(order.short, sums),
  };
}

function purchaseAsRead(bought: PlanPurchase, sums: Sums): PlanPurchase {
  return {
    ...bought,
    packs: bought.packs.map((pack) => ({
      ...pack,
      price: shown(pack.price, sums),
      cost: shown(pack.cost, sums),
    })),
    leftWorth: bought.leftWorth && shown(bought.leftWorth, sums),
    cost: bought.cost && shown(bought.cost, sums),
  };
}

function oddsAsRead(odds: PlanOdds, sums: Sums): PlanOdds {
  return {
    ...odds,
    dishes: odds.dishes.map((dish) => ({
      ...dish,
      more: dish.more.map((each) => ({ ...each, cost: each.cost && shown(each.cost, sums) })),
      advice: dish.advice && {
        ...dish.advice,
        missing: shown(dish.advice.missing, sums),
        leftOver: shown(dish.advice.leftOver, sums),
      },
    })),
  };
}

/** The difference keeps its sign, as other figures of a change do: `+$3.75`, `−$3.75`. */
function changedAsRead({ before, after, by }: Figures, sums: Sums): Figures {
  return {
    before: before && shown(before, sums),
    after: after && shown(after, sums),
    by: by && `${by.slice(0, 1)}${shown(by.slice(1), sums)}`,
  };
}
