import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { readNumber, tidy } from './mixed-number.ts';

const UNIT = /^(h|hr|hrs|hour|hours)?$/i;
const WAY_OUT = 'write hours such as "6 hours" or "5½ hours"';
const MOST_HOURS = 72n;

/** Reads hours of work, `6 hours`, `5½ h`, `5.5`, as decimal text in quarters: above 0 and at most 72. */
export function parseHours(text: string): Parsed<string> {
  const shown = `“${text.slice(0, 40).trim()}”`;
  const number = readNumber(tidy(text.slice(0, 40)));
  if (!number.ok) return notParsed(number.what, WAY_OUT);
  const { value, rest } = number.value;
  if (!UNIT.test(rest.trim())) return notParsed(`${shown} is not a number of hours`, WAY_OUT);
  const quarters = value.mul(4n);
  if (quarters.d !== 1n || quarters.n === 0n || value.gt(MOST_HOURS)) {
    return notParsed(
      `${shown} is not a working time`,
      `${WAY_OUT}, in quarters of an hour, at most ${MOST_HOURS}`,
    );
  }
  return parsed(value.toString());
}
