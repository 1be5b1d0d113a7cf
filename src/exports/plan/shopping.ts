import type { MeasureSystem } from '../../engine/measure/units.ts';
import { exactMoneyText, money, moneyText, roundToMinor } from '../../engine/money/money.ts';
import type { OrderedPurchase } from '../../engine/plan/purchases/ordered.ts';
import type { Supplier } from '../../engine/purchase/price-list.ts';
import type { PlanPurchase } from '../form/buying.ts';
import { amountText } from '../words/amount-text.ts';
import type { SayStatement } from '../words/statement-text.ts';

/** A planned purchase as the shopping list says it. */
export function planPurchase(
  planned: OrderedPurchase,
  system: MeasureSystem,
  currency: string,
  suppliers: ReadonlyMap<string, Supplier>,
  nameOf: (id: string) => string,
  inWords: SayStatement,
): PlanPurchase {
  return {
    ingredient: planned.ingredient.id,
    name: planned.ingredient.name,
    need: amountText(planned.need, system, 'at-least'),
    usedBy: planned.usedBy.map(({ recipe, need, why }) => ({
      recipe: nameOf(recipe),
      need: amountText(need, system, 'at-least'),
      why: why.map(inWords),
    })),
    stock: planned.stock && amountText(planned.stock, system, 'line'),
    packs: planned.packs.map(({ pack, count, cost }) => ({
      supplier: pack.supplier,
      supplierName: suppliers.get(pack.supplier)?.name ?? pack.supplier,
      pack: pack.packText,
      itemNumber: pack.itemNumber,
      count,
      price: exactMoneyText(roundToMinor(money(pack.price, currency))),
      cost: moneyText(cost),
    })),
    bought: planned.bought && amountText(planned.bought, system, 'line'),
    left: planned.left && planned.left.amount.n !== 0n ? amountText(planned.left, system, 'line') : null,
    leftWorth:
      planned.left && planned.left.amount.n !== 0n && planned.leftWorth ? moneyText(planned.leftWorth) : null,
    cost: planned.cost && moneyText(planned.cost),
    why: planned.why.map(inWords),
  };
}
