import type Fraction from 'fraction.js';
import { unitWord } from './find-unit.ts';
import { fineDecimal } from './fine-decimal.ts';
import { printedNumberText } from './mixed-number.ts';
import { CUP_MARKS, grid, type Ladder, type PrintRule, printable } from './printing-grid.ts';

/** Teaspoons in each measure, by definition. */
const GALLON = 768n;
const QUART = 192n;
const CUP = 48n;
const TABLESPOON = 3n;

const LADDER: Ladder = {
  usual: [grid(CUP, CUP_MARKS), grid(CUP), grid(QUART), grid(GALLON)],
  spoons: [grid(TABLESPOON), grid(1n), grid('1/4')],
  fine: [grid('1/8'), grid('1/3'), grid('1/16')],
  beyond: fineDecimal,
};

/** Cups read from a measuring cup: quarters first, since they and whole spoons make each other up. */
const MARK_SETS = ['quarters', 'thirds'] as const;
const MARKS = {
  quarters: CUP_MARKS.filter((mark) => mark.d !== 3n),
  thirds: CUP_MARKS.filter((mark) => mark.d === 3n),
};

/**
 * Prints a volume above zero as USDA recipe cards do: gallons and quarts whole, cups with ¼ ⅓ ½ ⅔ ¾, then
 * tablespoons whole and teaspoons; no pints. `teaspoons` is the exact volume in US teaspoons. Of the ways to
 * say what is left below a quart, the one with the fewest measures is printed, quarter cups before thirds.
 */
export function usVolumeText(teaspoons: Fraction, rule: PrintRule): string {
  const shown = printable(teaspoons, LADDER, rule);
  const [gallons, belowGallon] = divide(shown, GALLON);
  const [quarts, belowQuart] = divide(belowGallon, QUART);
  return [...measure(gallons, 'gal'), ...measure(quarts, 'qt'), ...cupsAndSpoons(belowQuart)].join(' ');
}

function divide(amount: Fraction, by: bigint): [Fraction, Fraction] {
  const whole = amount.div(by).floor();
  return [whole, amount.sub(whole.mul(by))];
}

function measure(amount: Fraction, unit: string): string[] {
  return amount.n === 0n ? [] : [`${printedNumberText(amount)} ${unitWord(unit, amount)}`];
}

function cupsAndSpoons(amount: Fraction): string[] {
  const [whole, left] = divide(amount, CUP);
  const ways = MARK_SETS.flatMap((set) => {
    const mark = MARKS[set].findLast((m) => m.mul(CUP).lte(left));
    if (mark === undefined) return [];
    const [tablespoons, teaspoons] = divide(left.sub(mark.mul(CUP)), TABLESPOON);
    // From four tablespoons on it is a quarter cup more, so this way would not be said.
    if (tablespoons.gte(4n)) return [];
    return [
      [...measure(whole.add(mark), 'cup'), ...measure(tablespoons, 'tbsp'), ...measure(teaspoons, 'tsp')],
    ];
  });
  return ways.reduce((best, way) => (way.length < best.length ? way : best));
}
