import Fraction from 'fraction.js';
import { INCH } from './parse-length.ts';

/** A sheet of stickers as it is bought, in millimetres, and how far this printer's sheets come out beside it. */
export interface LabelSheet {
  readonly sheet: { readonly width: Fraction; readonly height: Fraction };
  readonly label: { readonly width: Fraction; readonly height: Fraction };
  readonly columns: number;
  readonly rows: number;
  /** From the sheet's upper edge to the first row. */
  readonly above: Fraction;
  /** From the sheet's left edge to the first column. */
  readonly beside: Fraction;
  /** Between two columns; rows follow each other without a gap. */
  readonly between: Fraction;
  /** By how much all of it is printed further right and further down; negative to the left and up. */
  readonly nudge: { readonly right: Fraction; readonly down: Fraction };
}

const mm = (text: string) => new Fraction(text);
const inches = (text: string) => new Fraction(text).mul(INCH);
const STRAIGHT = { right: new Fraction(0n), down: new Fraction(0n) };

/**
 * Two common stocks of ten to a sheet. The margins are common practice, no source: makers differ by parts of a
 * millimetre, so that a kitchen can say its own.
 */
export const LABEL_SHEETS: Readonly<Record<'letter' | 'a4', LabelSheet>> = {
  letter: {
    sheet: { width: inches('17/2'), height: inches('11') },
    label: { width: inches('4'), height: inches('2') },
    columns: 2,
    rows: 5,
    above: inches('1/2'),
    beside: inches('5/32'),
    between: inches('3/16'),
    nudge: STRAIGHT,
  },
  a4: {
    sheet: { width: mm('210'), height: mm('297') },
    label: { width: mm('991/10'), height: mm('57') },
    columns: 2,
    rows: 5,
    above: mm('6'),
    beside: mm('93/20'),
    between: mm('5/2'),
    nudge: STRAIGHT,
  },
};

/** Whether every label lies whole on the sheet, nudged as it is. */
export function fitsSheet({
  sheet,
  label,
  columns,
  rows,
  above,
  beside,
  between,
  nudge,
}: LabelSheet): boolean {
  const left = beside.add(nudge.right);
  const top = above.add(nudge.down);
  const right = left.add(label.width.mul(columns)).add(between.mul(columns - 1));
  const bottom = top.add(label.height.mul(rows));
  return left.gte(0n) && top.gte(0n) && right.lte(sheet.width) && bottom.lte(sheet.height);
}
