import { addDays, type Day, daysBetween } from '../../calendar/day.ts';
import { type Money, money, roundToMinor, sum } from '../../money/money.ts';
import type { Supplier } from '../../purchase/price-list.ts';
import type { SettledOrder } from '../../purchase/settle-order.ts';
import { spoils } from '../../purchase/spoilage.ts';
import { type SupplierOrder, supplierOrders } from '../../purchase/supplier-orders.ts';
import { isPinned } from '../../purchase/usable-packs.ts';
import { type Statement, several, statement } from '../../text/statement.ts';
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
): Statement {
  if (food?.toppedUp) return statement('why.pack.topped-up');
  if (food?.lines.every(({ pack }) => isPinned(pack, ingredient.pinned)))
    return statement('why.pack.required');
  if (packs.length === 1) return statement('why.pack.only');
  return statement(spoils(ingredient) ? 'why.pack.chosen-fresh' : 'why.pack.chosen', {
    n: String(packs.length),
  });
}

function shortFindings(
  orders: readonly SupplierOrder[],
  { below, belowProven }: SettledOrder,
): PlanFinding[] {
  return orders
    .filter(({ supplier }) => below.includes(supplier))
    .map(({ supplier, name, goods, minimumOrder, short }) => ({
      about: supplier,
      what: statement(belowProven ? 'found.below-minimum' : 'found.below-minimum-unproven', {
        supplier: name,
        goods,
        short,
        minimum: minimumOrder,
      }),
      wayOut: statement('found.below-minimum.way', { supplier: name }),
    }));
}

function toppedUpFindings({ foods }: SettledOrder, orders: readonly SupplierOrder[]): PlanFinding[] {
  return foods
    .filter(({ toppedUp }) => toppedUp)
    .map(({ ingredient, lines }) => {
      const from = orders.filter(({ supplier }) => lines.some(({ pack }) => pack.supplier === supplier));
      const suppliers = several(
        'and',
        from.map(({ name }) => name),
      );
      return {
        about: ingredient,
        what: statement('found.topped-up', { suppliers }),
        wayOut: statement('found.topped-up.way'),
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
      what: statement('found.order-late', {
        neededOn: { day: neededOn },
        supplier: name,
        orderBy: { day: orderBy },
        deliverOn: { day: deliverOn },
      }),
      wayOut: statement('found.order-late.way', { supplier: name }),
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
      what: statement('found.spoils', {
        food: name,
        deliverOn: { day: deliverOn },
        n: keepsDays,
        lastUse: { day: lastUse },
      }),
      wayOut: statement('found.spoils.way', { day: { day: addDays(lastUse, -keepsDays) } }),
    },
  ];
}

function gapFindings({ gap }: SettledOrder, kitchen: BuyingKitchen): PlanFinding[] {
  if (!gap.gt(0)) return [];
  return [
    {
      about: 'orders',
      what: statement('found.cheaper-order', { sum: gapText(gap, kitchen) }),
      wayOut: statement('found.cheaper-order.way'),
    },
  ];
}
