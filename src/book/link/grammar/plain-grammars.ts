import { exactMoneyText } from '../../../engine/money/money.ts';
import { parseMoney } from '../../../engine/money/parse-money.ts';
import { parseRate, rateText } from '../../../engine/money/rate.ts';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';

/** A sum in a currency as money text: `85.00`. */
export function moneyIn(currency: string): (text: string) => Parsed<string> {
  return (text) => {
    const sum = parseMoney(text, currency);
    return sum.ok ? parsed(exactMoneyText(sum.value)) : sum;
  };
}

/** A percentage in its canonical text: `8.25 %`. */
export function parseRateText(text: string): Parsed<string> {
  const rate = parseRate(text);
  return rate.ok ? parsed(rateText(rate.value)) : rate;
}

/** A whole number between two bounds, in digits alone. */
export function wholeNumber(least: number, most: number): (text: string) => Parsed<number> {
  return (text) => {
    const number = /^\d{1,9}$/.test(text.trim()) ? Number(text.trim()) : Number.NaN;
    return number >= least && number <= most
      ? parsed(number)
      : notParsed(
          `“${text.slice(0, 40)}” does not fit here`,
          `write a whole number from ${least} to ${most}`,
        );
  };
}
