import { allergenAsRead } from './allergen-as-read.ts';
import { textAsRead } from './text-as-read.ts';

/** The fields of plans and of pages' data that hold figures or sentences with figures in them. */
const FIELDS = new Set(
  [
    'serveAt at begins ends until cooledBy coldBy waitsIn throwAwayBy goesIn comesOut takes',
    'printed need makes amount counted perGuest overage batches lastFull before after by left missing expected',
    'more risk limits odds keeps hold next limit when crew floor standsIn share full fewer',
    'what wayOut why said decided late moved gear notes amounts packs without how differs lines stale waiting',
    'high glass label paid quantity spread mean from to atLeast planned served eaten back out proposal',
    'most amperes needed emptied weight foodWeighs payload leaves serves pan heat readings',
  ].flatMap((names) => names.split(' ')),
);

/** The fields that name allergens, or sentences that do; no list that dishes are looked up in by their names. */
const ALLERGENS = new Set('contains mayContain allergen allergens what about need'.split(' '));

/**
 * The same data with each figure in it as people of the locale read it, and allergens in their spelling. Names, dates, ids
 * and exact figures stay.
 */
export function figuresAsRead<T>(data: T, locale: string): T {
  return walked(data, locale, '') as T;
}

/** `field` is the one that it stands in, for lists too. */
function walked(data: unknown, locale: string, field: string): unknown {
  if (typeof data === 'string') {
    const read = FIELDS.has(field) ? textAsRead(data, locale) : data;
    return ALLERGENS.has(field) ? allergenAsRead(read, locale) : read;
  }
  if (Array.isArray(data)) return data.map((each) => walked(each, locale, field));
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([name, value]) => [name, walked(value, locale, name)]));
}
