import { decimalMark } from '../../engine/money/display-money.ts';
import { spelledIn } from '../../words/spelled.ts';
import { allergenAsRead } from './allergen-as-read.ts';
import { textAsRead } from './text-as-read.ts';

/** Thousands as findings of reading write them, before the kitchen's locale is known: `4,194,304`. */
const THOUSANDS = /(?<![\d.,])\d{1,3}(?:,\d{3})+(?![\d,])/g;
/** What stands in quotation marks is somebody's own words or what to write in a file, and stays. */
const QUOTED = /(“[^”]*”)/;

/**
 * What a finding says, for people of a locale: its figures, names of allergens and spelling. Where decimals have a comma,
 * thousands have a narrow space, as in `countText`.
 */
export function findingAsRead(what: string, locale: string): string {
  const group = decimalMark(locale) === '.' ? ',' : '\u202f';
  const words = what
    .split(QUOTED)
    .map((part) => {
      if (part.startsWith('“')) return part;
      const grouped = part.replace(THOUSANDS, (count) => count.replaceAll(',', group));
      return spelledIn(allergenAsRead(grouped, locale), locale);
    })
    .join('');
  return textAsRead(words, locale);
}
