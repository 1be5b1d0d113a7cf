import type { Kitchen } from '../engine/kitchen/kitchen.ts';
import type { Package } from '../engine/menu/package.ts';
import { priceSteps } from '../engine/quote/price-steps.ts';
import type { PackageTerms, Terms } from '../engine/quote/terms.ts';
import type { PriceTier } from '../engine/quote/tiers.ts';
import type { Book } from './book.ts';
import type { Finding } from './finding.ts';
import { findingAt } from './finding-at.ts';

/** Where the menu alone becomes cheaper in all with one more guest. Prices from a food-cost target are not known here. */
export function checkPackages(book: Book): Finding[] {
  return [...book.packages.values()].flatMap((chosen) => {
    if (chosen.price.kind !== 'tiers') return [];
    const { tiers } = chosen.price;
    const alone = menuAlone(chosen, tiers);
    return priceSteps(termsOf(book.kitchen, alone), alone).map(({ guests, total, totalOfOneMore }) => {
      const { currency } = book.kitchen;
      const what = `${guests} guests pay ${total} ${currency} for the menu and ${guests + 1} pay ${totalOfOneMore}`;
      const wayOut = 'write “never less in all: yes”, or make the step smaller';
      const index = tiers.findIndex((tier) => tier.from === guests + 1);
      const path = ['price', 'tiers', index];
      return findingAt(book, 'price-drop', `package/${chosen.id}`, path, what, wayOut);
    });
  });
}

function menuAlone(chosen: Package, tiers: readonly PriceTier[]): PackageTerms {
  const { id, name, style, neverLessInAll, tierCounts, child, vendor, minimumGuests } = chosen;
  return { id, name, style, tiers, neverLessInAll, tierCounts, child, vendor, minimumGuests, courses: [] };
}

/** Terms of nothing but the menu, untaxed. */
function termsOf(kitchen: Kitchen, alone: PackageTerms): Terms {
  const untaxed = {
    food: '0 %',
    drink: '0 %',
    'service charge': '0 %',
    rental: '0 %',
    labour: '0 %',
    delivery: '0 %',
  };
  return {
    version: 1,
    currency: kitchen.currency,
    locale: kitchen.locale,
    taxBy: kitchen.taxBy,
    place: { id: 'anywhere', name: 'Anywhere', taxIncluded: false, tax: untaxed },
    exempt: true,
    eventDate: '2000-01-01' as Terms['eventDate'],
    packages: [alone],
    addOns: [],
    staff: [],
    delivery: null,
    discount: null,
    serviceCharge: null,
    minimumSpend: null,
    payments: [],
    guarantee: kitchen.guarantee,
  };
}
