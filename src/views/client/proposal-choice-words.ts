import { displayMoney } from '../../engine/money/display-money.ts';
import { compare, money } from '../../engine/money/money.ts';
import { perGuestCounts, type Quote } from '../../engine/quote/quote.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { groupsText } from '../../exports/words/counted-text.ts';
import type { ScriptSay } from '../../words/script-words.ts';
import { apart } from './proposal-choice-rows.ts';

/** A side of a comparison as sentences name it. */
export interface NamedSide {
  /** The menu's name. */
  readonly name: string;
  readonly guests: number;
  readonly quote: Quote;
}

/**
 * Which side costs less in all and for each guest, in two sentences at most: `B, the Quay Supper for 90 guests, comes
 * to $412.00 less than A: $5,210.00 against $5,622.00.`
 */
export function differenceWords(
  say: ScriptSay,
  terms: Pick<Terms, 'currency' | 'locale' | 'perGuest'>,
  [a, b]: readonly [NamedSide, NamedSide],
): string {
  const show = (amount: string) => displayMoney(money(amount, terms.currency), terms.locale);
  const order = orderOf(terms, a.quote.total, b.quote.total);
  const each = say('sides.each', {
    guests: groupsText(say, perGuestCounts(terms)),
    a: show(a.quote.perGuest),
    b: show(b.quote.perGuest),
  });
  if (order === 0) return `${say('sides.same', { sum: show(a.quote.total) })} ${each}`;
  const [letter, less, other, more] = order < 0 ? ['A', a, 'B', b] : ['B', b, 'A', a];
  const words = say('sides.less', {
    letter,
    menu: less.name,
    n: less.guests,
    difference: apart(less.quote.total, more.quote.total, terms),
    other,
    less: show(less.quote.total),
    more: show(more.quote.total),
  });
  return `${words} ${each}`;
}

/** Guest counts, in order, at which the same side costs less, or both the same. */
export interface Run {
  readonly from: number;
  readonly to: number;
  readonly less: 'a' | 'b' | 'same';
}

/** Which side costs less at each count: runs of counts, from totals in the same order as the counts. */
export function runsOf(
  terms: Pick<Terms, 'currency' | 'locale'>,
  counts: readonly number[],
  totals: readonly [readonly string[], readonly string[]],
): Run[] {
  const runs: Run[] = [];
  for (const [index, count] of counts.entries()) {
    const order = orderOf(terms, totals[0][index] ?? '0', totals[1][index] ?? '0');
    const less = order === 0 ? 'same' : order < 0 ? 'a' : 'b';
    const last = runs.at(-1);
    if (last?.less === less) runs[runs.length - 1] = { ...last, to: count };
    else runs.push({ from: count, to: count, less });
  }
  return runs;
}

/** The most runs that are told; where prices go back and forth more often, the picture tells the rest. */
const TOLD_RUNS = 4;

/** Where one side becomes cheaper than the other at the same guest count, as a sentence. */
export function runWords(say: ScriptSay, runs: readonly Run[]): string {
  const [first] = runs;
  if (!first) return '';
  if (runs.length === 1) return say('runs.one', { ...first });
  const told = runs.slice(0, TOLD_RUNS).map((run, index) => {
    const { from, to, less } = run;
    if (index === 0) return say('run.up-to', { less, n: to });
    if (index === runs.length - 1) return say('run.from', { less, n: from });
    return from === to ? say('run.at', { less, n: from }) : say('run.between', { less, from, to });
  });
  return say(runs.length > TOLD_RUNS ? 'runs.many' : 'runs.several', { runs: told.join('; ') });
}

/** The counts at which the side that costs less changes: the first count of every run but the first. */
export function crossingsOf(runs: readonly Run[]): number[] {
  return runs.slice(1).map((run) => run.from);
}

/** Counts after which one more guest makes the total smaller, a sentence each; empty where there are none. */
export function priceStepWords(
  say: ScriptSay,
  terms: Pick<Terms, 'currency' | 'locale'>,
  name: string,
  counts: readonly number[],
  totals: readonly string[],
): string {
  const steps = counts.filter((_, index) => {
    const [now, next] = [totals[index], totals[index + 1]];
    return now !== undefined && next !== undefined && orderOf(terms, next, now) < 0;
  });
  return steps.map((count) => say('price-drop', { menu: name, more: count + 1, fewer: count })).join(' ');
}

function orderOf({ currency }: Pick<Terms, 'currency'>, a: string, b: string): number {
  return compare(money(a, currency), money(b, currency));
}
