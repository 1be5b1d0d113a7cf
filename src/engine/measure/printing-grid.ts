import Fraction from 'fraction.js';

/** The amounts that a measure can show: whole multiples of `unit`, and `marks` between them. */
export interface Grid {
  readonly unit: Fraction;
  /** Shares of the unit, rising, the first 0. */
  readonly marks: readonly Fraction[];
}

/**
 * How amounts of one kind are printed. Amounts, grids and limits are in one and the same unit.
 */
export interface Ladder {
  /** From the usual grid to ever coarser ones, for amounts that make the usual one needlessly fine. */
  readonly usual: readonly [Grid, ...Grid[]];
  /** Finer grids that hold amounts exactly where they meet one, and otherwise the nearest. */
  readonly spoons: readonly Grid[];
  /** Still finer ones, for amounts so small that nothing before is within the tolerance. */
  readonly fine: readonly Grid[];
  /** What to print where no grid is within the tolerance; must itself be. */
  readonly beyond: (amount: Fraction, rule: PrintRule) => Fraction;
}

/** `line` is the nearest amount, `at-least` never less than the exact one. */
export type PrintRule = 'line' | 'at-least';

/** A printed amount differs from the exact one by no more than this share of it (2 %). */
export const TOLERANCE = new Fraction(1n, 50n);

/** A step below this share of the amount is finer than kitchen measures and scales hold it. */
const FINEST_SHARE = new Fraction(1n, 1000n);

const NO_MARKS = [new Fraction(0n)];

/** The marks ¼ ⅓ ½ ⅔ ¾ of measuring cups, and of ounces on USDA recipe cards. */
export const CUP_MARKS: readonly Fraction[] = ['0', '1/4', '1/3', '1/2', '2/3', '3/4'].map(
  (m) => new Fraction(m),
);

/** A grid of whole multiples of `unit`, with marks between them if given. */
export function grid(unit: Fraction | bigint | string, marks: readonly Fraction[] = NO_MARKS): Grid {
  return { unit: new Fraction(unit), marks };
}

/** The largest distance between two neighbors: the first mark is as far from 0 as any two are from each other. */
function step({ unit, marks }: Grid): Fraction {
  return marks[1] ? unit.mul(marks[1]) : unit;
}

function below({ unit, marks }: Grid, amount: Fraction): Fraction {
  const whole = amount.div(unit).floor();
  const rest = amount.div(unit).sub(whole);
  return whole.add(marks.findLast((mark) => mark.lte(rest))!).mul(unit);
}

function above({ unit, marks }: Grid, amount: Fraction): Fraction {
  const whole = amount.div(unit).floor();
  const rest = amount.div(unit).sub(whole);
  return whole.add(marks.find((mark) => mark.gte(rest)) ?? 1n).mul(unit);
}

/** The amount on the grid that the rule asks for; a tie of nearest ones goes up. */
export function onGrid(on: Grid, amount: Fraction, rule: PrintRule): Fraction {
  const up = above(on, amount);
  if (rule === 'at-least') return up;
  const down = below(on, amount);
  return amount.sub(down).lt(up.sub(amount)) ? down : up;
}

/** True where the amount shown is no more than 2 % of the exact one away from it. */
export function withinTolerance(shown: Fraction, amount: Fraction): boolean {
  return shown.sub(amount).abs().lte(amount.mul(TOLERANCE));
}

/**
 * The amount to print for an exact one above zero: exactly that where the usual or spoon grids have it in
 * steps of at least a thousandth of the amount; else, from the usual grid to finer ones, the first whose
 * nearest amount (`line`), or next one up (`at-least`), is within 2 % of it.
 */
export function printable(amount: Fraction, ladder: Ladder, rule: PrintRule): Fraction {
  const least = amount.mul(FINEST_SHARE);
  const start = ladder.usual.find((g) => step(g).gte(least)) ?? ladder.usual.at(-1)!;
  const coarse = [start, ...ladder.spoons];
  if (coarse.some((g) => step(g).gte(least) && below(g, amount).equals(amount))) return amount;
  for (const g of [...coarse, ...ladder.fine]) {
    const shown = onGrid(g, amount, rule);
    if (withinTolerance(shown, amount)) return shown;
  }
  return ladder.beyond(amount, rule);
}
