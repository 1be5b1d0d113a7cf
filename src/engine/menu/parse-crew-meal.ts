import Fraction from 'fraction.js';
import { parseShare } from '../measure/parse-share.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import type { CrewMeal } from './crew-meal.ts';

const WAY_OUT =
  'write “none”, “the menu”, “75 % of the menu”, or dishes with the amount for one person: { braised-lamb: 6 oz }';
const WHOLE = new Fraction(1n);

/** Reads what the crew eats where it is no dish of its own: `none`, `the menu`, or `75 % of the menu`. */
export function parseCrewMeal(text: string): Parsed<Exclude<CrewMeal, { kind: 'dishes' }>> {
  const plain = text.trim().toLowerCase();
  if (plain === 'none') return parsed({ kind: 'none' });
  if (plain === 'the menu') return parsed({ kind: 'menu', share: WHOLE });
  const written = /^(.+?) of the menu$/.exec(plain)?.[1];
  const share = written === undefined ? undefined : parseShare(written);
  if (!share?.ok) return notParsed(`“${text.slice(0, 40)}” is not a meal for the crew`, WAY_OUT);
  return share.value.n === 0n || share.value.gt(WHOLE)
    ? notParsed(`the crew can’t eat ${written} of a guest’s amount`, 'write a share above 0 and up to 100 %')
    : parsed({ kind: 'menu', share: share.value });
}
