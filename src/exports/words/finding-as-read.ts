import { parseDay } from '../../engine/calendar/day.ts';
import { decimalMark } from '../../engine/money/display-money.ts';
import { spelledIn } from '../../words/spelled.ts';
import { allergenAsRead } from './allergen-as-read.ts';
import { dateText } from './date-text.ts';
import { textAsRead } from './text-as-read.ts';

/** Thousands as findings of reading write them, before the kitchen's locale is known: `4,194,304`. */
const THOUSANDS = /(?<![\d.,])\d{1,3}(?:,\d{3})+(?![\d,])/g;
/** A day as files have it; not the beginning of a file's name. */
const DAY = /(?<![\w/-])\d{4}-\d{2}-\d{2}(?![\w/-])/g;
/** What stands in quotation marks is somebody's own words or what to write in a file, and stays. */
const QUOTED = /(“[^”]*”)/;

/**
 * What a finding or a refusal says, for people of a locale: its figures, days, names of allergens and spelling. Where
 * decimals have a comma, thousands have a narrow space, as in `countText`.
 */
export function findingAsRead(what: string, locale: string): string {
  const words = outsideQuotes(what, (part) =>
    spelledIn(allergenAsRead(dayAsRead(groupedAsRead(part, locale), locale), locale), locale),
  );
  return textAsRead(words, locale);
}

/** A way out, for people of a locale: its counts and spelling alone, since decimals and days are written as files have them. */
export function wayOutAsRead(wayOut: string, locale: string): string {
  return outsideQuotes(wayOut, (part) => spelledIn(groupedAsRead(part, locale), locale));
}

function outsideQuotes(text: string, read: (part: string) => string): string {
  return text
    .split(QUOTED)
    .map((part) => (part.startsWith('“') ? part : read(part)))
    .join('');
}

function groupedAsRead(text: string, locale: string): string {
  const group = decimalMark(locale) === '.' ? ',' : '\u202f';
  return text.replace(THOUSANDS, (count) => count.replaceAll(',', group));
}

function dayAsRead(text: string, locale: string): string {
  return text.replace(DAY, (iso) => {
    const day = parseDay(iso);
    return day.ok ? dateText(day.value, locale) : iso;
  });
}
