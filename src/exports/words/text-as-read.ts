import { decimalMark } from '../../engine/money/display-money.ts';
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
