import type Fraction from 'fraction.js';
import { addDays, compareDays, type Day, laterDay } from '../../calendar/day.ts';
import { convert } from '../../measure/conversions.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { packsOn } from '../../purchase/packs-on.ts';
import type { PricedPack, PriceList } from '../../purchase/price-list.ts';
import { drawStock, type StockLot } from '../../purchase/stock.ts';
import { statement } from '../../text/statement.ts';
import type { EventPlan, PlanFinding, PlannedPurchase } from '../event-plan.ts';
import { plainAmount, unitsText } from '../figure-text.ts';

/** A food that one or several events need, before it is decided what to buy. */
export interface PurchaseNeed {
  readonly ingredient: PlannedPurchase['ingredient'];
  /** As purchased, exact, stock included. */
  readonly need: Quantity;
  readonly usedBy: PlannedPurchase['usedBy'];
  /** What of it is in stock, in the need's unit. */
  readonly stock: Fraction;
  /** On offer on the day the first of the events buys. */
  readonly packs: readonly PricedPack[];
  /** Every price of it that was ever listed. */
  readonly listed: readonly PricedPack[];
  /** The day on which it is bought. */
  readonly buyingDay: Day;
  /** The day of the first task that takes it. */
  readonly neededOn: Day;
  /** The day on which the last of the recipes with it is begun: until then it must keep as bought. */
  readonly lastUse: Day;
}

/** What a plan needs, and what stock is left after it. */
export interface StockedNeeds {
  readonly needs: readonly PurchaseNeed[];
  readonly rest: ReadonlyMap<string, readonly StockLot[]>;
  readonly findings: readonly PlanFinding[];
}

/**
 * What a plan needs of each food, when, and how much of that is in stock. No recipe says which task takes which
 * food, so it is needed on the day of the recipe's first task, and stock serves only recipes whose last task is
 * not past its use-by day: food is there early enough, and none is used past its day.
 */
export function purchaseNeeds(
  plan: EventPlan,
  prices: PriceList,
  stock: ReadonlyMap<string, readonly StockLot[]>,
): StockedNeeds {
  const rest = new Map(stock);
  const findings: PlanFinding[] = [];
  const needs = plan.purchases.map(({ ingredient, need, usedBy }): PurchaseNeed => {
    const uses = usedBy.map((use) => ({ amount: use.need.amount, ...usedOn(plan, use.recipe) }));
    const lots = stock.get(ingredient.id) ?? [];
    const listed = prices.get(ingredient.id) ?? [];
    const drawn = drawStock(
      need.unit,
      uses.map(({ amount, last }) => ({ amount, on: last })),
      lots,
      ingredient.conversions,
    );
    if (lots.length > 0) rest.set(ingredient.id, drawn.rest);
    findings.push(...stockFindings(ingredient, need, drawn));
    return {
      ingredient,
      need,
      usedBy,
      stock: drawn.taken,
      packs: packsOn(listed, plan.input.buyingDay),
      listed,
      buyingDay: plan.input.buyingDay,
      neededOn: uses.map(({ first }) => first).sort()[0] ?? plan.input.date,
      lastUse:
        uses
          .map(({ first }) => first)
          .sort()
          .at(-1) ?? plan.input.date,
    };
  });
  return { needs, rest, findings };
}

/**
 * Needs of the same food put together, in the unit of the first; one that no conversion turns into it stays by
 * itself. Offers are those of the first, which buys earliest.
 */
export function mergedNeeds(needs: readonly PurchaseNeed[]): PurchaseNeed[] {
  const merged: PurchaseNeed[] = [];
  for (const each of needs) {
    const at = merged.findIndex(({ ingredient }) => ingredient.id === each.ingredient.id);
    const known = merged[at];
    const same = known && inUnit(each, known.need.unit);
    if (known && same) merged[at] = together(known, same);
    else merged.push(each);
  }
  return merged;
}

function together(a: PurchaseNeed, b: PurchaseNeed): PurchaseNeed {
  return {
    ...a,
    need: { amount: a.need.amount.add(b.need.amount), unit: a.need.unit },
    stock: a.stock.add(b.stock),
    usedBy: [...a.usedBy, ...b.usedBy],
    neededOn: compareDays(a.neededOn, b.neededOn) <= 0 ? a.neededOn : b.neededOn,
    lastUse: laterDay(a.lastUse, b.lastUse),
  };
}

function inUnit(each: PurchaseNeed, unit: string): PurchaseNeed | undefined {
  const { conversions } = each.ingredient;
  const need = convert(each.need, unit, conversions);
  const stock = convert({ amount: each.stock, unit: each.need.unit }, unit, conversions);
  const usedBy = each.usedBy.map((use) => ({
    ...use,
    need: convert(use.need, unit, conversions) ?? use.need,
  }));
  return need && stock && { ...each, need, stock: stock.amount, usedBy };
}

function usedOn({ recipes, input }: EventPlan, id: string): { first: Day; last: Day } {
  const steps = recipes.find(({ recipe }) => recipe.id === id)?.recipe.steps ?? [];
  const days = steps.map(({ when }) => when.daysBefore);
  if (days.length === 0) return { first: input.date, last: input.date };
  return {
    first: addDays(input.date, -Math.max(...days)),
    last: addDays(input.date, -Math.min(...days)),
  };
}

function stockFindings(
  { id, name }: PlannedPurchase['ingredient'],
  need: Quantity,
  { unmeasured, tooOld }: ReturnType<typeof drawStock>,
): PlanFinding[] {
  const [lot] = unmeasured;
  return [
    ...(lot
      ? [
          {
            about: id,
            what: statement('found.stock-unmeasured', {
              amount: plainAmount(lot.amount),
              food: name,
              units: unitsText(need.unit),
            }),
            wayOut: statement('found.add-conversion', { food: id, from: lot.amount.unit, to: need.unit }),
          },
        ]
      : []),
    ...(tooOld.n > 0n
      ? [
          {
            about: id,
            what: statement('found.stock-old', {
              amount: plainAmount({ amount: tooOld, unit: need.unit }),
              food: name,
            }),
            wayOut: statement('found.stock-old.way'),
          },
        ]
      : []),
  ];
}
