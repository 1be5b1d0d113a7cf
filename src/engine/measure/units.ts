import Fraction from 'fraction.js';

/** What a unit measures. Free count words (`can`, `loaf`) are counts too, without a size. */
export type UnitKind = 'mass' | 'volume' | 'count';

/** The two systems that kitchen amounts are printed in. */
export type MeasureSystem = 'us' | 'metric';

/** A unit with a size by definition. */
export interface Unit {
  /** The canonical name: quantities hold it, and exact text and print use it. */
  readonly id: string;
  readonly kind: UnitKind;
  /** Exact size in grams (mass), millilitres (volume) or single things (count). */
  readonly size: Fraction;
  /** The name for more than one, where it differs from `id`. */
  readonly many?: string;
  /** Other spellings in lower case without full stops. */
  readonly spellings: readonly string[];
}

/*
 * US customary sizes are exact by definition: the inch is 2.54 cm, the gallon 231 cubic inches, the
 * avoirdupois pound 453.59237 g. Source: NIST Handbook 44, Appendix C; the same values in UCUM.
 */
const INCH = new Fraction('2.54');
const GALLON = INCH.mul(INCH).mul(INCH).mul(231n);
const CUP = GALLON.div(16n);
const TABLESPOON = CUP.div(16n);
const POUND = new Fraction('453.59237');

const TABLE: readonly Unit[] = [
  mass('kg', new Fraction(1000n), [
    'kgs',
    'kilo',
    'kilos',
    'kilogram',
    'kilograms',
    'kilogramme',
    'kilogrammes',
  ]),
  mass('g', new Fraction(1n), ['gram', 'grams', 'gramme', 'grammes', 'gm', 'gms']),
  mass('mg', new Fraction(1n, 1000n), ['milligram', 'milligrams']),
  mass('lb', POUND, ['lbs', 'pound', 'pounds']),
  mass('oz', POUND.div(16n), ['ozs', 'ounce', 'ounces']),
  volume('l', new Fraction(1000n), ['liter', 'liters', 'litre', 'litres', 'ltr', 'lt']),
  volume('dl', new Fraction(100n), ['deciliter', 'deciliters', 'decilitre', 'decilitres']),
  volume('cl', new Fraction(10n), ['centiliter', 'centiliters', 'centilitre', 'centilitres']),
  volume('ml', new Fraction(1n), ['mls', 'milliliter', 'milliliters', 'millilitre', 'millilitres']),
  volume('gal', GALLON, ['gals', 'ga', 'gallon', 'gallons']),
  volume('qt', GALLON.div(4n), ['qts', 'quart', 'quarts']),
  volume('pt', GALLON.div(8n), ['pts', 'pint', 'pints']),
  volume('cup', CUP, ['cups'], 'cups'),
  volume('fl oz', GALLON.div(128n), [
    'floz',
    'fluid oz',
    'fluid ounce',
    'fluid ounces',
    'fl ounce',
    'fl ounces',
  ]),
  volume('tbsp', TABLESPOON, ['tbsps', 'tbs', 'tblsp', 'tablespoon', 'tablespoons']),
  volume('tsp', TABLESPOON.div(3n), ['tsps', 'teaspoon', 'teaspoons']),
  count('each', new Fraction(1n), ['ea', 'ct']),
  count('dozen', new Fraction(12n), ['dozens', 'doz', 'dz']),
];

function mass(id: string, size: Fraction, spellings: readonly string[]): Unit {
  return { id, kind: 'mass', size, spellings };
}

function volume(id: string, size: Fraction, spellings: readonly string[], many?: string): Unit {
  return { id, kind: 'volume', size, spellings, ...(many === undefined ? {} : { many }) };
}

function count(id: string, size: Fraction, spellings: readonly string[]): Unit {
  return { id, kind: 'count', size, spellings };
}

/** Every unit with a size by definition, by its id. */
export const UNITS: ReadonlyMap<string, Unit> = new Map(TABLE.map((unit) => [unit.id, unit]));

const BY_SPELLING: ReadonlyMap<string, string> = new Map(
  TABLE.flatMap((unit) => [unit.id, ...unit.spellings].map((spelling) => [spelling, unit.id])),
);

/** The id of the defined unit with this spelling (lower case, no full stops), if there is one. */
export function definedUnit(spelling: string): string | undefined {
  return BY_SPELLING.get(spelling);
}

/** What a canonical unit measures; a free count word is a count. */
export function unitKind(unit: string): UnitKind {
  return UNITS.get(unit)?.kind ?? 'count';
}

/**
 * How many `to` make one `from` by definition, exactly. `undefined` where no definition links them: mass
 * with volume, or a free count word with anything but itself.
 */
export function definedFactor(from: string, to: string): Fraction | undefined {
  if (from === to) return new Fraction(1n);
  const a = UNITS.get(from);
  const b = UNITS.get(to);
  return a && b && a.kind === b.kind ? a.size.div(b.size) : undefined;
}
