import type Fraction from 'fraction.js';
import { PRICE_TIMES_OFF } from '../alarm-limits.ts';
import { compareDays, type Day } from '../calendar/day.ts';
import { type Conversion, convert } from '../measure/conversions.ts';
import { displayMoney } from '../money/display-money.ts';
import { money, roundToMinor } from '../money/money.ts';
import { packKey, packsOn } from './packs-on.ts';
import { decimalOfFraction, fractionOfPrice } from './price-fraction.ts';
import type { PricedPack } from './price-list.ts';

/** A price that no buyer would sign unseen. */
export interface PriceAlarm {
  readonly code: 'price-nothing' | 'price-far-off' | 'price-jumped';
  /** The pack whose price it is, and the one it was set against. */
  readonly pack: PricedPack;
  readonly against: PricedPack | undefined;
  readonly what: string;
  readonly wayOut: string;
}

/** How money is shown. */
export interface MoneyShown {
  readonly currency: string;
  readonly locale: string;
}

/** What a pack costs for one of a unit. */
interface Rated {
  readonly pack: PricedPack;
  readonly rate: Fraction;
}

/**
 * Prices of a food, from all lists and all days, that are wrong by all appearances on a day: a pack that costs nothing;
 * packs that cost five times what the food's others do for the same amount, or a fifth; a pack that costs five times
 * what it did before, or a fifth. Each pack is told once. Compared exactly.
 */
export function priceAlarms(
  packs: readonly PricedPack[],
  conversions: readonly Conversion[],
  day: Day,
  shown: MoneyShown,
): PriceAlarm[] {
  const offered = packsOn(packs, day);
  const free = offered.filter(({ price }) => price.isZero());
  const unit = offered[0]?.contents.unit ?? 'each';
  const off = farOff(ratesOf(offered, unit, conversions), unit, shown);
  const told = new Set([...free, ...off.map(({ pack }) => pack)]);
  return [
    ...free.map((pack): PriceAlarm => {
      const what = `“${pack.packText}” of ${pack.ingredient} from ${pack.supplier} costs nothing`;
      const wayOut = 'write what it costs, or delete the row';
      return { code: 'price-nothing', pack, against: undefined, what, wayOut };
    }),
    ...off,
    ...offered.flatMap((pack) => (told.has(pack) ? [] : jumped(pack, packs, shown))),
  ];
}

/** Packs that cost something and that a unit measures, the least rate first. */
function ratesOf(packs: readonly PricedPack[], unit: string, conversions: readonly Conversion[]): Rated[] {
  return packs
    .flatMap((pack) => {
      const size = convert(pack.contents, unit, conversions)?.amount;
      return size && !pack.price.isZero() ? [{ pack, rate: fractionOfPrice(pack.price).div(size) }] : [];
    })
    .sort((a, b) => a.rate.compare(b.rate));
}

/*
 * Where the rates fall into two groups, the smaller group is told, since most packs are listed right; of two groups
 * alike the cheaper, which an order would take.
 */
function farOff(rated: readonly Rated[], unit: string, shown: MoneyShown): PriceAlarm[] {
  let widest = PRICE_TIMES_OFF;
  let at: number | undefined;
  for (const [index, { rate }] of rated.entries()) {
    const below = rated[index - 1]?.rate;
    if (!below || rate.div(below).lt(widest)) continue;
    widest = rate.div(below);
    at = index;
  }
  if (at === undefined) return [];
  const [cheap, dear] = [rated.slice(0, at), rated.slice(at)];
  const fewer = cheap.length <= dear.length ? cheap : dear;
  const against = (fewer === cheap ? dear[0] : cheap.at(-1)) as Rated;
  const show = ({ rate }: Rated) => {
    const sum = roundToMinor(money(decimalOfFraction(rate), shown.currency));
    return `${displayMoney(sum, shown.locale)} per ${unit}`;
  };
  return fewer.map((each) => {
    const [low, high] = fewer === cheap ? [each, against] : [against, each];
    const what = `“${high.pack.packText}” of ${each.pack.ingredient} from ${high.pack.supplier} costs ${show(high)}, “${low.pack.packText}” from ${low.pack.supplier} ${show(low)}: ${timesText(high.rate.div(low.rate))} as much`;
    const wayOut = 'check the pack and price of both before you order';
    return { code: 'price-far-off', pack: each.pack, against: against.pack, what, wayOut };
  });
}

function jumped(pack: PricedPack, packs: readonly PricedPack[], shown: MoneyShown): PriceAlarm[] {
  const before = packs
    .filter((each) => each.supplier === pack.supplier && packKey(each.packText) === packKey(pack.packText))
    .filter(({ validFrom, price }) => compareDays(validFrom, pack.validFrom) < 0 && !price.isZero())
    .sort((a, b) => compareDays(a.validFrom, b.validFrom))
    .at(-1);
  if (!before) return [];
  const times = fractionOfPrice(pack.price).div(fractionOfPrice(before.price));
  const up = times.gte(PRICE_TIMES_OFF);
  if (!up && times.inverse().lt(PRICE_TIMES_OFF)) return [];
  const show = ({ price }: PricedPack) =>
    displayMoney(roundToMinor(money(price, shown.currency)), shown.locale);
  const change = `${timesText(up ? times : times.inverse())} as much${up ? '' : ' before'}`;
  const what = `“${pack.packText}” of ${pack.ingredient} from ${pack.supplier} costs ${show(pack)} from ${pack.validFrom} on and cost ${show(before)} until then: ${change}`;
  const wayOut = 'check its pack and price before you order';
  return [{ code: 'price-jumped', pack, against: before, what, wayOut }];
}

/** `20 times`, rounded down. */
function timesText(times: Fraction): string {
  return `${times.floor().n} times`;
}
