import { decimalMark } from '../../engine/money/display-money.ts';
import { allergenAsRead } from './allergen-as-read.ts';
import { clockText } from './clock-text.ts';
import { percentText } from './percent-text.ts';

/*
 * Offers, records of events, prep plans and the engine’s own sentences hold figures in one form, whatever the locale: a
 * point, 24 hours, `75 %`. Programs read them so, what is frozen must stay so, and an old plan is shown like today’s. They
 * become what people of the locale read where they are shown, here and nowhere else.
 */

const PERCENT = /(?<![\w.,])(\d+(?:\.\d+)?)[ \u00a0]?%/g;
const CLOCK = /(?<![\w:+.])(?:[01]\d|2[0-3]):[0-5]\d(?![\w:]|[ \u00a0\u202f]?[ap]\.?m\b)/gi;
/** A number with a point; not the section of a code, an address, a sum that is written already. */
const DECIMAL = /(?<![\w.,/-])(\d+)\.(\d+)(?![\w.,/-]*\d)/g;
/** What stands in quotation marks is somebody’s own words or what to write in a file, and stays. */
const QUOTED = /(“[^”]*”)/;

/** A sentence or figure in data’s form, for people of a locale. One that is in their form already stays. */
export function textAsRead(text: string, locale: string): string {
  const mark = decimalMark(locale);
  return text
    .split(QUOTED)
    .map((part) =>
      part.startsWith('“')
        ? part
        : part
            .replace(PERCENT, (rate) => percentText(rate.replace(/[ \u00a0]?%$/, ' %'), locale))
            .replace(CLOCK, (clock) => clockText(clock, locale))
            .replace(DECIMAL, `$1${mark}$2`),
    )
    .join('');
}

/** The fields of plans and of pages' data that hold figures or sentences with figures in them. */
const FIELDS = new Set(
  [
    'serveAt at begins ends goesIn comesOut takes',
    'printed need makes amount counted perGuest overage batches lastFull before after by left missing expected',
    'more risk limits odds keeps hold next limit when crew floor standsIn share full fewer',
    'what wayOut why said decided late moved gear notes amounts packs without how differs lines stale waiting',
    'label paid quantity spread mean from to atLeast planned served eaten back out proposal',
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
