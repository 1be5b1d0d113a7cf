import { parseKeeps } from '../../../engine/kitchen/parse-keeps.ts';
import type { ReturnFacts } from '../../../engine/kitchen/return-facts.ts';
import { type Parsed, parsed } from '../../../engine/parsed.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { moneyIn } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

type ReturnText = Pick<
  NonNullable<KitchenText['rentals']>[string],
  'hired from' | 'back within' | 'washed' | 'replacement'
>;

/** What a thing states of its way back, to be spread into it; nothing where it states nothing. A day by which to return what nobody hires out is said to be of no use. */
export function linkReturn(
  reading: Reading,
  text: ReturnText,
  currency: string,
): { readonly back?: ReturnFacts } {
  const within = text['back within'];
  const backWithin =
    within === undefined ? undefined : reading.understand(['back within'], within, parseBackWithin);
  const replacement =
    text.replacement === undefined
      ? undefined
      : reading.understand(['replacement'], text.replacement, moneyIn(currency));
  const hiredFrom = text['hired from'];
  if (hiredFrom === undefined && (within !== undefined || text.washed === 'hirer')) {
    const field = within === undefined ? 'washed' : 'back within';
    reading.say(
      'missing-field',
      [field],
      `“${field}” is stated, but not whom it is hired from`,
      'write “hired from”, or leave it out',
    );
  }
  const back = {
    ...(hiredFrom !== undefined && { hiredFrom }),
    ...(backWithin !== undefined && { backWithin }),
    ...(text.washed && { washed: text.washed }),
    ...(replacement !== undefined && { replacement }),
  };
  return Object.keys(back).length === 0 ? {} : { back };
}

/** `the same day`, `2 days`, `1 week`. */
function parseBackWithin(text: string): Parsed<number> {
  if (/^(the )?same day$/i.test(text.trim())) return parsed(0);
  const read = parseKeeps(text);
  return read.ok
    ? read
    : {
        ...read,
        what: `“${text.slice(0, 40)}” is not a time`,
        wayOut: 'write “the same day”, “2 days” or “1 week”',
      };
}
