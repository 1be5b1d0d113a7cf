import Fraction from 'fraction.js';
import { unitAfter, unitWord } from '../measure/find-unit.ts';
import { kitchenAmount } from '../measure/kitchen-amount.ts';
import { mixedNumberText } from '../measure/mixed-number.ts';
import { parseQuantity } from '../measure/parse-quantity.ts';
import type { Quantity } from '../measure/quantity.ts';
import { definedFactor, type MeasureSystem, unitKind } from '../measure/units.ts';
import { type Statement, statement } from '../text/statement.ts';

/** What cups, spoons and scales are divided by; ⅖ stands on none of them. */
const GLYPH_DENOMINATORS: ReadonlySet<bigint> = new Set([1n, 2n, 3n, 4n, 6n, 8n]);
const THOUSAND = new Fraction(1000n);
const TWO = new Fraction(2n);
const HUNDRED = new Fraction(100n);

/** A number for a cook to read, and whether it is exactly the one meant. */
interface NumberText {
  readonly text: string;
  readonly exact: boolean;
}

/*
 * Thirds and eighths as fractions, what ends within three decimals as a decimal; everything else is shown to
 * two decimals, below one to three significant ones, and is then not exact.
 */
function numberText(value: Fraction): NumberText {
  return GLYPH_DENOMINATORS.has(value.d) ? { text: mixedNumberText(value), exact: true } : decimalText(value);
}

function decimalText(value: Fraction): NumberText {
  if (value.mul(THOUSAND).d === 1n) return { text: value.toString(3), exact: true };
  let places = 2;
  for (let small = value.mul(HUNDRED); small.lt(10n) && places < 9; small = small.mul(10n)) places += 1;
  return { text: value.round(places).toString(places), exact: false };
}

/** Units of which scales and jugs show tenths, and nobody a third. */
const METRIC = new Set(['kg', 'g', 'l', 'dl', 'cl', 'ml']);

/** The number of an amount: in decimals for a metric unit. */
function amountNumber({ amount, unit }: Quantity): NumberText {
  return METRIC.has(unit) ? decimalText(amount) : numberText(amount);
}

/** A number as a statement shows it: `16⅔`, `1.05`, `41.03`. For amounts of zero or more. */
export function plainNumber(value: Fraction): string {
  return numberText(value).text;
}

/** A number with the sign that says whether it is exact: `= 16⅔`, `≈ 3.14`. */
export function signedNumber(value: Fraction): string {
  const { text, exact } = numberText(value);
  return `${exact ? '=' : '≈'} ${text}`;
}

/** An amount in its own unit, not carried into others: `200 fl oz`, `16⅔ roasts`, `41.03 oz`, `2.5 kg`. */
export function plainAmount(q: Quantity): string {
  const { text } = amountNumber(q);
  return `${text} ${unitAfter(text, q.unit, q.amount)}`;
}

/** What a statement comes to, with its sign: `= 200 fl oz`, or `≈ 41.03 oz` where the figure shown is rounded. */
export function comesTo(q: Quantity): string {
  const { text, exact } = amountNumber(q);
  return `${exact ? '=' : '≈'} ${text} ${unitAfter(text, q.unit, q.amount)}`;
}

/**
 * The same with the amount as a kitchen measures it, where that says it in other words:
 * `= 200 fl oz = 1 gal 2 qt 1 cup`. Never below the exact amount.
 */
export function comesToMeasured(q: Quantity, measures: MeasureSystem): string {
  const plain = comesTo(q);
  if (unitKind(q.unit) === 'count' || q.amount.n === 0n) return plain;
  const measured = kitchenAmount(q, measures, 'at-least');
  if (measured === plainAmount(q)) return plain;
  return `${plain} ${isExactly(measured, q) ? '=' : '≈'} ${measured}`;
}

/** A share in percent: `8 %`, `12½ %`. */
export function percent(share: Fraction): string {
  return `${plainNumber(share.mul(HUNDRED))} %`;
}

/** A share to a whole percent, as an eye judges how full a pan is; at least 1 %. */
export function wholePercent(share: Fraction): string {
  const whole = share.mul(HUNDRED).round();
  return `${whole.n === 0n ? 1n : whole.n} %`;
}

/** What a unit is called without a number: `lb`, `servings`. */
export function unitsText(unit: string): string {
  return unitWord(unit, TWO);
}

/** A number of guests, never with a fraction in it: `87.5`, `20.4`; two decimals, half up. */
export function guestNumber(guests: Fraction): string {
  return guests.round(2).toString(2);
}

/** `1 guest`, `87.5 guests`, `0 guests`. */
export function guestsSaid(guests: Fraction): Statement {
  return statement('why.guests', { n: guests.valueOf(), count: guestNumber(guests) });
}

/** A number of batches: fractions that cups show, in a metric kitchen decimals: `2½`, `2.5`. */
function batchNumber(batches: Fraction, measures: MeasureSystem): NumberText {
  return measures === 'metric' ? decimalText(batches) : numberText(batches);
}

/** The number that decides between one and many as a statement shows it: `½ batch` is one, `0.4 batches` are many. */
export function oneOrMany(value: Fraction, measures: MeasureSystem): number {
  const { text } = batchNumber(value, measures);
  return text === '1' || (value.lte(1n) && !text.includes('.')) ? 1 : 2;
}

/** `½ batch`, `2½ batches`; in a metric kitchen `0.5 batches`, `2.5 batches`. */
export function batchesSaid(batches: Fraction, measures: MeasureSystem): Statement {
  return statement('why.batches', {
    n: oneOrMany(batches, measures),
    count: batchNumber(batches, measures).text,
  });
}

/** A number of batches with the sign that says whether it is exact: `= 2½`, in a metric kitchen `= 2.5`. */
export function signedBatches(batches: Fraction, measures: MeasureSystem): string {
  const { text, exact } = batchNumber(batches, measures);
  return `${exact ? '=' : '≈'} ${text}`;
}

/** `1 helping`, `1,200 helpings`. */
export function helpingsSaid(helpings: number): Statement {
  return statement('why.helpings', { n: helpings, count: { count: helpings } });
}

function isExactly(text: string, q: Quantity): boolean {
  const read = parseQuantity(text);
  if (!read.ok) return false;
  const factor = definedFactor(read.value.unit, q.unit);
  return factor?.mul(read.value.amount).equals(q.amount) ?? false;
}
