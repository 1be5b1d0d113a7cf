import { type Statement, statement } from '../text/statement.ts';
import { type Chances, CLOSE, chanceAbove, leastWithin } from './chances.ts';

/** The chance that more helpings are wanted than are carried. */
export function chanceOfShortage(demand: Chances, carried: number): number {
  return chanceAbove(demand, Math.floor(carried));
}

/** The least whole number of helpings with which a dish runs short with at most the chance given. */
export function leastHelpings(demand: Chances, risk: number): number {
  return leastWithin(demand, risk);
}

/**
 * The number of helpings that balances a missing one against a left-over one: the least by which the chance of
 * enough reaches the critical ratio missing ÷ (missing + left over), the rule of the single-period stock problem.
 * Both costs are of one helping, in the same money; only their ratio counts. Undefined where both are nothing.
 */
export function balancedHelpings(demand: Chances, missing: number, leftOver: number): number | undefined {
  const both = missing + leftOver;
  if (!(both > 0)) return undefined;
  return leastWithin(demand, 1 - missing / both);
}

/** Helpings that will be wanted and not be there, to be expected. */
export function expectedShort(demand: Chances, carried: number): number {
  let short = 0;
  for (let k = demand.length - 1; k > carried; k -= 1) short += (k - carried) * (demand[k] as number);
  return short;
}

/** Helpings that will come back, to be expected. */
export function expectedLeft(demand: Chances, carried: number): number {
  let left = 0;
  for (let k = 0; k < Math.min(demand.length, carried); k += 1) left += (carried - k) * (demand[k] as number);
  return left;
}

/** One in so many is the least chance that is told. */
const RAREST = 10_000;

/**
 * A chance as a cook says it: `about 1 in 40 events like this`. Between even and certain it is told by tens; below
 * one in ten thousand it is not told more exactly than the shares it comes from are known.
 */
export function oddsSaid(chance: number): Statement {
  return chanceSaid(chance, {
    rare: 'why.chance.rare',
    tens: 'why.chance.tens',
    oneIn: 'why.chance.one-in',
  });
}

/** The same inside a sentence: `at about 1 in 40 events like this`, `never, by these shares`. */
export function atOdds(chance: number): Statement {
  return chanceSaid(chance, { rare: 'why.at.rare', tens: 'why.at.tens', oneIn: 'why.at.one-in' });
}

function chanceSaid(
  chance: number,
  keys: { readonly rare: string; readonly tens: string; readonly oneIn: string },
): Statement {
  if (chance <= CLOSE) return statement('why.chance.never');
  if (chance < 1 / RAREST) return statement(keys.rare, { n: { count: RAREST } });
  if (chance >= 0.95) return statement(chance >= 1 - CLOSE ? 'why.chance.every' : 'why.chance.nearly-every');
  if (chance > 0.45) return statement(keys.tens, { n: String(Math.round(chance * 10)) });
  return statement(keys.oneIn, { n: { count: Number((1 / chance).toPrecision(2)) } });
}
