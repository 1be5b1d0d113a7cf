import type Fraction from 'fraction.js';
import { decimalMark } from '../../engine/money/display-money.ts';

/** A share as whole percent, half-up, as data has it: `75 %`. `percentText` makes it a locale's. */
export function wholePercentOf(share: Fraction): string {
  return `${share.mul(100n).add('1/2').floor().toString()} %`;
}

/** A percentage as data has it in the form of a locale: `8.25 %` → `8.25%` (en-US, en-GB), `8,25 %` (de-DE). */
export function percentText(rate: string, locale: string): string {
  const number = rate.replace(/\s*%$/, '').replace('.', decimalMark(locale));
  return `${number}${gapBeforePercent(locale)}%`;
}

/** What stands between a number and its percent sign: nothing, or a space that does not break. */
export function gapBeforePercent(locale: string): string {
  const parts = new Intl.NumberFormat(locale, { style: 'percent' }).formatToParts(1);
  const sign = parts.findIndex(({ type }) => type === 'percentSign');
  const before = parts[sign - 1];
  return before?.type === 'literal' ? before.value : '';
}
