import { decimalMark } from '../../engine/money/display-money.ts';

/**
 * A count of zero or more to one decimal, half up, its thousands apart: `12,345` where decimals have a point. Where they have a
 * comma a narrow space stands there, as DIN 5008 allows and French has it, since a point would be read as data's decimal mark.
 */
export function countText(count: number, locale: string): string {
  const mark = decimalMark(locale);
  const [whole = '0', decimals] = String(Math.round(count * 10) / 10).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, mark === '.' ? ',' : '\u202f');
  return decimals === undefined ? grouped : `${grouped}${mark}${decimals}`;
}
