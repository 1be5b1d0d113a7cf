import Fraction from 'fraction.js';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { type ConversionSide, readConversionSide, type SideReading } from './conversion-slash.ts';
import { LONGEST_AMOUNT } from './parse-quantity.ts';
import { type Quantity, writtenText } from './quantity.ts';
import { definedFactor, UNITS } from './units.ts';

/** A food's own conversion: two amounts of it that are the same, `1 can = 104 oz`. */
export interface Conversion {
  readonly left: Quantity;
  readonly right: Quantity;
}

const WAY_OUT = 'write two equal amounts of the food, such as 1 can = 104 oz';

/**
 * Reads `1 can = 104 oz`. Both sides are amounts above zero. Between units that a definition already links
 * only the truth is accepted (`1 lb = 16 oz`): a share that is lost in preparing is a yield, not this. A slash is
 * read as `readConversionSide` says.
 */
export function parseConversion(text: string): Parsed<Conversion> {
  const sides = text.length > 2 * LONGEST_AMOUNT + 3 ? [] : text.split('=');
  if (sides.length !== 2) return notParsed(`"${text.slice(0, 60)}" is not a conversion`, WAY_OUT);
  const [first, second] = sides.map(readConversionSide) as [Parsed<ConversionSide>, Parsed<ConversionSide>];
  if (!first.ok) return first;
  if (!second.ok) return second;
  const [left, right] = [first.value.quantity, second.value.quantity];
  const defined = definedFactor(left.unit, right.unit);
  if (defined !== undefined && !left.amount.mul(defined).equals(right.amount)) {
    return notParsed(
      `"${text.trim()}" contradicts the definition of ${left.unit} and ${right.unit}`,
      'leave it out; trim and prep loss go in the food’s yield',
    );
  }
  return parsed({ left, right });
}

/** The sides of a conversion, as written, whose slash could mean something else than was read. */
export function slashReadings(text: string): SideReading[] {
  return text.split('=').flatMap((side) => {
    const read = readConversionSide(side);
    return read.ok && read.value.slash ? [read.value.slash] : [];
  });
}

/** The conversion as a cook writes it, exact; `parseConversion` reads it back to the same. */
export function conversionText(conversion: Conversion): string {
  return `${writtenText(conversion.left)} = ${writtenText(conversion.right)}`;
}

/** Where a unit stands in the graph: units that a definition links stand together. */
interface Place {
  readonly node: string;
  readonly size: Fraction;
}

function placeOf(unit: string): Place {
  const defined = UNITS.get(unit);
  return defined
    ? { node: defined.kind, size: defined.size }
    : { node: `of ${unit}`, size: new Fraction(1n) };
}

function sizeOf(q: Quantity): Fraction {
  return q.amount.mul(placeOf(q.unit).size);
}

/**
 * The food's conversions that lead from one unit to another, in the order of use: the fewest there are,
 * then those written first. Empty where a definition suffices, `undefined` where no way leads.
 */
export function conversionPath(
  from: string,
  to: string,
  conversions: readonly Conversion[],
): readonly Conversion[] | undefined {
  const goal = placeOf(to).node;
  const ways = new Map<string, readonly Conversion[]>([[placeOf(from).node, []]]);
  // A Map hands out keys added during the walk too, so this one loop is the whole breadth-first search.
  for (const [node, way] of ways) {
    if (node === goal) return way;
    for (const conversion of conversions) {
      const left = placeOf(conversion.left.unit).node;
      const right = placeOf(conversion.right.unit).node;
      const next = left === node ? right : right === node ? left : node;
      if (!ways.has(next)) ways.set(next, [...way, conversion]);
    }
  }
  return undefined;
}

/** Ways already found, as `FACTORS` below. */
const WAYS = new WeakMap<readonly Conversion[], Map<string, readonly string[]>>();

/**
 * The units at which each conversion of the way from one unit to another arrives, in the order of use; empty where
 * a definition suffices or no way leads.
 */
export function unitsAlong(from: string, to: string, conversions: readonly Conversion[]): readonly string[] {
  const known = WAYS.get(conversions) ?? new Map<string, readonly string[]>();
  WAYS.set(conversions, known);
  const key = `${from} > ${to}`;
  const way = known.get(key) ?? arrivals(from, conversionPath(from, to, conversions) ?? []);
  known.set(key, way);
  return way;
}

function arrivals(from: string, path: readonly Conversion[]): string[] {
  let { node } = placeOf(from);
  return path.map(({ left, right }) => {
    const { unit } = placeOf(left.unit).node === node ? right : left;
    node = placeOf(unit).node;
    return unit;
  });
}

/** How many `to` one `from` is, along these conversions, exactly. */
function factorAlong(from: string, to: string, path: readonly Conversion[]): Fraction {
  let { node, size } = placeOf(from);
  for (const { left, right } of path) {
    const forwards = placeOf(left.unit).node === node;
    const [here, there] = forwards ? [left, right] : [right, left];
    size = size.div(sizeOf(here)).mul(sizeOf(there));
    node = placeOf(there.unit).node;
  }
  return size.div(placeOf(to).size);
}

/**
 * Factors already worked out, by the list of conversions and the two units. A plan converts the same foods
 * between the same units again and again, and lists of conversions never change once read.
 */
const FACTORS = new WeakMap<readonly Conversion[], Map<string, Fraction | undefined>>();

function factor(from: string, to: string, conversions: readonly Conversion[]): Fraction | undefined {
  const known = FACTORS.get(conversions) ?? new Map<string, Fraction | undefined>();
  FACTORS.set(conversions, known);
  const key = `${from} > ${to}`;
  if (!known.has(key)) {
    const path = conversionPath(from, to, conversions);
    known.set(key, path && factorAlong(from, to, path));
  }
  return known.get(key);
}

/**
 * The same quantity of a food in another unit, exactly: by definition within mass and within volume, else by
 * the food's own conversions, the shortest way. `undefined` where no way leads. The list of conversions must
 * not be changed afterwards.
 */
export function convert(q: Quantity, to: string, conversions: readonly Conversion[]): Quantity | undefined {
  if (q.unit === to) return q;
  const ratio = factor(q.unit, to, conversions);
  return ratio && { amount: q.amount.mul(ratio), unit: to };
}

/** Two ways between the same units of one food that do not agree. */
export interface Contradiction {
  /** The later conversion of the two ways. */
  readonly conversion: Conversion;
  /** The way by the conversions written before it; empty where a definition says otherwise. */
  readonly route: readonly Conversion[];
  /** How many of the conversion's right unit one of its left unit is, as the conversion says. */
  readonly says: Fraction;
  /** The same as the route says. */
  readonly routeSays: Fraction;
}

/**
 * Every conversion whose factor differs from that of the way the conversions before it give, by more than
 * `tolerance` of the latter (a share: 1/20 is 5 %). Published cup weights are rounded, so a checker allows
 * some; with tolerance 0 the comparison is exact, and no finding means that all ways agree.
 */
export function contradictions(
  conversions: readonly Conversion[],
  tolerance: Fraction,
): readonly Contradiction[] {
  return conversions.flatMap((conversion, index) => {
    const { left, right } = conversion;
    const route = conversionPath(left.unit, right.unit, conversions.slice(0, index));
    if (route === undefined) return [];
    const says = right.amount.div(left.amount);
    const routeSays = factorAlong(left.unit, right.unit, route);
    const off = says.sub(routeSays).abs();
    return off.gt(routeSays.mul(tolerance)) ? [{ conversion, route, says, routeSays }] : [];
  });
}
