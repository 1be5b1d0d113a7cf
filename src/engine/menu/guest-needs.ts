import Fraction from 'fraction.js';
import { type Need, needParts, parseNeed } from '../food/need.ts';
import type { Guests } from '../quote/counts.ts';
import { atTable } from '../quote/counts.ts';
import { type Statement, statement } from '../text/statement.ts';

/** Guests with one need, each guest once, under all that he or she needs. */
export interface GuestNeed {
  /** As written: `vegan + no gluten`. */
  readonly text: string;
  readonly guests: number;
  /** Null where Salver does not know the words. */
  readonly need: Need | null;
  /** False where the client has not stated it and the kitchen plans for it. */
  readonly said: boolean;
}

const NO_MEAT: readonly string[] = ['vegetarian', 'vegan', 'pescatarian'];

/**
 * The needs to cook for: those the client named, and where guests who eat no meat were not stated, the
 * kitchen's share of the table as vegetarians, up to a whole guest (5 to 10 % is common practice, no source).
 * A need named with a count of 0 is stated, so nothing is planned for it.
 */
export function guestNeeds(
  said: ReadonlyMap<string, number>,
  guests: Guests,
  noMeat: Fraction | undefined,
): GuestNeed[] {
  const named = [...said].map(([text, count]): GuestNeed => {
    const need = parseNeed(text);
    return { text, guests: count, need: need.ok ? need.value : null, said: true };
  });
  const planned = named.filter((each) => each.guests > 0);
  const told = named.some(({ need }) => need && needParts(need).some(isNoMeat));
  if (told || !noMeat || noMeat.n === 0n) return planned;
  const table = new Fraction(BigInt(atTable(guests)));
  const assumed: GuestNeed = {
    text: 'vegetarian',
    guests: Number(table.mul(noMeat).ceil().n),
    need: { kind: 'diet', diet: 'vegetarian' },
    said: false,
  };
  return assumed.guests > 0 ? [...planned, assumed] : planned;
}

/** A need with its guests: `9 × vegetarian`, `1 × allergy: tree nuts`, `8 × vegetarian (not stated; assumed)`. */
export function guestNeedSaid({ text, guests, need, said }: GuestNeed): Statement {
  const values = { guests: String(guests), need: text };
  if (!said) return statement('found.need-assumed', values);
  const allergy = need && needParts(need).every(({ kind }) => kind !== 'diet');
  return statement(allergy ? 'found.allergy' : 'found.need', values);
}

function isNoMeat(part: ReturnType<typeof needParts>[number]): boolean {
  return part.kind === 'diet' && NO_MEAT.includes(part.diet);
}
