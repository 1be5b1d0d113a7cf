import { oddsText } from '../../odds/shortage.ts';

/** What every figure of odds rests on, and where it ends; said wherever one is shown. */
export const ODDS_LIMITS =
  'These odds hold if guests choose each for themselves by the appetite stated, and come or stay away each party for itself. Where all do as their neighbours do, or the weather keeps many away, a dish runs short more often, and more comes back, than is said here. An appetite is the kitchen’s own estimate; the odds are no surer than it is.';

/** A chance inside a sentence: `at about 1 in 40 events like this`, `never, by these shares`. */
export function atOdds(chance: number): string {
  const text = oddsText(chance);
  return /^(?:at|never)\b/.test(text) ? text : `at ${text}`;
}

/** A number of helpings to be expected, to one decimal. */
export function expectedText(helpings: number): string {
  return helpings.toLocaleString('en-US', { maximumFractionDigits: 1 });
}
