import { addDays, type Day, daysBetween } from '../../calendar/day.ts';
import { type Money, money, roundToMinor, sum } from '../../money/money.ts';
import type { Supplier } from '../../purchase/price-list.ts';
import type { SettledOrder } from '../../purchase/settle-order.ts';
import { spoils } from '../../purchase/spoilage.ts';
import { type SupplierOrder, supplierOrders } from '../../purchase/supplier-orders.ts';
import { isPinned } from '../../purchase/usable-packs.ts';
import type { EventPlan, PlanFinding } from '../event-plan.ts';
import { boughtPurchase, type ValuedPurchase } from './bought.ts';
import type { BuyingKitchen } from './buying-kitchen.ts';
import { gapText } from './gap-text.ts';
import type { PurchaseNeed } from './needs.ts';
import { type OrderAlarm, orderAlarms } from './order-alarms.ts';

/** What an order is placed with. */
export interface OrderSetting {
  readonly suppliers: ReadonlyMap<string, Supplier>;
  readonly kitchen: BuyingKitchen;
  /** A last day to order before this one is past. */
  readonly today: Day;
}

/** A purchase of an order. */
export interface OrderedPurchase extends ValuedPurchase {
  readonly neededOn: Day;
  readonly lastUse: Day;
}

/** What is bought in one order, by food and by supplier. */
export interface PlacedOrder {
  readonly purchases: readonly OrderedPurchase[];
  readonly orders: readonly SupplierOrder[];
  /** Cost of the packs; null while a price is missing. */
  readonly goods: Money | null;
  readonly fees: Money;
  /** What the foods cost that are needed, at the rates of the packs, half-up to the minor unit; null as above. */
  readonly used: Money | null;
  readonly findings: readonly PlanFinding[];
  /** Those of the findings that no buyer would sign unseen, with their packs. */
  readonly alarms: readonly OrderAlarm[];
}

/** A plan whose purchases are one order. */
export interface OrderedPlan extends EventPlan {
  readonly purchases: readonly OrderedPurchase[];
  readonly order: PlacedOrder;
}

/** Turns a settled order into purchases with their whys, orders with their days, and what the owner should know. */
export function placedOrder(
  needs: readonly PurchaseNeed[],
  settled: SettledOrder,
  setting: OrderSetting,
): PlacedOrder {
  const { kitchen, suppliers } = setting;
  const { currency } = kitchen;
  const purchases = needs.map((each): OrderedPurchase => {
    const { ingredient, need, neededOn, lastUse, packs } = each;
    const food = settled.foods.find(({ ingredient: id, unit }) => id === ingredient.id && unit === need.unit);
    const reason = whyThese(each, food);
    const toBuy = { ...each, lines: food?.lines ?? [], reason, offered: packs };
    return { ...boughtPurchase(toBuy, kitchen), neededOn, lastUse };
  });
  const orders = supplierOrders(purchases, suppliers, currency);
  const alarms = orderAlarms(needs, settled.foods, orders, kitchen);
  const costs = purchases.flatMap(({ cost }) => (cost ? [cost] : []));
  const used = purchases.flatMap((each) => (each.used ? [each.used] : []));
  return {
    purchases,
    orders,
    goods: costs.length === purchases.length ? sum(costs, currency) : null,
    fees: sum(
      orders.map(({ deliveryFee }) => money(deliveryFee, currency)),
      currency,
    ),
    used: used.length === purchases.length ? roundToMinor(sum(used, currency)) : null,
    alarms,
    findings: [
      ...alarms.map(({ about, what, wayOut }) => ({ about, what, wayOut })),
      ...shortFindings(orders, settled),
      ...toppedUpFindings(settled, orders),
      ...dayFindings(orders, purchases, setting.today),
      ...gapFindings(settled, kitchen),
    ],
  };
}

function whyThese(
  { ingredient, packs }: PurchaseNeed,
  food: SettledOrder['foods'][number] | undefined,
): string {
  if (food?.toppedUp) return 'more than needed, to reach a minimum order; it keeps';
  if (food?.lines.every(({ pack }) => isPinned(pack, ingredient.pinned)))
    return 'the ingredient requires this pack';
  if (packs.length === 1) return 'the only pack available';
  const fresh = spoils(ingredient)
    ? '; leftovers would spoil, so the smallest pack that will do was chosen'
    : '';
  return `chosen from ${packs.length} packs on offer as part of the cheapest total order, with fees and minimum orders${fresh}`;
}

function shortFindings(
  orders: readonly SupplierOrder[],
  { below, belowProven }: SettledOrder,
): PlanFinding[] {
  return orders
    .filter(({ supplier }) => below.includes(supplier))
    .map(({ supplier, name, goods, minimumOrder, short }) => ({
      about: supplier,
      what: `the order from ${name} comes to ${goods}, ${short} below its minimum order of ${minimumOrder}; ${belowProven ? 'no order of what is needed or will keep reaches' : 'no order was found that reaches'} all minimum orders`,
      wayOut: `ask ${name} to take a small order, or add another supplier’s pack to its price list`,
    }));
}

function toppedUpFindings({ foods }: SettledOrder, orders: readonly SupplierOrder[]): PlanFinding[] {
  return foods
    .filter(({ toppedUp }) => toppedUp)
    .map(({ ingredient, lines }) => {
      const from = orders.filter(({ supplier }) => lines.some(({ pack }) => pack.supplier === supplier));
      const names = from.map(({ name }) => name).join(' and ');
      return {
        about: ingredient,
        what: `more is bought than needed so that the order from ${names} reaches its minimum`,
        wayOut: 'add it to stock.csv when it arrives, or order something else you need instead',
      };
    });
}

function dayFindings(
  orders: readonly SupplierOrder[],
  purchases: readonly OrderedPurchase[],
  today: Day,
): PlanFinding[] {
  return orders.flatMap(({ supplier, name, deliverOn, orderBy, neededOn }) => {
    const late = {
      about: supplier,
      what: `to arrive in time for ${neededOn}, the order from ${name} had to go out by ${orderBy} (delivery on ${deliverOn}), and that date has passed`,
      wayOut: `call ${name} today, or buy elsewhere`,
    };
    // A food whose use begins before today has been bought, whenever it was ordered.
    return [
      ...(orderBy < today && neededOn >= today ? [late] : []),
      ...purchases
        .filter(({ packs }) => packs.some(({ pack }) => pack.supplier === supplier))
        .flatMap((bought) => spoiltFindings(bought, deliverOn)),
    ];
  });
}

function spoiltFindings({ ingredient, lastUse }: OrderedPurchase, deliverOn: Day): PlanFinding[] {
  const { id, name, keepsDays } = ingredient;
  if (keepsDays === undefined || daysBetween(deliverOn, lastUse) <= keepsDays) return [];
  return [
    {
      about: id,
      what: `${name}, delivered on ${deliverOn}, keeps ${keepsDays} ${keepsDays === 1 ? 'day' : 'days'}, but is still needed on ${lastUse}`,
      wayOut: `have it delivered on ${addDays(lastUse, -keepsDays)} or later`,
    },
  ];
}

function gapFindings({ gap }: SettledOrder, kitchen: BuyingKitchen): PlanFinding[] {
  if (!gap.gt(0)) return [];
  return [
    {
      about: 'orders',
      what: `there may be a cheaper order, by at most ${gapText(gap, kitchen)}; the search stopped at its limit`,
      wayOut: 'pin packs with buy: in their ingredients to narrow the search, or leave it',
    },
  ];
}
