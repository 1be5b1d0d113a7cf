import { oddsText } from '../../odds/shortage.ts';

/** What every figure of odds rests on, and where it ends; said wherever one is shown. */
export const ODDS_LIMITS =
  'These odds assume that each guest chooses independently, by the appetite you entered, and that each party decides on its own whether to come. If guests copy each other, or weather keeps many away, dishes run short more often, and more comes back, than shown. The odds are only as good as the appetite you entered.';

/** A chance inside a sentence: `at about 1 in 40 events like this`, `never, by these shares`. */
export function atOdds(chance: number): string {
  const text = oddsText(chance);
  return /^(?:at|never)\b/.test(text) ? text : `at ${text}`;
}

/** A number of helpings to be expected, to one decimal. */
export function expectedText(helpings: number): string {
  return helpings.toLocaleString('en-US', { maximumFractionDigits: 1 });
}
