import Fraction from 'fraction.js';
import { parseClock } from '../kitchen/parse-clock.ts';
import { type Conversion, convert } from '../measure/conversions.ts';
import { singular } from '../measure/count-words.ts';
import { findUnit } from '../measure/find-unit.ts';
import { tidy } from '../measure/mixed-number.ts';
import { parseQuantity } from '../measure/parse-quantity.ts';
import { type Quantity, timesQuantity, writtenText } from '../measure/quantity.ts';
import { unitKind } from '../measure/units.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { readShare } from './share-words.ts';

/** A container that a dish went out in, and what one of them held. */
export interface FilledContainer {
  readonly id: string;
  readonly name: string;
  readonly each: Quantity;
}

/** A dish as it went out: what its leftovers are read against. */
export interface CarriedFood {
  readonly carried: Quantity;
  readonly containers: readonly FilledContainer[];
  /** What its finished food converts by. */
  readonly conversions: readonly Conversion[];
}

/** What became of a dish: what came back in the unit it was carried in, or that it ran out. */
export interface CameBack {
  readonly back: Quantity;
  readonly ranOut: boolean;
  /** HH:MM at which it ran out; undefined where nobody looked. */
  readonly at: string | undefined;
}

/** The longest text read as what came back. */
const LONGEST = 120;

const RAN_OUT = /^(?:it )?ran out(?: at)?(?: (\S.*))?$/i;

/**
 * Reads what came back of a dish, in the containers it went out in or in any amount it can be counted by: `2 pans and
 * a third`, `1½ full-pan-4`, `half a tub`, `40 pieces`, `2 lb 4 oz`, `nothing`, `everything`, `ran out at 20:15`. A
 * container counts as it was filled for this dish. Exact. Fails on what the dish cannot be counted by, on a word that
 * several of its containers answer to, and on more than was carried.
 */
export function parseCameBack(text: string, food: CarriedFood): Parsed<CameBack> {
  const plain = tidy(text);
  if (plain.length > LONGEST) return notParsed('that is too long', wayOut(food));
  const none = timesQuantity(food.carried, new Fraction(0n));
  if (/^(?:nothing|none|0)$/i.test(plain)) return parsed({ back: none, ranOut: false, at: undefined });
  if (/^(?:all|everything)$/i.test(plain))
    return parsed({ back: food.carried, ranOut: false, at: undefined });
  const out = RAN_OUT.exec(plain);
  if (out) {
    const at = out[1] === undefined ? undefined : parseClock(out[1]);
    if (at && !at.ok) return at;
    return parsed({ back: none, ranOut: true, at: at?.value });
  }
  const back = amountLeft(plain, food);
  if (!back.ok) return back;
  if (back.value.amount.gt(food.carried.amount))
    return notParsed(
      `“${plain}” is ${writtenText(back.value)}, but only ${writtenText(food.carried)} went out`,
      'give what came back of it, or `everything`',
    );
  return parsed({ back: back.value, ranOut: false, at: undefined });
}

interface Part {
  readonly count: Fraction;
  /** What one of it is; undefined where the part names nothing. */
  readonly one: Quantity | undefined;
}

/** The parts joined by `and` or a comma, each in the dish's own unit; one that names nothing means what its neighbour names. */
function amountLeft(text: string, food: CarriedFood): Parsed<Quantity> {
  const parts: Part[] = [];
  for (const words of text.split(/ and |[,+&]/i).map((part) => part.trim())) {
    const part = readPart(words, food);
    if (!part.ok) return part;
    parts.push(part.value);
  }
  let sum = new Fraction(0n);
  for (const [index, { count, one }] of parts.entries()) {
    const before = parts.slice(0, index).findLast((part) => part.one)?.one;
    const meant = one ?? before ?? parts.slice(index).find((part) => part.one)?.one ?? ownUnit(food);
    if (!meant) return notParsed(`“${text}” has no unit`, wayOut(food));
    sum = sum.add(meant.amount.mul(count));
  }
  return parsed({ amount: sum, unit: food.carried.unit });
}

function readPart(words: string, food: CarriedFood): Parsed<Part> {
  const share = readShare(words);
  if (!share) return notParsed(`“${words}” is not an amount`, wayOut(food));
  const { value: count, rest } = share;
  if (rest === '') return parsed({ count, one: undefined });
  if (!/\p{N}/u.test(rest) || food.containers.some(({ id }) => id === rest.toLowerCase())) {
    const one = oneOf(rest, food);
    return one.ok ? parsed({ count, one: one.value }) : one;
  }
  const whole = parseQuantity(words);
  if (!whole.ok) return whole;
  const own = convert(whole.value, food.carried.unit, food.conversions);
  return own
    ? parsed({ count: new Fraction(1n), one: own })
    : notParsed(`“${words}” can’t be converted to ${food.carried.unit}`, wayOut(food));
}

/** What one of a container, or of a unit that the dish can be counted by, is in the dish's own unit. */
function oneOf(words: string, food: CarriedFood): Parsed<Quantity> {
  const said = words.toLowerCase();
  const { containers, conversions, carried } = food;
  const exact = containers.find(({ id, name }) => id === said || name.toLowerCase() === said);
  if (exact) return parsed(exact.each);
  const unit = findUnit(words);
  const one = unit.ok
    ? convert({ amount: new Fraction(1n), unit: unit.value }, carried.unit, conversions)
    : undefined;
  if (one) return parsed(one);
  const called = containers.filter((container) => answersTo(container, said));
  const [first, ...others] = called;
  if (!first)
    return notParsed(`“${words}” is neither a container of this dish nor an amount of it`, wayOut(food));
  if (others.some(({ each }) => !each.amount.equals(first.each.amount)))
    return notParsed(
      `“${words}” could be ${called.map(({ id }) => id).join(' or ')}`,
      'write the id of the right one',
    );
  return parsed(first.each);
}

function answersTo({ id, name }: FilledContainer, said: string): boolean {
  const words = [...id.split('-'), ...name.toLowerCase().split(/[^\p{L}\d]+/u)];
  return words.some((word) => word !== '' && singular(word) === singular(said));
}

function ownUnit({ carried }: CarriedFood): Quantity | undefined {
  return unitKind(carried.unit) === 'count' ? { amount: new Fraction(1n), unit: carried.unit } : undefined;
}

function wayOut({ carried, containers }: CarriedFood): string {
  const ways = [
    ...containers.map(({ id, each }) => `1½ ${id} (${writtenText(each)} in each)`),
    writtenText(carried),
    'nothing',
    'ran out at 20:15',
  ];
  return `write for example ${ways.join(', ')}`;
}
