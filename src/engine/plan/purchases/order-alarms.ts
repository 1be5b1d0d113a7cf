import Fraction from 'fraction.js';
import { FEW_CENTS, LEFT_TIMES_USED, MOST_PACKS_IN_A_LINE } from '../../alarm-limits.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { displayMoney } from '../../money/display-money.ts';
import { money, roundToMinor } from '../../money/money.ts';
import { coverWithin } from '../../purchase/cheapest-cover.ts';
import { type PriceAlarm, priceAlarms } from '../../purchase/price-alarms.ts';
import { decimalOfFraction, fractionOfPrice } from '../../purchase/price-fraction.ts';
import type { PricedPack } from '../../purchase/price-list.ts';
import type { SettledOrder } from '../../purchase/settle-order.ts';
import type { SupplierOrder } from '../../purchase/supplier-orders.ts';
import { commonMeasure, measuredPacks } from '../../purchase/usable-packs.ts';
import { several, statement } from '../../text/statement.ts';
import type { PlanFinding } from '../event-plan.ts';
import { plainAmount } from '../figure-text.ts';
import type { BuyingKitchen } from './buying-kitchen.ts';
import type { PurchaseNeed } from './needs.ts';

/** Something in an order that no buyer would sign unseen, and the pack it is about. */
export interface OrderAlarm extends PlanFinding {
  readonly code: PriceAlarm['code'] | 'order-line-long' | 'left-over-long';
  readonly pack: PricedPack;
}

type Line = SettledOrder['foods'][number]['lines'][number];

/** What a buyer is asked to look at before an order goes out: prices, lines of very many packs, much left over. */
export function orderAlarms(
  needs: readonly PurchaseNeed[],
  foods: SettledOrder['foods'],
  orders: readonly SupplierOrder[],
  kitchen: BuyingKitchen,
): OrderAlarm[] {
  return needs.flatMap((need): OrderAlarm[] => {
    const { id } = need.ingredient;
    const food = foods.find(({ ingredient, unit }) => ingredient === id && unit === need.need.unit);
    if (!food || food.lines.length === 0) return [];
    const bought = new Set(food.lines.map(({ pack }) => pack));
    const ofPrices = priceAlarms(need.listed, need.ingredient.conversions, need.buyingDay, kitchen)
      .filter(({ pack, against }) => bought.has(pack) || (against !== undefined && bought.has(against)))
      .map(({ code, pack, what, wayOut }) => ({ code, pack, about: id, what, wayOut }));
    const long = food.lines
      .filter(({ count }) => count > MOST_PACKS_IN_A_LINE)
      .map((line) => longLine(need, line));
    const left = food.toppedUp ? undefined : leftOver(need, food.lines, orders, kitchen);
    return [...ofPrices, ...long, ...(left ? [left] : [])];
  });
}

function longLine({ ingredient, need }: PurchaseNeed, { pack, count }: Line): OrderAlarm {
  return {
    code: 'order-line-long',
    pack,
    about: ingredient.id,
    what: statement('found.line-long', {
      count: String(count),
      pack: pack.packText,
      food: ingredient.name,
      supplier: pack.supplier,
      amount: plainAmount(need),
    }),
    wayOut: statement('found.line-long.way'),
  };
}

/**
 * More than twice of what is used would be left, and packs of the suppliers already in the order leave less for at most
 * a few cents more, every minimum order reached as before.
 */
function leftOver(
  { ingredient, need, stock, packs }: PurchaseNeed,
  lines: readonly Line[],
  orders: readonly SupplierOrder[],
  { currency, locale }: BuyingKitchen,
): OrderAlarm | undefined {
  const [{ pack: first } = { pack: undefined }] = lines;
  const used = need.amount.sub(stock);
  if (!first || used.n === 0n) return undefined;
  const open = packs.filter(({ supplier }) => orders.some((order) => order.supplier === supplier));
  const measured = measuredPacks(need.unit, open, ingredient.conversions, ingredient.pinned);
  const held = sumOf(measured.packs.map(({ pack, size }) => size.mul(BigInt(countOf(lines, pack)))));
  const most = used.mul(LEFT_TIMES_USED);
  if (held.sub(used).lte(most)) return undefined;
  const step = commonMeasure(measured.prices);
  const wanted = used.div(measured.measure);
  const { cover } = coverWithin(
    wanted.ceil().n,
    measured.sizes.map((size, at) => ({ size, cost: (measured.prices[at] as Fraction).div(step).n })),
    wanted.mul(LEFT_TIMES_USED.add(1n)).floor().n - wanted.ceil().n,
  );
  if (!cover) return undefined;
  const instead = measured.packs.flatMap(({ pack }, at) => {
    const count = cover.counts[at] ?? 0;
    return count > 0 ? [{ pack, count }] : [];
  });
  const [costs, before] = [costOf(instead), costOf(lines)];
  const more = costs.sub(before);
  if (more.gt(before.mul(FEW_CENTS)) || breaksMinimum(lines, instead, orders)) return undefined;
  const left: Quantity = { amount: held.sub(used), unit: need.unit };
  const these = instead.map(({ pack, count }) =>
    statement('found.pack-from', { count: String(count), pack: pack.packText, supplier: pack.supplier }),
  );
  const values = {
    used: plainAmount({ amount: used, unit: need.unit }),
    food: ingredient.name,
    left: plainAmount(left),
    packs: several('and', these),
  };
  return {
    code: 'left-over-long',
    pack: first,
    about: ingredient.id,
    what:
      more.s > 0n && more.n > 0n
        ? statement('found.left-long-more', {
            ...values,
            sum: displayMoney(roundToMinor(money(decimalOfFraction(more), currency)), locale),
          })
        : statement('found.left-long', values),
    wayOut: statement('found.left-long.way'),
  };
}

function breaksMinimum(
  lines: readonly Line[],
  instead: readonly Line[],
  orders: readonly SupplierOrder[],
): boolean {
  return orders.some(({ supplier, goods, minimumOrder, short }) => {
    const from = (each: readonly Line[]) => costOf(each.filter(({ pack }) => pack.supplier === supplier));
    const then = new Fraction(goods).sub(from(lines)).add(from(instead));
    return short === '' && then.lt(new Fraction(minimumOrder));
  });
}

function costOf(lines: readonly Line[]): Fraction {
  return sumOf(lines.map(({ pack, count }) => fractionOfPrice(pack.price).mul(BigInt(count))));
}

function countOf(lines: readonly Line[], pack: PricedPack): number {
  return lines.find((line) => line.pack === pack)?.count ?? 0;
}

function sumOf(amounts: readonly Fraction[]): Fraction {
  return amounts.reduce((sum, each) => sum.add(each), new Fraction(0n));
}
