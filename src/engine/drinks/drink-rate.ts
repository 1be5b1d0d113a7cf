import type Fraction from 'fraction.js';
import { readNumber, tidy } from '../measure/mixed-number.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** How many drinks one guest takes: in the first hour, and in each hour after it. Exact, zero or above. */
export interface DrinkRate {
  readonly first: Fraction;
  readonly after: Fraction;
}

/** More than this in an hour is not believed. */
const MOST_AN_HOUR = 20n;
const WAY_OUT = 'write it as “2 in the first hour, then 1 per hour” or “1 per hour”';
const PARTS = /^(.+?) in the first hour,? then (.+?) per hour$/i;
const PLAIN = /^(.+?) per hour$/i;

/** Reads `2 in the first hour, then 1 per hour` or `1½ per hour`, exact. */
export function parseDrinkRate(text: string): Parsed<DrinkRate> {
  const plain = tidy(text.slice(0, 120));
  const parts = PARTS.exec(plain);
  const [first, then] = parts
    ? [parts[1], parts[2]]
    : Array<string | undefined>(2).fill(PLAIN.exec(plain)?.[1]);
  if (first === undefined || then === undefined)
    return notParsed(`“${plain.slice(0, 60)}” does not say how many drinks per hour`, WAY_OUT);
  const [early, late] = [drinks(first), drinks(then)];
  if (!early.ok) return early;
  if (!late.ok) return late;
  return early.value.n + late.value.n === 0n
    ? notParsed(`at “${plain}” nobody drinks anything`, WAY_OUT)
    : parsed({ first: early.value, after: late.value });
}

function drinks(text: string): Parsed<Fraction> {
  const number = readNumber(text);
  if (!number.ok || !/^(drinks?)?$/i.test(number.value.rest))
    return notParsed(`“${text.slice(0, 40)}” is not a number of drinks`, WAY_OUT);
  const { value } = number.value;
  return value.gt(MOST_AN_HOUR)
    ? notParsed(`nobody takes ${text} drinks in an hour`, `write ${MOST_AN_HOUR} or fewer`)
    : parsed(value);
}

/** Drinks that one guest takes over so many hours, exact; less than an hour counts as that part of the first. */
export function drinksOver({ first, after }: DrinkRate, hours: Fraction): Fraction {
  return hours.lte(1n) ? first.mul(hours) : first.add(after.mul(hours.sub(1n)));
}
