import type { Choice } from '../engine/quote/choice.ts';
import { type Quote, quote } from '../engine/quote/quote.ts';
import type { ClientTerms } from './client-terms.ts';
import { coverageOf, coverageWords, type DishDifference, dishDifference } from './proposal-choice-dishes.ts';
import { type ComparedRow, comparedRows } from './proposal-choice-rows.ts';
import { choiceOfSide, packageOf, type Side } from './proposal-choice-sides.ts';
import { differenceWords } from './proposal-choice-words.ts';

/** Two sides priced and set against each other, as finished text. */
export interface Comparison {
  readonly names: readonly [string, string];
  readonly words: string;
  readonly rows: readonly ComparedRow[];
  readonly dishes: DishDifference;
  readonly coverage: readonly { readonly label: string; readonly cells: readonly [string, string] }[];
}

/** A side with its choice and what that costs. */
export interface PricedSide {
  readonly name: string;
  readonly guests: number;
  readonly choice: Choice;
  readonly quote: Quote;
}

/** Compares two sides. `known` are rows that stay although neither side has them now. */
export function comparisonOf(
  data: ClientTerms,
  [a, b]: readonly [PricedSide, PricedSide],
  known?: ReadonlyMap<string, string>,
): Comparison {
  const [coveredA, coveredB] = [coverageOf(data, a.choice), coverageOf(data, b.choice)];
  return {
    names: [a.name, b.name],
    words: differenceWords(data.terms, [a, b]),
    rows: comparedRows(data.terms, [a.quote, b.quote], known),
    dishes: dishDifference(data, a.choice, b.choice),
    coverage: coveredA.map((each, index) => ({
      label: each.label,
      cells: [coverageWords(each), coverageWords(coveredB[index] ?? each)],
    })),
  };
}

/** What a side costs. */
export function pricedSide(data: ClientTerms, side: Side): PricedSide {
  const choice = choiceOfSide(data, side);
  const { name } = packageOf(data, side.package);
  return { name, guests: side.guests, choice, quote: quote(data.terms, choice) };
}
