import type { Choice } from '../../engine/quote/choice.ts';
import { type Quote, quote } from '../../engine/quote/quote.ts';
import type { ScriptSay } from '../../words/script-words.ts';
import { coverageOf, type DishDifference, dishDifference } from './proposal-choice-dishes.ts';
import { type ComparedRow, comparedRows } from './proposal-choice-rows.ts';
import { choiceOfSide, packageOf, type Side } from './proposal-choice-sides.ts';
import { differenceWords } from './proposal-choice-words.ts';
import type { ClientTerms } from './terms.ts';

/** The sums of two sides set against each other, as finished text. */
export interface ComparedSums {
  readonly names: readonly [string, string];
  readonly words: string;
  readonly rows: readonly ComparedRow[];
}

/** The menus of two sides set against each other, whatever their guest counts. */
export interface ComparedMenus {
  readonly dishes: DishDifference;
  readonly coverage: readonly { readonly label: string; readonly cells: readonly [string, string] }[];
}

/** All that a comparison shows. */
export type Comparison = ComparedSums & ComparedMenus;

/** A side with its choice and what that costs. */
export interface PricedSide {
  readonly name: string;
  readonly guests: number;
  readonly choice: Choice;
  readonly quote: Quote;
}

/** Compares what two sides cost. `known` are rows that stay although neither side has them now. */
export function comparedSums(
  say: ScriptSay,
  { terms }: Pick<ClientTerms, 'terms'>,
  sides: readonly [PricedSide, PricedSide],
  known?: ReadonlyMap<string, string>,
): ComparedSums {
  return {
    names: [sides[0].name, sides[1].name],
    words: differenceWords(say, terms, sides),
    rows: comparedRows(say, terms, [sides[0].quote, sides[1].quote], known),
  };
}

/** Compares what two sides serve, and whom they feed. */
export function comparedMenus(
  say: ScriptSay,
  data: ClientTerms,
  [a, b]: readonly [PricedSide, PricedSide],
): ComparedMenus {
  const [coveredA, coveredB] = [coverageOf(say, data, a.choice), coverageOf(say, data, b.choice)];
  return {
    dishes: dishDifference(data, a.choice, b.choice),
    coverage: coveredA.map((each, index) => ({
      label: each.label,
      cells: [each.words, (coveredB[index] ?? each).words],
    })),
  };
}

/** What a side costs. */
export function pricedSide(data: ClientTerms, side: Side): PricedSide {
  const choice = choiceOfSide(data, side);
  const { name } = packageOf(data, side.package);
  return { name, guests: side.guests, choice, quote: quote(data.terms, choice) };
}
