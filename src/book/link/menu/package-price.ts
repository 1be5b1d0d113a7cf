import type { PackagePrice } from '../../../engine/menu/package.ts';
import { parseGuestRange } from '../../../engine/menu/parse-guest-range.ts';
import { minorUnits } from '../../../engine/money/currency.ts';
import { exactMoneyText } from '../../../engine/money/money.ts';
import { parseMoney } from '../../../engine/money/parse-money.ts';
import { parseRate, rateText } from '../../../engine/money/rate.ts';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';
import { type PriceTier, tierProblems } from '../../../engine/quote/tiers.ts';
import type { PackageText } from '../../../schema/package.ts';
import { asFinding } from '../../findings/words.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

type PriceText = PackageText['price'];

/** How a package is priced: stated by guest count, or from the share of the price that food may cost. */
export function linkPackagePrice(
  reading: Reading,
  text: PriceText,
  minimumGuests: number,
  currency: string,
): PackagePrice | undefined {
  return text.kind === 'tiers'
    ? linkTiers(reading, text.tiers, minimumGuests, currency)
    : linkFoodCost(reading, text, minimumGuests, currency);
}

function linkTiers(
  reading: Reading,
  texts: Readonly<Record<string, string>>,
  minimumGuests: number,
  currency: string,
): PackagePrice | undefined {
  const tiers: { key: string; tier: PriceTier }[] = [];
  for (const [key, text] of Object.entries(texts)) {
    const path = ['price', 'tiers', key];
    const range = reading.understand(path, key, parseGuestRange, 'key');
    const price = reading.understand(path, text, (words) => parseMoney(words, currency, { unitPrice: true }));
    if (range && price) tiers.push({ key, tier: { ...range, perHead: exactMoneyText(price) } });
  }
  if (tiers.length < Object.keys(texts).length) return undefined;
  tiers.sort((a, b) => a.tier.from - b.tier.from);
  const isWhole = tellTierProblems(reading, tiers, minimumGuests);
  return isWhole ? { kind: 'tiers', tiers: tiers.map(({ tier }) => tier) } : undefined;
}

/** Adding tiers one by one tells at which of them a problem comes up. True where there is none. */
function tellTierProblems(
  reading: Reading,
  tiers: readonly { key: string; tier: PriceTier }[],
  minimumGuests: number,
): boolean {
  const sorted = tiers.map(({ tier }) => tier);
  let told = 0;
  for (let count = Math.min(1, sorted.length); count <= sorted.length; count += 1) {
    const problems = tierProblems(sorted.slice(0, count), minimumGuests);
    const path = count === 0 ? ['price'] : ['price', 'tiers', tiers[count - 1]?.key ?? ''];
    for (const problem of problems.slice(told)) {
      const { what, wayOut } = asFinding(problem);
      const first = tiers[0]?.tier.from ?? 0;
      const orMinimum = count === 1 && first > minimumGuests ? `, or write “minimum guests: ${first}”` : '';
      reading.say('price-tiers', path, what, `${wayOut}${orMinimum}`, 'key');
    }
    told = problems.length;
  }
  return told === 0;
}

function linkFoodCost(
  reading: Reading,
  text: Extract<PriceText, { kind: 'food cost' }>,
  minimumGuests: number,
  currency: string,
): PackagePrice | undefined {
  const target = reading.understand(['price', 'food cost'], text['food cost'], parseTarget);
  const smallest = `${10 ** -minorUnits(currency)}`;
  const step = reading.understand(['price', 'rounded up to'], text['rounded up to'] ?? smallest, (words) =>
    parseStep(words, currency),
  );
  const from = text.for.flatMap((words, index) => {
    const count = reading.understand(['price', 'for', index], words, wholeNumber(1, 100_000));
    return count === undefined ? [] : [count];
  });
  if (target === undefined || step === undefined || from.length < text.for.length) return undefined;
  from.sort((a, b) => a - b);
  const tiers = from.map((first, index): PriceTier => {
    const next = from[index + 1];
    return { from: first, to: next === undefined ? null : next - 1, perHead: '0' };
  });
  for (const problem of tierProblems(tiers, minimumGuests)) {
    const { what, wayOut } = asFinding(problem);
    reading.say('price-tiers', ['price', 'for'], what, wayOut);
  }
  return { kind: 'food cost', target, step, from };
}

function parseTarget(text: string): Parsed<string> {
  const rate = parseRate(text);
  if (!rate.ok) return rate;
  return rate.value.isZero() || rate.value.gt(1)
    ? notParsed(`food can’t cost ${text} of the price`, 'write a percentage above 0 % and up to 100 %')
    : parsed(rateText(rate.value));
}

function parseStep(text: string, currency: string): Parsed<string> {
  const step = parseMoney(text, currency);
  if (!step.ok) return step;
  return step.value.amount.isZero()
    ? notParsed('a price can’t be rounded up to zero', 'write an amount such as "0.50"')
    : parsed(exactMoneyText(step.value));
}
