import Fraction from 'fraction.js';
import type { Day } from '../../calendar/day.ts';
import { type Explosion, type IngredientUse, purchasedIn } from '../../food/explode.ts';
import type { Ingredient } from '../../food/ingredient.ts';
import { isTapWater } from '../../food/tap-water.ts';
import { convert } from '../../measure/conversions.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { add, type Money, money, noMoney, roundToMinor, sum, times } from '../../money/money.ts';
import { foodCover } from '../../purchase/food-cover.ts';
import { type ModelFood, orderModel } from '../../purchase/order-model.ts';
import { packsOn } from '../../purchase/packs-on.ts';
import type { PriceList, Supplier } from '../../purchase/price-list.ts';
import { buyingUnit } from '../purchases/purchases.ts';
import type { FoodSpent } from './costs.ts';

/** How food is bought while only its cost is asked for. */
export interface BuyerSetting {
  readonly prices: PriceList;
  readonly day: Day;
  readonly currency: string;
  readonly suppliers: ReadonlyMap<string, Supplier>;
  /** Suppliers to buy from; a food that none of them sells is bought from any. */
  readonly usual: ReadonlySet<string>;
  /** Food id → how much of it is in the store-room and need not be bought. */
  readonly stock: ReadonlyMap<string, Quantity>;
}

/** What one food costs in whole packs, and from whom. */
interface Bought {
  readonly cost: Money;
  readonly suppliers: readonly string[];
}

/** One food's packs as whole numbers, made once; covers already found by the whole measures needed. */
interface Shelf {
  readonly unit: string;
  /** Undefined where no pack on offer covers it. */
  readonly model: { readonly food: ModelFood; readonly sells: (supplier: number) => boolean } | undefined;
  readonly covers: Map<bigint, Bought | null>;
}

/**
 * A buyer that says what the food of an explosion costs: the cheapest whole packs of each food by itself, from the
 * usual suppliers, and the fee of each of them that brings something. It holds the rules of the joint order but for
 * minimum orders, which it neither fills up nor asks for; so where no minimum order presses, it comes to the joint
 * order's cost from these suppliers. Made once and asked at many counts: what is known of a food's packs is kept.
 */
export function foodBuyer(setting: BuyerSetting): (ingredients: Explosion['ingredients']) => FoodSpent {
  const shelves = new Map<string, Shelf>();
  const { currency } = setting;
  return (ingredients) => {
    let goods: Money | null = noMoney(currency);
    const used = new Set<string>();
    for (const { ingredient, uses } of ingredients.values()) {
      const shelf = shelves.get(ingredient.id) ?? shelfOf(ingredient, uses, setting);
      if (!shelf) continue;
      shelves.set(ingredient.id, shelf);
      const bought = buy(ingredient, uses, shelf, setting);
      goods = bought && goods && add(goods, bought.cost);
      for (const id of bought?.suppliers ?? []) used.add(id);
    }
    const fees = [...used].map((id) => money(setting.suppliers.get(id)?.deliveryFee ?? '0', currency));
    return { goods, fees: sum(fees, currency) };
  };
}

/** Undefined for tap water, which nobody sells. */
function shelfOf(
  ingredient: Ingredient,
  uses: readonly IngredientUse[],
  { prices, day, suppliers, usual }: BuyerSetting,
): Shelf | undefined {
  const packs = packsOn(prices.get(ingredient.id) ?? [], day);
  if (packs.length === 0 && isTapWater(ingredient)) return undefined;
  const unit = buyingUnit(ingredient, packs, uses);
  // What is needed comes in later; a model of one measure has the packs and their rules.
  const need = { amount: new Fraction(1n), unit };
  const model = orderModel([{ ingredient, need, packs }], { suppliers, secondSupplierSaves: '0' });
  const [food] = model.foods;
  const known = new Set(model.suppliers.flatMap(({ id }, place) => (usual.has(id) ? [place] : [])));
  const sells = (place: number) => known.size === 0 || known.has(place);
  return { unit, model: food && { food, sells }, covers: new Map() };
}

function buy(
  ingredient: Ingredient,
  uses: readonly IngredientUse[],
  { unit, model, covers }: Shelf,
  { stock, currency }: BuyerSetting,
): Bought | null {
  const { id, conversions } = ingredient;
  let need = new Fraction(0n);
  for (const use of uses) {
    const measured = purchasedIn(use, unit, ingredient);
    if (!measured) return null;
    need = need.add(measured.amount);
  }
  const held = stock.get(id);
  const taken = held && convert(held, unit, conversions)?.amount;
  if (taken) need = need.sub(taken);
  if (need.n === 0n || need.s < 0n) return { cost: noMoney(currency), suppliers: [] };
  if (!model) return null;
  const whole = need.div(model.food.measure).ceil().n;
  const known = covers.get(whole);
  if (known !== undefined) return known;
  const bought = cover({ ...model.food, need: whole }, model.sells, currency);
  covers.set(whole, bought);
  return bought;
}

function cover(food: ModelFood, sells: (supplier: number) => boolean, currency: string): Bought | null {
  const found = foodCover(food, sells) ?? foodCover(food, () => true);
  if (!found) return null;
  const lines = food.packs.flatMap(({ pack }, index) => {
    const count = found.counts[index] ?? 0;
    return count > 0 ? [{ pack, cost: roundToMinor(times(money(pack.price, currency), BigInt(count))) }] : [];
  });
  const cost = sum(
    lines.map((line) => line.cost),
    currency,
  );
  return { cost, suppliers: [...new Set(lines.map(({ pack }) => pack.supplier))] };
}
