import { readNumber, tidy } from '../measure/mixed-number.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

const UNIT = /^(a|amps?|amperes?)$/i;
/** The most that one piece of a caterer's equipment may draw. */
const MOST = 1000n;

/** Reads what a piece of equipment draws, `16 A` or `12.5 amps`, as amperes: above 0 and at most 1000. */
export function parseAmperes(text: string): Parsed<number> {
  const shown = `“${text.slice(0, 40).trim()}”`;
  const number = readNumber(tidy(text.slice(0, 40)));
  if (!number.ok || !UNIT.test(number.value.rest))
    return notParsed(
      `${shown} is not a current in amperes`,
      'write it such as 16 A; it is on the rating plate',
    );
  const { value } = number.value;
  return value.n === 0n || value.gt(MOST)
    ? notParsed(`${shown} can’t be right`, `write more than 0 A and at most ${MOST} A, or leave it out`)
    : parsed(value.valueOf());
}
