import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import type { Package } from '../../../engine/menu/package.ts';
import { parseGuestRange } from '../../../engine/menu/parse-guest-range.ts';
import { displayMoney } from '../../../engine/money/display-money.ts';
import { money } from '../../../engine/money/money.ts';
import { priceSteps } from '../../../engine/quote/price-steps.ts';
import type { PackageTerms, Terms } from '../../../engine/quote/terms.ts';
import { counted } from '../../../engine/text/counted.ts';
import type { PackageText } from '../../../schema/package.ts';
import type { Reading } from '../grammar/reading.ts';

/** Tells where the menu alone becomes cheaper in all with one more guest. Prices from a food-cost target are not known here. */
export function tellPriceDrops(
  reading: Reading,
  chosen: Package,
  text: PackageText['price'],
  { currency, locale }: Pick<Kitchen, 'currency' | 'locale'>,
): void {
  if (chosen.price.kind !== 'tiers' || text.kind !== 'tiers') return;
  const { tiers } = chosen.price;
  const { id, name, style, neverLessInAll, tierCounts, child, vendor, minimumGuests } = chosen;
  const alone: PackageTerms = {
    id,
    name,
    style,
    tiers,
    neverLessInAll,
    tierCounts,
    child,
    vendor,
    minimumGuests,
    courses: [],
  };
  const show = (sum: string) => displayMoney(money(sum, currency), locale);
  for (const { guests, total, totalOfOneMore } of priceSteps(termsOf(alone, currency), alone)) {
    const what = `${counted(guests, 'guest')} ${guests === 1 ? 'pays' : 'pay'} ${show(total)} for the menu and ${guests + 1} pay ${show(totalOfOneMore)}`;
    const wayOut = 'write “never less in all: yes”, or make the step smaller';
    const key = Object.keys(text.tiers).find((each) => beginsAt(each) === guests + 1) ?? '';
    reading.say('price-drop', ['price', 'tiers', key], what, wayOut);
  }
}

function beginsAt(range: string): number | undefined {
  const read = parseGuestRange(range);
  return read.ok ? read.value.from : undefined;
}

/** Terms of nothing but the menu, untaxed. */
function termsOf(alone: PackageTerms, currency: string): Terms {
  const no = '0 %';
  const tax = { food: no, drink: no, 'service charge': no, rental: no, labour: no, delivery: no };
  return {
    version: 1,
    currency,
    locale: 'en-US',
    taxBy: 'invoice',
    place: { id: 'anywhere', name: 'Anywhere', taxIncluded: false, tax },
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
    guarantee: { daysBefore: 0, floorRate: '100 %' },
  };
}
