import { minorUnits } from './currency.ts';
import { Decimal, ZERO } from './decimal.ts';

/** A sum of money: an exact decimal amount in an ISO 4217 currency. Plain data; the functions here work on it. */
export interface Money {
  readonly amount: Decimal;
  readonly currency: string;
}

/** A sum from exact decimal text, such as `12.50`. For text that people write there is `parseMoney`. */
export function money(amount: string | Decimal, currency: string): Money {
  return { amount: new Decimal(amount), currency };
}

/** Nothing, in a currency. */
export function noMoney(currency: string): Money {
  return { amount: ZERO, currency };
}

/** The exact sum of two amounts of one currency; throws on two currencies. */
export function add(a: Money, b: Money): Money {
  return { amount: a.amount.plus(b.amount), currency: common(a, b) };
}

/** The exact difference of two amounts of one currency; throws on two currencies. */
export function subtract(a: Money, b: Money): Money {
  return { amount: a.amount.minus(b.amount), currency: common(a, b) };
}

/** The exact sum of any number of amounts, all in the currency named; throws on another. */
export function sum(amounts: readonly Money[], currency: string): Money {
  return amounts.reduce(add, noMoney(currency));
}

/** An amount times a whole number or an exact decimal; unrounded. */
export function times(m: Money, factor: Decimal | bigint): Money {
  return {
    amount: m.amount.times(typeof factor === 'bigint' ? String(factor) : factor),
    currency: m.currency,
  };
}

/** The amount with its sign turned. */
export function negate(m: Money): Money {
  return { amount: m.amount.negated(), currency: m.currency };
}

/** Order of two amounts of one currency: negative, 0 or positive; throws on two currencies. */
export function compare(a: Money, b: Money): number {
  common(a, b);
  return a.amount.comparedTo(b.amount);
}

/** The amount at the currency's minor unit, half-up: a tie goes away from zero, 2.055 → 2.06, -2.055 → -2.06. */
export function roundToMinor(m: Money): Money {
  const digits = minorUnits(m.currency);
  if (m.amount.decimalPlaces() <= digits) return m;
  return { amount: m.amount.toDecimalPlaces(digits, Decimal.ROUND_HALF_UP), currency: m.currency };
}

/** The amount rounded to the minor unit, with all its digits and no currency: `1234.50`, in yen `1235`. */
export function moneyText(m: Money): string {
  return fixed(m.amount, minorUnits(m.currency));
}

/** The amount unrounded, with at least the currency's digits: `1234.50`, `0.125`. */
export function exactMoneyText(m: Money): string {
  return fixed(m.amount, Math.max(minorUnits(m.currency), m.amount.decimalPlaces()));
}

function fixed(amount: Decimal, digits: number): string {
  const text = amount.toFixed(digits, Decimal.ROUND_HALF_UP);
  // Less than half a cent owed is nothing, not "-0.00".
  return text.startsWith('-') && !/[1-9]/.test(text) ? text.slice(1) : text;
}

function common(a: Money, b: Money): string {
  if (a.currency !== b.currency) {
    throw new RangeError(`${a.currency} and ${b.currency} can’t be added together`);
  }
  return a.currency;
}
