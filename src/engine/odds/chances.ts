/**
 * The chances of the whole numbers from 0 on: place k holds the chance of exactly k, and all sum to 1. Chances are
 * neither money nor amounts, so that they are binary floating-point numbers; every step multiplies and adds positive
 * numbers only, which keeps some thirteen digits over any number of guests here.
 */
export type Chances = Float64Array;

/** Less than this is taken for a rounding error where two chances are compared, as at a tie. */
export const CLOSE = 1e-12;

/** One number for certain. Throws for one that is not whole or below 0. */
export function certainly(number: number): Chances {
  if (!Number.isInteger(number) || number < 0) throw new Error(`${number} is not a number of helpings`);
  const chances = new Float64Array(number + 1);
  chances[number] = 1;
  return chances;
}

/** The sum of two numbers that do not depend on each other: the convolution of their chances, term by term. */
export function sumOf(one: Chances, other: Chances): Chances {
  const [few, many] = one.length <= other.length ? [one, other] : [other, one];
  const sum = new Float64Array(few.length + many.length - 1);
  for (let i = 0; i < few.length; i += 1) {
    const chance = few[i] as number;
    if (chance === 0) continue;
    for (let j = 0; j < many.length; j += 1) sum[i + j]! += chance * (many[j] as number);
  }
  return sum;
}

/** The sum of so many numbers with the same chances, none depending on another; exact, by halving and doubling. */
export function timesOver(one: Chances, count: number): Chances {
  let sum = certainly(0);
  let power = one;
  for (let left = count; left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) sum = sumOf(sum, power);
    if (left > 1) power = sumOf(power, power);
  }
  return sum;
}

/** One of two: the first with the chance given, else the second. */
export function eitherOf(chance: number, first: Chances, second: Chances): Chances {
  const mixed = new Float64Array(Math.max(first.length, second.length));
  for (const [k, value] of first.entries()) mixed[k]! += chance * value;
  for (const [k, value] of second.entries()) mixed[k]! += (1 - chance) * value;
  return mixed;
}

/** The chance of more than a number, summed from the far end, where the small terms are. */
export function chanceAbove(chances: Chances, number: number): number {
  let above = 0;
  for (let k = chances.length - 1; k > number && k >= 0; k -= 1) above += chances[k] as number;
  return above;
}

/** The least number that is exceeded with at most the chance given: a quantile of 1 less that chance. */
export function leastWithin(chances: Chances, risk: number): number {
  let above = 0;
  for (let k = chances.length - 1; k > 0; k -= 1) {
    above += chances[k] as number;
    if (above > risk + CLOSE) return k;
  }
  return 0;
}

/** The number to be expected: each by its chance. */
export function expected(chances: Chances): number {
  let sum = 0;
  for (const [k, chance] of chances.entries()) sum += k * chance;
  return sum;
}
