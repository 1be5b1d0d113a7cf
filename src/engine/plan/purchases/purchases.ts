import Fraction from 'fraction.js';
import type { Day } from '../../calendar/day.ts';
import { type Explosion, type IngredientUse, purchasedIn } from '../../food/explode.ts';
import type { Ingredient } from '../../food/ingredient.ts';
import { isTapWater } from '../../food/tap-water.ts';
import { choosePacks, type PackChoice } from '../../purchase/choose-packs.ts';
import { packsOn } from '../../purchase/packs-on.ts';
import type { PricedPack, PriceList } from '../../purchase/price-list.ts';
import { isPinned } from '../../purchase/usable-packs.ts';
import { type Statement, statement } from '../../text/statement.ts';
import type { PlanFinding, PlannedPurchase } from '../event-plan.ts';
import { boughtPurchase } from './bought.ts';
import type { BuyingKitchen } from './buying-kitchen.ts';
import { missingYields, packFindings } from './findings.ts';
import { usesIn } from './uses.ts';

/** What must be bought, sorted by name, and what stands in the way of it. */
export interface Purchases {
  readonly purchases: readonly PlannedPurchase[];
  readonly findings: readonly PlanFinding[];
  /** False while part of a need could not be measured, so that the amounts above are too small. */
  readonly complete: boolean;
}

/**
 * Sums what recipes need of each ingredient as purchased, in the unit it is bought in, and buys the cheapest
 * whole packs on offer on the day, food by food: minimum orders, fees and stock come in with the joint order.
 * Nothing is rounded before the packs. Tap water is left out unless a list offers it.
 */
export function planPurchases(
  ingredients: Explosion['ingredients'],
  prices: PriceList,
  day: Day,
  kitchen: BuyingKitchen,
): Purchases {
  const purchases: PlannedPurchase[] = [];
  const findings: PlanFinding[] = [];
  let complete = true;
  for (const { ingredient, uses } of ingredients.values()) {
    const packs = packsOn(prices.get(ingredient.id) ?? [], day);
    if (packs.length === 0 && isTapWater(ingredient)) continue;
    const unit = buyingUnit(ingredient, packs, uses);
    const { usedBy, stray } = usesIn(unit, ingredient, uses);
    if (stray.length > 0) complete = false;
    findings.push(...stray, ...missingYields(ingredient, uses));
    const need = {
      amount: usedBy.reduce((total, use) => total.add(use.need.amount), new Fraction(0n)),
      unit,
    };
    const choice = choosePacks(need, packs, ingredient.conversions, ingredient.pinned);
    findings.push(...packFindings(ingredient, need, packs, choice, day, kitchen));
    const reason = whyThese(ingredient, choice, packs.length);
    const { lines } = choice;
    const stock = new Fraction(0n);
    purchases.push(
      boughtPurchase({ ingredient, need, usedBy, stock, lines, reason, offered: packs }, kitchen),
    );
  }
  purchases.sort(
    (a, b) => order(a.ingredient.name, b.ingredient.name) || order(a.ingredient.id, b.ingredient.id),
  );
  return { purchases, findings, complete };
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The unit a food is bought in: that of the pinned pack, else of the first on offer that the first use can be measured in, else that use's. */
export function buyingUnit(
  ingredient: Ingredient,
  packs: readonly PricedPack[],
  uses: readonly IngredientUse[],
): string {
  const [first] = uses;
  if (!first) throw new Error(`nothing uses ${ingredient.id}`);
  const reachable = packs.filter(({ contents }) => purchasedIn(first, contents.unit, ingredient));
  const chosen = reachable.find((pack) => isPinned(pack, ingredient.pinned)) ?? reachable[0];
  return chosen?.contents.unit ?? first.amount.unit;
}

function whyThese(ingredient: Ingredient, choice: PackChoice, offered: number): Statement {
  if (choice.lines.every(({ pack }) => isPinned(pack, ingredient.pinned)))
    return statement('why.pack.required');
  return offered === 1 ? statement('why.pack.only') : statement('why.pack.cheapest', { n: String(offered) });
}
