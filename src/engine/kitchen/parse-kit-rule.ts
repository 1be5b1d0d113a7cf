import { singular } from '../measure/count-words.ts';
import { parseGuestCount } from '../measure/guest-count.ts';
import { tidy } from '../measure/mixed-number.ts';
import { parseQuantity } from '../measure/parse-quantity.ts';
import type { Quantity } from '../measure/quantity.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import type { KIT_BASES } from './kit.ts';

/** A rule as it is written, before anybody knows what its word names. */
export interface WrittenKitRule {
  readonly amount: Quantity;
  readonly per: bigint;
  /** In lower case, as it is and in the singular: `field-ovens`, `field-oven`. */
  readonly words: readonly [asWritten: string, singular: string];
  readonly written: string;
}

const PER = /^(.+?) per (?:(\d{1,7}) )?(\p{L}[\p{L}\p{N} -]{0,59})$/iu;
const WAY_OUT = 'write it such as “2 per event”, “1 per 50 guests” or “1 per field-oven”';
const SAME: Readonly<Record<string, (typeof KIT_BASES)[number]>> = {
  person: 'guest',
  head: 'guest',
  crew: 'staff',
  'buffet line': 'line',
};

/** Reads how much kit goes along for what: `2 each per event`, `5 gal per 10 staff`, `1 per grill`. Zero on either side is refused. */
export function parseKitRule(text: string): Parsed<WrittenKitRule> {
  const written = tidy(text.slice(0, 200));
  const [, left, count = '1', words] = PER.exec(written) ?? [];
  if (left === undefined || words === undefined)
    return notParsed(`“${written.slice(0, 60)}” does not tell how many go along for what`, WAY_OUT);
  const amount = parseQuantity(left);
  if (!amount.ok) return amount;
  const per = parseGuestCount(count);
  if (!per.ok || per.value === 0) return notParsed(`“${written.slice(0, 60)}” is for none`, WAY_OUT);
  const lower = words.toLowerCase();
  const one = singular(lower);
  return parsed({ amount: amount.value, per: BigInt(per.value), words: [lower, SAME[one] ?? one], written });
}
