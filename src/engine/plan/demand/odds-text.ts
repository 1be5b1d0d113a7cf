import { statement } from '../../text/statement.ts';

/** What every figure of odds rests on, and where it ends; said wherever one is shown. */
export const ODDS_LIMITS = statement('why.odds-limits');

/** A number of helpings to be expected, to one decimal, in data's form. */
export function expectedText(helpings: number): string {
  return String(Math.round(helpings * 10) / 10);
}
