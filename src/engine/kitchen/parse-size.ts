import Fraction from 'fraction.js';
import type { BoxSize } from '../measure/box-size.ts';
import { readNumber, tidy } from '../measure/mixed-number.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { lengthUnit } from './parse-length.ts';

const BOX_WAY = 'write length × width × height, such as 25 × 17 × 24 in or 60 × 40 × 50 cm';

/** Reads the outside of a box, `25 × 17 × 24 in`, `60 x 40 x 50 cm`, as exact millimetres, each above 0 and up to 10 m. */
export function parseBoxSize(text: string): Parsed<BoxSize> {
  const [length, width, height, ...more] = sidesOf(text);
  return length && width && height && more.length === 0
    ? parsed({ length, width, height })
    : notParsed(`“${text.slice(0, 40)}” is not the size of a box`, BOX_WAY);
}

const LONGEST = new Fraction(10_000n);

/** The sides in millimetres; none where one of them is no length. */
function sidesOf(text: string): Fraction[] {
  const parts = tidy(text.slice(0, 60)).split(/\s*[×x]\s*/i);
  const last = readNumber(parts.at(-1) ?? '');
  const unit = last.ok ? lengthUnit(last.value.rest) : undefined;
  if (!last.ok || !unit) return [];
  const numbers = [...parts.slice(0, -1).map((part) => readNumber(part)), last];
  const sides = numbers.flatMap((number, index) => {
    if (!number.ok || (index < parts.length - 1 && number.value.rest.trim() !== '')) return [];
    const side = number.value.value.mul(unit);
    return side.gt(0n) && side.lte(LONGEST) ? [side] : [];
  });
  return sides.length === parts.length ? sides : [];
}
