import { type PricedSide, pricedSide } from '../views/client/proposal-choice-comparison.ts';
import { rowLabels } from '../views/client/proposal-choice-rows.ts';
import type { Side } from '../views/client/proposal-choice-sides.ts';
import type { ClientTerms } from '../views/client/terms.ts';
import { say } from './words.ts';

/** The prices of sides, each calculated once; the counts of a menu with its add-ons stay while one moves through them. */
export interface SidePrices {
  /** What a side costs. */
  of(side: Side): PricedSide;
  /** Totals of a side's menu at each of the counts, in their order. */
  totals(side: Side, counts: readonly number[]): string[];
  /** Every row that the side's menu has at any of the counts calculated so far, by key and label. */
  labels(side: Side): ReadonlyMap<string, string>;
}

/** The most menus, each with its add-ons, that are kept. */
const MOST_MENUS = 12;

interface MenuPrices {
  readonly byCount: Map<number, PricedSide>;
  readonly labels: Map<string, string>;
}

/** Prices that remember. */
export function sidePrices(data: ClientTerms): SidePrices {
  const menus = new Map<string, MenuPrices>();

  function menuOf(side: Side): MenuPrices {
    const key = menuKey(side);
    const known = menus.get(key) ?? { byCount: new Map(), labels: new Map() };
    // The one used last stands last, and the one used longest ago goes first.
    menus.delete(key);
    menus.set(key, known);
    for (const old of menus.keys()) if (menus.size > MOST_MENUS) menus.delete(old);
    return known;
  }

  function of(side: Side): PricedSide {
    const { byCount, labels } = menuOf(side);
    const known = byCount.get(side.guests);
    if (known) return known;
    const priced = pricedSide(data, side);
    byCount.set(side.guests, priced);
    for (const [key, label] of rowLabels(say, priced.quote, data.terms)) labels.set(key, label);
    return priced;
  }

  return {
    of,
    totals: (side, counts) => counts.map((guests) => of({ ...side, guests }).quote.total),
    labels: (side) => menuOf(side).labels,
  };
}

/** Names a side's menu with its add-ons, whatever its guest count. */
export function menuKey(side: Side): string {
  return JSON.stringify([side.package, ...Object.entries(side.addOns).sort()]);
}
