import { parseQuantity } from '../measure/parse-quantity.ts';
import type { Quantity } from '../measure/quantity.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** What a piece of equipment burns in an hour. */
export interface Burns {
  readonly perHour: Quantity;
  /** As it is written: `propane`. Equipment that names it alike shares it. */
  readonly fuel: string;
}

const FORM = /^(.{1,30}?) of ([\p{L}][\p{L} -]{0,30}?) (?:per|an) hour$/iu;

/** Reads what a piece of equipment burns, `9 oz of propane per hour`, `2 lb of charcoal per hour`. */
export function parseBurns(text: string): Parsed<Burns> {
  const [, amount, fuel] = FORM.exec(text.slice(0, 80).trim().replace(/\s+/g, ' ')) ?? [];
  if (amount === undefined || fuel === undefined)
    return notParsed(
      `“${text.slice(0, 40).trim()}” does not give an amount of a fuel in an hour`,
      'write it such as 9 oz of propane per hour; it is on the rating plate or in the manual',
    );
  const perHour = parseQuantity(amount);
  return perHour.ok ? parsed({ perHour: perHour.value, fuel: fuel.toLowerCase() }) : perHour;
}
