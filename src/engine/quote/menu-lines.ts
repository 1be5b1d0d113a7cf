import { displayMoney } from '../money/display-money.ts';
import { type Money, subtract, sum } from '../money/money.ts';
import { counted as countText } from '../text/counted.ts';
import type { Guests } from './counts.ts';
import { mealPrices, shortOfMinimum } from './meal-prices.ts';
import { menuFloor } from './menu-floor.ts';
import { type PricedLine, pricedLine, sumLine } from './priced-line.ts';
import type { PackageTerms, Terms } from './terms.ts';
import { countedForTier, findTier, type PriceTier } from './tiers.ts';

/**
 * The menu's lines: adults, children and vendor meals at the tier's prices, adults up to the minimum count, and
 * where the package promises it, what is missing to the price that a smaller party would pay in all.
 */
export function menuLines(terms: Terms, chosen: PackageTerms, guests: Guests): PricedLine[] {
  const counted = countedForTier(chosen, guests);
  const tier = findTier(chosen.tiers, counted);
  const prices = mealPrices(chosen, tier, terms.currency);
  const short = shortOfMinimum(chosen, guests);
  const tierWords = chosen.tiers.length > 1 ? `, the price for ${tierText(tier)}` : '';
  const lines: PricedLine[] = [];
  const take = (
    key: string,
    label: string,
    count: number,
    people: string,
    unitPrice: Money,
    after: string,
  ) => {
    if (count === 0) return;
    const why = () => `${count} ${people} × ${displayMoney(unitPrice, terms.locale)}${after}`;
    lines.push(pricedLine({ key, label, class: 'food', unitPrice, why }, { over: BigInt(count), under: 1n }));
  };
  take(
    'menu',
    chosen.name,
    guests.adults,
    guests.adults === 1 ? 'adult' : 'adults',
    prices.adults,
    tierWords,
  );
  const children = guests.children === 1 ? 'child' : 'children';
  take('menu-children', `${chosen.name}, children`, guests.children, children, prices.children, '');
  const meals = guests.vendors === 1 ? 'vendor meal' : 'vendor meals';
  take('menu-vendors', 'Vendor meals', guests.vendors, meals, prices.vendors, '');
  const minimum = `up to the minimum of ${countText(chosen.minimumGuests, 'guest')}`;
  take('menu-minimum', `${chosen.name}, minimum-guest charge`, short, 'more', prices.adults, `, ${minimum}`);
  return chosen.neverLessInAll ? withFloor(terms, chosen, guests, lines) : lines;
}

/** A tier's guest counts in words: `50 to 99 guests`, `100 guests and more`. */
export function tierText(tier: PriceTier): string {
  return tier.to === null
    ? `${countText(tier.from, 'guest')} and more`
    : `${tier.from} to ${countText(tier.to, 'guest')}`;
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
      label: `${chosen.name}, price-step top-up`,
      class: 'food',
      amount: missing,
      why: () =>
        `a smaller party would pay ${displayMoney(floor, terms.locale)} for the menu; a larger one never pays less in all`,
    }),
  ];
}
