import type Fraction from 'fraction.js';
import type { Ingredient } from '../food/ingredient.ts';
import type { Quantity } from '../measure/quantity.ts';
import { Decimal } from '../money/decimal.ts';
import { comparePacks } from './packs-on.ts';
import { fractionOfPrice } from './price-fraction.ts';
import type { PricedPack, Supplier } from './price-list.ts';
import { roomAboveNeed, spoils } from './spoilage.ts';
import { commonMeasure, measuredPacks } from './usable-packs.ts';

/** One food to buy, and the packs of it on offer. */
export interface OrderNeed {
  readonly ingredient: Ingredient;
  /** To be bought, exact; stock on hand has been taken off. */
  readonly need: Quantity;
  readonly packs: readonly PricedPack[];
}

/** What buying costs besides the packs. Money as decimal text. */
export interface OrderTerms {
  readonly suppliers: ReadonlyMap<string, Supplier>;
  /** What every supplier beyond the first must save more than. It moves the choice and is not spent. */
  readonly secondSupplierSaves: string;
}

/** A supplier in whole steps of money. */
export interface ModelSupplier {
  readonly id: string;
  readonly fee: bigint;
  /** 0 for none. */
  readonly minimum: bigint;
}

/** A pack in whole steps of money and whole measures of its food. */
export interface ModelPack {
  readonly pack: PricedPack;
  /** Its place among the suppliers. */
  readonly supplier: number;
  readonly size: bigint;
  readonly cost: bigint;
  /** As often as it may be bought. */
  readonly most: bigint;
  /** The most that may be left over of its food where it is bought; undefined for a food that keeps. */
  readonly room: bigint | undefined;
}

/** A food to cover, in whole measures of it: the largest measure that all its packs are multiples of. */
export interface ModelFood {
  readonly ingredient: string;
  readonly unit: string;
  readonly measure: Fraction;
  readonly need: bigint;
  /** What is really needed, in measures; `need` is this rounded up, which no cover can tell apart. */
  readonly exactNeed: Fraction;
  readonly packs: readonly ModelPack[];
}

/**
 * The joint order as an integer program in exact whole numbers: how many of each pack, so that every need is
 * covered and the cost of packs, fees and further suppliers is least. Foods by id, packs and suppliers by id and
 * text, so that the same needs in any order make the same model.
 */
export interface OrderModel {
  readonly foods: readonly ModelFood[];
  /** Those that sell any of the packs. */
  readonly suppliers: readonly ModelSupplier[];
  /** Money for one step of cost. */
  readonly step: Fraction;
  /** What each supplier beyond the first is charged, in steps. */
  readonly further: bigint;
}

/**
 * Makes the model of an order. Rules of a buyer that it holds:
 * - a pinned pack that is on offer is taken alone;
 * - a supplier that is used costs its fee, and what is bought there must come to its minimum order (exact prices,
 *   before lines are rounded);
 * - a food that keeps may be bought beyond its need to reach a minimum, each pack up to what covers the need twice
 *   (or once, where one more pack is needed for that): more than that no buyer would carry home;
 * - of a food that spoils nothing is bought beyond what `roomAboveNeed` allows.
 * Needs of nothing, and needs that no pack on offer can be measured against, are left out.
 */
export function orderModel(needs: readonly OrderNeed[], terms: OrderTerms): OrderModel {
  const foods = needs
    .filter(({ need }) => need.amount.n > 0n && need.amount.s > 0n)
    .map(({ ingredient, need, packs }) => ({
      ingredient,
      need,
      ...measuredPacks(need.unit, inOrder(packs), ingredient.conversions, ingredient.pinned),
    }))
    .filter(({ packs }) => packs.length > 0)
    .sort((a, b) => order(a.ingredient.id, b.ingredient.id) || order(a.need.unit, b.need.unit));
  const ids = [...new Set(foods.flatMap(({ packs }) => packs.map(({ pack }) => pack.supplier)))].sort();
  const sellers = ids.map((id) => {
    const known = terms.suppliers.get(id);
    return {
      id,
      fee: priceIn(known?.deliveryFee ?? '0'),
      minimum: priceIn(known?.minimumOrder ?? '0'),
    };
  });
  const further = priceIn(terms.secondSupplierSaves);
  const step = commonMeasure([
    further,
    ...sellers.flatMap(({ fee, minimum }) => [fee, minimum]),
    ...foods.flatMap(({ prices }) => prices),
  ]);
  const steps = (money: Fraction) => money.div(step).n;
  return {
    step,
    further: steps(further),
    suppliers: sellers.map(({ id, fee, minimum }) => ({ id, fee: steps(fee), minimum: steps(minimum) })),
    foods: foods.map(({ ingredient, need, packs, measure, sizes, prices }) => {
      const exactNeed = need.amount.div(measure);
      const whole = exactNeed.ceil().n;
      const sized = packs.map(({ pack }, index) => ({
        pack,
        supplier: ids.indexOf(pack.supplier),
        size: sizes[index] as bigint,
        cost: steps(prices[index] as Fraction),
      }));
      const perishable = spoils(ingredient);
      const rooms = roomAboveNeed(sized.map(({ pack, size }) => ({ supplier: pack.supplier, size })));
      return {
        ingredient: ingredient.id,
        unit: need.unit,
        measure,
        need: whole,
        exactNeed,
        packs: sized.map((each, index) => ({
          ...each,
          most: mostOf(each.size, exactNeed, perishable),
          room: perishable ? rooms[index] : undefined,
        })),
      };
    }),
  };
}

/** The packs in their order: the same list where it is in order, which is what `packsOn` gives. */
function inOrder(packs: readonly PricedPack[]): readonly PricedPack[] {
  const sorted = packs.every(
    (pack, index) => index === 0 || comparePacks(packs[index - 1] as PricedPack, pack) <= 0,
  );
  return sorted ? packs : packs.toSorted(comparePacks);
}

function mostOf(size: bigint, need: Fraction, perishable: boolean): bigint {
  const times = need.div(size);
  const once = times.ceil().n;
  const twice = times.mul(2n).floor().n;
  return perishable || once > twice ? once : twice;
}

function priceIn(text: string): Fraction {
  return fractionOfPrice(new Decimal(text));
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
