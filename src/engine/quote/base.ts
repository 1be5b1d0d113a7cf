import { type Money, sum } from '../money/money.ts';
import type { LineClass } from './line-class.ts';
import type { PricedLine } from './priced-line.ts';

/** What the lines of certain classes come to. */
export function baseOf(lines: readonly PricedLine[], classes: readonly LineClass[], currency: string): Money {
  return sum(
    lines.filter((line) => isIn(line, classes)).map((line) => line.amount),
    currency,
  );
}

/** Whether a line belongs to one of the classes. */
export function isIn(line: PricedLine, classes: readonly LineClass[]): boolean {
  return line.class !== null && classes.includes(line.class);
}
