import Fraction from 'fraction.js';
import type { Day } from '../calendar/day.ts';
import type { Explosion, IngredientUse } from '../food/explode.ts';
import type { Ingredient } from '../food/ingredient.ts';
import { isTapWater } from '../food/tap-water.ts';
import type { Kitchen } from '../kitchen/kitchen.ts';
import { convert } from '../measure/conversions.ts';
import type { Quantity } from '../measure/quantity.ts';
import { displayMoney } from '../money/display-money.ts';
import { type Money, money, roundToMinor, sum, times } from '../money/money.ts';
import { choosePacks, isPinned, type PackChoice } from '../purchase/choose-packs.ts';
import { packsOn } from '../purchase/packs-on.ts';
import type { PricedPack, PriceList } from '../purchase/price-list.ts';
import type { PlanFinding, PlannedPurchase } from './event-plan.ts';
import { comesTo, percent, plainAmount, unitsText } from './figure-text.ts';

/** What a kitchen says that purchases depend on. */
export type BuyingKitchen = Pick<Kitchen, 'currency' | 'locale'>;

/** What must be bought, sorted by name, and what stands in the way of it. */
export interface Purchases {
  readonly purchases: readonly PlannedPurchase[];
  readonly findings: readonly PlanFinding[];
  /** False while part of a need could not be measured, so that the amounts above are too small. */
  readonly complete: boolean;
}

/**
 * Sums what recipes need of each ingredient as purchased, in the unit it is bought in, and buys the cheapest
 * whole packs on offer on the day. Nothing is rounded before the packs. Each pack's line costs count × price,
 * half-up to the minor unit. Tap water is left out unless a list offers it.
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
    findings.push(...stray, ...unsaidYields(ingredient, uses));
    const need = {
      amount: usedBy.reduce((total, use) => total.add(use.need.amount), new Fraction(0n)),
      unit,
    };
    const choice = choosePacks(need, packs, ingredient.conversions, ingredient.pinned);
    findings.push(...packFindings(ingredient, need, packs, choice, day, kitchen));
    purchases.push(bought(ingredient, need, usedBy, choice, packs.length, kitchen));
  }
  purchases.sort(
    (a, b) => order(a.ingredient.name, b.ingredient.name) || order(a.ingredient.id, b.ingredient.id),
  );
  return { purchases, findings, complete };
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The unit of the pinned pack, else of the first on offer that the first use can be measured in, else that use's. */
function buyingUnit(
  ingredient: Ingredient,
  packs: readonly PricedPack[],
  uses: readonly IngredientUse[],
): string {
  const [first] = uses;
  if (!first) throw new Error(`nothing uses ${ingredient.id}`);
  const reachable = packs.filter(({ contents }) =>
    convert(first.asPurchased, contents.unit, ingredient.conversions),
  );
  const chosen = reachable.find((pack) => isPinned(pack, ingredient.pinned)) ?? reachable[0];
  return chosen?.contents.unit ?? first.asPurchased.unit;
}

function usesIn(
  unit: string,
  ingredient: Ingredient,
  uses: readonly IngredientUse[],
): { usedBy: PlannedPurchase['usedBy'][number][]; stray: PlanFinding[] } {
  const usedBy: PlannedPurchase['usedBy'][number][] = [];
  const stray: PlanFinding[] = [];
  for (const use of uses) {
    const need = convert(use.asPurchased, unit, ingredient.conversions);
    if (need) usedBy.push({ recipe: use.recipe.id, need, why: useWhy(use, need) });
    else {
      stray.push({
        about: ingredient.id,
        what: `${use.recipe.name} needs ${plainAmount(use.asPurchased)} of ${ingredient.name}, which no conversion turns into ${unitsText(unit)}; it is missing from the shopping`,
        wayOut: `write a conversion at ${ingredient.id}, as in 1 ${use.asPurchased.unit} = … ${unit}`,
      });
    }
  }
  return { usedBy, stray };
}

function useWhy({ amount, yield: left, line, asPurchased, recipe }: IngredientUse, need: Quantity): string[] {
  const kept = left.share.equals(1n) ? undefined : left.share;
  const made = line.preparation ? ` left when ${line.preparation}` : ' left when made ready';
  return [
    `${plainAmount(amount)} in ${recipe.name}`,
    ...(kept
      ? [`${plainAmount(amount)} ÷ ${percent(kept)}${made} ${comesTo(asPurchased)} as purchased`]
      : []),
    ...(need.unit === asPurchased.unit ? [] : [`${plainAmount(asPurchased)} ${comesTo(need)}`]),
  ];
}

function unsaidYields(ingredient: Ingredient, uses: readonly IngredientUse[]): PlanFinding[] {
  const unsaid = uses.filter((use) => use.yield.basis === 'unsaid');
  return [...new Set(unsaid.map(({ line }) => line.preparation))].map((preparation) => ({
    about: ingredient.id,
    what: `nothing is bought for what ${ingredient.name} loses when ${preparation ?? 'made ready'}, since its yield is not said`,
    wayOut: `write a default yield at ${ingredient.id}${preparation ? `, or one for “${preparation}”` : ''}`,
  }));
}

function bought(
  ingredient: Ingredient,
  need: Quantity,
  usedBy: PlannedPurchase['usedBy'],
  choice: PackChoice,
  offered: number,
  kitchen: BuyingKitchen,
): PlannedPurchase {
  const packs = choice.lines.map(({ pack, count }) => ({
    pack,
    count,
    cost: roundToMinor(times(money(pack.price, kitchen.currency), BigInt(count))),
  }));
  const total =
    usedBy.length === 1 ? [] : [`${usedBy.map((use) => plainAmount(use.need)).join(' + ')} ${comesTo(need)}`];
  if (packs.length === 0) {
    return { ingredient, need, usedBy, packs, bought: null, left: null, cost: null, why: total };
  }
  const left = { amount: choice.bought.amount.sub(need.amount), unit: need.unit };
  const show = (sum: Money) => displayMoney(sum, kitchen.locale);
  return {
    ingredient,
    need,
    usedBy,
    packs,
    bought: choice.bought,
    left,
    cost: sum(
      packs.map(({ cost }) => cost),
      kitchen.currency,
    ),
    why: [
      ...total,
      ...packs.map(
        ({ pack, count, cost }) =>
          `${count} × ${pack.packText} from ${pack.supplier} at ${show(money(pack.price, kitchen.currency))} = ${show(cost)}`,
      ),
      whyThese(
        ingredient,
        packs.map(({ pack }) => pack),
        offered,
      ),
      `${plainAmount(choice.bought)} − ${plainAmount(need)} ${comesTo(left)} left over`,
    ],
  };
}

function whyThese(ingredient: Ingredient, packs: readonly PricedPack[], offered: number): string {
  if (packs.every((pack) => isPinned(pack, ingredient.pinned)))
    return 'this pack is the one to buy, as the ingredient says';
  return offered === 1
    ? 'the only pack on offer'
    : `the cheapest whole packs that cover it, of ${offered} on offer`;
}

function packFindings(
  ingredient: Ingredient,
  need: Quantity,
  packs: readonly PricedPack[],
  choice: PackChoice,
  day: Day,
  kitchen: BuyingKitchen,
): PlanFinding[] {
  const { id, name, pinned } = ingredient;
  const findings: PlanFinding[] = [];
  const tell = (what: string, wayOut: string) => findings.push({ about: id, what, wayOut });
  if (packs.length === 0) {
    tell(
      `no price list offers ${name} on ${day}`,
      `write a pack of ${id} and its price in prices/<supplier>.csv`,
    );
  } else if (choice.lines.length === 0 && need.amount.n > 0n) {
    const units = [...new Set(choice.unreachable.map(({ contents }) => contents.unit))]
      .map(unitsText)
      .join(', ');
    tell(
      `${name} is needed in ${unitsText(need.unit)} and sold in ${units}, and no conversion leads there`,
      `write a conversion at ${id}, as in 1 ${choice.unreachable[0]?.contents.unit} = … ${need.unit}`,
    );
  }
  if (pinned && choice.pinnedMissing && packs.length > 0) {
    tell(
      `the pack to buy, ${pinned.supplier} ${pinned.pack}, is not on offer on ${day}; others were taken`,
      `mend buy: at ${id}, or write that pack in prices/${pinned.supplier}.csv`,
    );
  }
  if (choice.gap.gt(0)) {
    const most = displayMoney(roundToMinor(money(choice.gap, kitchen.currency)), kitchen.locale);
    tell(
      `a cheaper mix of packs may exist, by at most ${most}`,
      `pin a pack with buy: at ${id}, or leave it so`,
    );
  }
  return findings;
}
