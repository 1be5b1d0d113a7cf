import Fraction from 'fraction.js';
import type { Book } from '../book/book.ts';
import type { FindingCode } from '../book/findings/catalogue.ts';
import { type Finding, finding } from '../book/findings/finding.ts';
import { priceRowKey } from '../book/link/prices/price-row-key.ts';
import { ingredientsIn } from '../book/uses.ts';
import { PACKS_FOR_A_MIDDLE, PRICE_BEYOND_SENSE } from '../engine/alarm-limits.ts';
import type { Day } from '../engine/calendar/day.ts';
import { displayMoney } from '../engine/money/display-money.ts';
import { money } from '../engine/money/money.ts';
import { packsOn } from '../engine/purchase/packs-on.ts';
import { priceAlarms } from '../engine/purchase/price-alarms.ts';
import { fractionOfPrice } from '../engine/purchase/price-fraction.ts';
import type { PricedPack } from '../engine/purchase/price-list.ts';

/** Prices, of today and to come, of foods that recipes use, that are wrong by all appearances. Each row is told once. */
export function pricesOff(book: Book, today: Day): Finding[] {
  const used = ingredientsIn(book.recipes.values());
  const told = new Map<string, Finding>();
  const tell = (code: FindingCode, pack: PricedPack, what: string, wayOut: string) => {
    const key = priceRowKey(pack);
    if (!told.has(key)) told.set(key, priceFinding(book, code, pack, what, wayOut));
  };
  const foods = [...book.prices].filter(([id]) => used.has(id));
  for (const [id, packs] of foods) {
    const conversions = book.ingredients.get(id)?.conversions ?? [];
    const later = packs.map(({ validFrom }) => validFrom).filter((day) => day > today);
    for (const day of [today, ...new Set(later.sort())])
      for (const { code, pack, what, wayOut } of priceAlarms(packs, conversions, day, book.kitchen))
        tell(code, pack, what, wayOut);
  }
  for (const { pack, what } of beyondSense(book, foods, today))
    tell('price-beyond-sense', pack, what, 'check the price and its decimal point');
  return [...told.values()];
}

/** A finding at the row of a pack. */
export function priceFinding(
  book: Book,
  code: FindingCode,
  pack: PricedPack,
  what: string,
  wayOut: string,
): Finding {
  const place = book.priceRows.get(priceRowKey(pack)) ?? {
    file: `prices/${pack.supplier}.csv`,
    line: 1,
    column: 1,
  };
  return finding(code, place, what, wayOut);
}

/* The middle pack is the measure, so that no currency needs a figure of its own. */
function beyondSense(
  { kitchen }: Book,
  foods: readonly (readonly [string, readonly PricedPack[]])[],
  today: Day,
): { pack: PricedPack; what: string }[] {
  const offered = foods.flatMap(([, packs]) => packsOn(packs, today));
  const byPrice = offered
    .map((pack) => ({ pack, price: fractionOfPrice(pack.price) }))
    .sort((a, b) => a.price.compare(b.price));
  const middle = byPrice[Math.floor(byPrice.length / 2)];
  if (!middle || byPrice.length < PACKS_FOR_A_MIDDLE) return [];
  const most = middle.price.mul(PRICE_BEYOND_SENSE);
  const show = (pack: PricedPack) => displayMoney(money(pack.price, kitchen.currency), kitchen.locale);
  return byPrice
    .filter(({ price }) => most.gt(new Fraction(0n)) && price.gt(most))
    .map(({ pack }) => ({
      pack,
      what: `one “${pack.packText}” of ${pack.ingredient} costs ${show(pack)}, while the kitchen’s median pack costs ${show(middle.pack)}`,
    }));
}
