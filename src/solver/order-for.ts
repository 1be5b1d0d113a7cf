import { add, compare, type Money, noMoney, subtract } from '../engine/money/money.ts';
import { cookedTogether } from '../engine/plan/days/cooked-together.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import { mergedNeeds, type PurchaseNeed, purchaseNeeds } from '../engine/plan/purchases/needs.ts';
import type { PlacedOrder } from '../engine/plan/purchases/ordered.ts';
import { buyingRounds } from '../engine/plan/purchases/rounds.ts';
import type { PriceList } from '../engine/purchase/price-list.ts';
import type { StockLot } from '../engine/purchase/stock.ts';
import { type BuyingSetting, placeOrder } from './place-order.ts';

/** What several events buy together. */
export interface JointOrder {
  /** Orders to place, one after the other; a single one unless something would spoil. */
  readonly rounds: readonly PlacedOrder[];
  /** Goods and fees of all rounds; null while a price is missing. */
  readonly total: Money | null;
  /** The same, each event buying for itself. */
  readonly separate: Money | null;
  /** What buying together saves: 0 where each event had better buy for itself, and then the rounds are theirs. */
  readonly saves: Money | null;
}

/**
 * One order for one or several events, and what it saves against an order for each. Recipes that the events' days cook
 * in shared batches are bought for as they are cooked. Stock goes to the events in their order of date. Prices are those of the first event's buying day where a food is bought together.
 */
export async function orderFor(
  plans: readonly EventPlan[],
  prices: PriceList,
  stock: ReadonlyMap<string, readonly StockLot[]>,
  setting: BuyingSetting,
): Promise<JointOrder> {
  const inOrder = plans.toSorted(
    (a, b) => order(a.input.date, b.input.date) || order(a.input.id, b.input.id),
  );
  const events = needsOf(inOrder, prices, stock);
  const apart = await placeAll(events, setting);
  const shared = events.length < 2 ? events : needsOf(cookedTogether(inOrder), prices, stock);
  const together =
    events.length < 2 ? apart : await placeAll(buyingRounds(shared.flat()).map(mergedNeeds), setting);
  const { currency } = setting.kitchen;
  const [total, separate] = [totalOf(together, currency), totalOf(apart, currency)];
  if (total && separate && compare(separate, total) < 0)
    return { rounds: apart, total: separate, separate, saves: noMoney(currency) };
  return { rounds: together, total, separate, saves: total && separate && subtract(separate, total) };
}

/** What each event needs, stock given to them in their order. */
function needsOf(
  plans: readonly EventPlan[],
  prices: PriceList,
  stock: ReadonlyMap<string, readonly StockLot[]>,
): PurchaseNeed[][] {
  let left = stock;
  return plans.map((plan) => {
    const { needs, rest } = purchaseNeeds(plan, prices, left);
    left = rest;
    return [...needs];
  });
}

async function placeAll(rounds: readonly PurchaseNeed[][], setting: BuyingSetting): Promise<PlacedOrder[]> {
  const placed: PlacedOrder[] = [];
  for (const needs of rounds) placed.push(await placeOrder(needs, setting));
  return placed;
}

function totalOf(rounds: readonly PlacedOrder[], currency: string): Money | null {
  let total: Money | null = noMoney(currency);
  for (const { goods, fees } of rounds) total = total && goods && add(total, add(goods, fees));
  return total;
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
