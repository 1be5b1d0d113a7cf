import Fraction from 'fraction.js';
import type { Ingredient } from '../../food/ingredient.ts';
import { convert } from '../../measure/conversions.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { displayMoney } from '../../money/display-money.ts';
import { type Money, money, noMoney, roundToMinor, sum, times } from '../../money/money.ts';
import { decimalOfFraction, fractionOfPrice } from '../../purchase/price-fraction.ts';
import type { PricedPack } from '../../purchase/price-list.ts';
import { type Said, several, statement } from '../../text/statement.ts';
import type { PlannedPurchase, Why } from '../event-plan.ts';
import { comesTo, plainAmount } from '../figure-text.ts';
import type { BuyingKitchen } from './buying-kitchen.ts';

/** What is to be bought of a food, and why. */
export interface ToBuy {
  readonly ingredient: Ingredient;
  /** As purchased, exact, stock included. */
  readonly need: Quantity;
  readonly usedBy: PlannedPurchase['usedBy'];
  /** What of it is in stock, in the need's unit. */
  readonly stock: Fraction;
  readonly lines: readonly { readonly pack: PricedPack; readonly count: number }[];
  /** Why these packs. */
  readonly reason: Said;
  /** Rates to value what is needed by where nothing is bought. */
  readonly offered: readonly PricedPack[];
}

/** A purchase with what stock gives to it, and what its food is worth. */
export interface ValuedPurchase extends PlannedPurchase {
  /** What of the need is taken from stock; null for nothing. */
  readonly stock: Quantity | null;
  /** What the need costs at the rate of the packs bought (from stock alone: at the lowest rate on offer), unrounded. */
  readonly used: Money | null;
  /** What is left over at the rate of the packs bought, half-up to the minor unit. */
  readonly leftWorth: Money | null;
}

/**
 * A purchase from the packs chosen for it, with every figure's why. Each pack's line costs count × price, half-up to
 * the minor unit. Without packs it has no cost, unless stock covers the need whole.
 */
export function boughtPurchase(toBuy: ToBuy, kitchen: BuyingKitchen): ValuedPurchase {
  const { ingredient, need, usedBy, lines } = toBuy;
  const { currency } = kitchen;
  const packs = lines.map(({ pack, count }) => ({
    pack,
    count,
    cost: roundToMinor(times(money(pack.price, currency), BigInt(count))),
  }));
  const stock = toBuy.stock.n === 0n ? null : { amount: toBuy.stock, unit: need.unit };
  const missing = { amount: need.amount.sub(toBuy.stock), unit: need.unit };
  // Said only when asked: of a plan's own purchases the joint order asks for figures alone.
  const needed = () => needWhy(usedBy, need, stock, missing);
  const facts = { ingredient, need, usedBy, packs, stock };
  if (packs.length === 0) {
    const covered = stock !== null && missing.amount.n === 0n;
    const rate = lowestRate(toBuy);
    return {
      ...facts,
      bought: covered ? { amount: new Fraction(0n), unit: need.unit } : null,
      left: null,
      cost: covered ? noMoney(currency) : null,
      used: covered && rate ? worth(rate, need.amount, currency) : null,
      leftWorth: null,
      get why() {
        return needed();
      },
    };
  }
  const bought = { amount: heldBy(lines, need.unit, ingredient), unit: need.unit };
  const left = { amount: bought.amount.sub(missing.amount), unit: need.unit };
  const cost = sum(
    packs.map((each) => each.cost),
    currency,
  );
  const rate = fractionOfPrice(cost.amount).div(bought.amount);
  const leftWorth = roundToMinor(worth(rate, left.amount, currency));
  const show = (sum: Money) => displayMoney(sum, kitchen.locale);
  const boughtWhy = (): Why => {
    const over = { bought: plainAmount(bought), needed: plainAmount(missing), result: comesTo(left) };
    return [
      ...packs.map(({ pack, count, cost }) =>
        statement('why.pack', {
          count: String(count),
          pack: pack.packText,
          supplier: pack.supplier,
          price: show(money(pack.price, currency)),
          cost: show(cost),
        }),
      ),
      toBuy.reason,
      left.amount.n === 0n
        ? statement('why.left', over)
        : statement('why.left-worth', { ...over, worth: show(leftWorth) }),
    ];
  };
  return {
    ...facts,
    bought,
    left,
    cost,
    used: worth(rate, need.amount, currency),
    leftWorth,
    get why() {
      return [...needed(), ...boughtWhy()];
    },
  };
}

function needWhy(
  usedBy: PlannedPurchase['usedBy'],
  need: Quantity,
  stock: Quantity | null,
  missing: Quantity,
): Why {
  const amounts = several(
    'plus',
    usedBy.map((use) => plainAmount(use.need)),
  );
  return [
    ...(usedBy.length === 1 ? [] : [statement('why.sum', { amounts, result: comesTo(need) })]),
    ...(stock
      ? [
          statement('why.from-stock', {
            amount: plainAmount(need),
            stock: plainAmount(stock),
            result: comesTo(missing),
          }),
        ]
      : []),
  ];
}

function heldBy(lines: ToBuy['lines'], unit: string, { id, conversions }: Ingredient): Fraction {
  return lines.reduce((held, { pack, count }) => {
    const size = convert(pack.contents, unit, conversions)?.amount;
    if (!size) throw new Error(`a pack bought of ${id} cannot be measured in ${unit}`);
    return held.add(size.mul(BigInt(count)));
  }, new Fraction(0n));
}

/** Money for one of the need's unit. */
function lowestRate({ offered, need, ingredient }: ToBuy): Fraction | undefined {
  let lowest: Fraction | undefined;
  for (const { price, contents } of offered) {
    const size = convert(contents, need.unit, ingredient.conversions)?.amount;
    const rate = size && fractionOfPrice(price).div(size);
    if (rate && (!lowest || rate.lt(lowest))) lowest = rate;
  }
  return lowest;
}

function worth(rate: Fraction, amount: Fraction, currency: string): Money {
  return money(decimalOfFraction(rate.mul(amount)), currency);
}
