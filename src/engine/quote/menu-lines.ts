import { exactMoneyText, type Money, subtract, sum } from '../money/money.ts';
import type { GuestGroup, Guests } from './counts.ts';
import type { LineWhy } from './line-why.ts';
import { mealPrices, shortOfMinimum } from './meal-prices.ts';
import { menuFloor } from './menu-floor.ts';
import { type PricedLine, pricedLine, sumLine } from './priced-line.ts';
import type { PackageTerms, Terms } from './terms.ts';
import { countedForTier, findTier } from './tiers.ts';

/**
 * The menu's lines: adults, children and vendor meals at the tier's prices, adults up to the minimum count, and
 * where the package promises it, what is missing to the price that a smaller party would pay in all.
 */
export function menuLines(terms: Terms, chosen: PackageTerms, guests: Guests): PricedLine[] {
  const counted = countedForTier(chosen, guests);
  const tier = findTier(chosen.tiers, counted);
  const prices = mealPrices(chosen, tier, terms.currency);
  const short = shortOfMinimum(chosen, guests);
  const { name, tiers, minimumGuests: minimum } = chosen;
  const lines: PricedLine[] = [];
  const take = (key: string, named: string, count: number, price: Money, why: () => LineWhy) => {
    if (count === 0) return;
    const line = { key, name: named, class: 'food' as const, unitPrice: price, why };
    lines.push(pricedLine(line, { over: BigInt(count), under: 1n }));
  };
  const meals = (key: string, named: string, group: Exclude<GuestGroup, 'staff'>) => {
    const [count, price] = [guests[group], prices[group]];
    const step = group === 'adults' && tiers.length > 1 ? { from: tier.from, to: tier.to } : null;
    take(key, named, count, price, () => ({
      of: 'meals',
      group,
      count,
      price: exactMoneyText(price),
      tier: step,
    }));
  };
  meals('menu', name, 'adults');
  meals('menu-children', name, 'children');
  meals('menu-vendors', '', 'vendors');
  const price = prices.adults;
  take('menu-minimum', name, short, price, () => ({ of: 'minimum guests', minimum }));
  return chosen.neverLessInAll ? withFloor(terms, chosen, guests, lines) : lines;
}

function withFloor(terms: Terms, chosen: PackageTerms, guests: Guests, lines: PricedLine[]): PricedLine[] {
  const floor = menuFloor(chosen, guests, terms.currency);
  const billed = sum(
    lines.map((line) => line.amount),
    terms.currency,
  );
  const missing = subtract(floor, billed);
  if (!missing.amount.gt(0)) return lines;
  return [
    ...lines,
    sumLine({
      key: 'menu-floor',
      name: chosen.name,
      class: 'food',
      amount: missing,
      why: () => ({ of: 'smaller party', sum: exactMoneyText(floor) }),
    }),
  ];
}
