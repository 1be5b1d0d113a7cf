import { compare, type Money } from '../../money/money.ts';
import { atTable } from '../../quote/counts.ts';
import { choiceAtCount } from '../../quote/scaled-choice.ts';
import { peopleFor } from '../../quote/staff-lines.ts';
import { countedForTier, findTier } from '../../quote/tiers.ts';
import { type MoneyPoint, type MoneySetting, moneyAt } from './at.ts';

/** From which count on an event never loses money again; `always` and `never` are for the counts looked at. */
export type BreakEven =
  | { readonly kind: 'from'; readonly guests: number }
  | { readonly kind: 'always' }
  | { readonly kind: 'never' };

/** Where more guests bring less: `of` one count to that of a larger one. */
export interface Fall {
  readonly before: number;
  readonly after: number;
  readonly was: Money;
  readonly is: Money;
  /** The first count looked at from which as much comes in again; null for none of them. */
  readonly regained: number | null;
}

/** How an event's money moves with its guests. */
export interface MarginCurve {
  /** Rising by count; every count where `step` is 1. */
  readonly points: readonly MoneyPoint[];
  /** Every so many counts were calculated, besides those where the price or the people who serve change. */
  readonly step: number;
  readonly from: number;
  readonly to: number;
  readonly planned: number;
  readonly breakEven: BreakEven;
  /** Over the counts calculated, which have both sides of every price tier. */
  readonly revenueFalls: readonly Fall[];
  readonly marginFalls: readonly Fall[];
}

/** Shares of the planned count, in percent, between which counts are looked at. */
const LEAST_PERCENT = 20;
const MOST_PERCENT = 140;

/** So many counts are calculated one by one; of more, about as many in even steps. */
const MOST_COUNTS = 40;

/**
 * The margin over a range of counts: a fifth of the planned count to two fifths more, no fewer than have stated what
 * they need, no more than the menu has a price for. Up to 40 counts are all calculated; of more, even steps, both sides
 * of every change of price tier and of people who serve, the counts about the planned one, and every count between
 * the last step at a loss and the next. Null where food has no price.
 */
export function marginCurve(setting: MoneySetting): MarginCurve | null {
  const { choice } = setting;
  const planned = atTable(choice.guests);
  const counts = rangeOf(setting, planned);
  const [from, to] = [counts[0] ?? planned, counts.at(-1) ?? planned];
  const step = counts.length <= MOST_COUNTS + 1 ? 1 : Math.ceil((to - from) / MOST_COUNTS);
  const asked = new Set(counts.filter((guests) => (guests - from) % step === 0));
  for (const guests of [planned - 1, planned, planned + 1, to, ...changesIn(setting, counts)])
    if (guests >= from && guests <= to) asked.add(guests);
  const at = moneyAt(setting);
  const points = new Map<number, MoneyPoint>();
  const calculate = (guests: number): boolean => {
    const point = points.get(guests) ?? at(guests);
    if (point) points.set(guests, point);
    return point !== null;
  };
  if (![...asked].every(calculate)) return null;
  const bounds = lastLoss(sorted(points));
  if (bounds && !countsBetween(bounds.loss, bounds.next).every(calculate)) return null;
  const all = sorted(points);
  return {
    points: all,
    step,
    from,
    to,
    planned,
    breakEven: breakEvenOf(all),
    revenueFalls: fallsOf(all.map(({ guests, revenue }) => ({ guests, sum: revenue }))),
    marginFalls: fallsOf(all.map(({ guests, margin }) => ({ guests, sum: margin }))),
  };
}

/** The least count from which no point is at a loss any more. Points must be rising by count. */
export function breakEvenOf(points: readonly Pick<MoneyPoint, 'guests' | 'margin'>[]): BreakEven {
  const last = points.findLastIndex(({ margin }) => margin.amount.lt(0));
  if (last === -1) return { kind: 'always' };
  const next = points[last + 1];
  return next ? { kind: 'from', guests: next.guests } : { kind: 'never' };
}

/** Every stretch over which a sum falls while the count rises, from its top to its bottom, the deepest first. */
export function fallsOf(rows: readonly { readonly guests: number; readonly sum: Money }[]): Fall[] {
  const falls: Fall[] = [];
  for (let index = 1; index < rows.length; index += 1) {
    const top = rows[index - 1];
    let bottom = rows[index];
    if (!top || !bottom || compare(bottom.sum, top.sum) >= 0) continue;
    for (let next = rows[index + 1]; next && compare(next.sum, bottom.sum) < 0; next = rows[index + 1]) {
      bottom = next;
      index += 1;
    }
    const regained = rows.slice(index + 1).find(({ sum }) => compare(sum, top.sum) >= 0);
    falls.push({
      before: top.guests,
      after: bottom.guests,
      was: top.sum,
      is: bottom.sum,
      regained: regained?.guests ?? null,
    });
  }
  const depth = ({ was, is }: Fall) => was.amount.minus(is.amount);
  return falls.sort((a, b) => depth(b).comparedTo(depth(a)) || a.before - b.before);
}

function rangeOf({ choice, chosen, input }: MoneySetting, planned: number): number[] {
  const said = [...input.needs.values()].reduce((total, count) => total + count, 0);
  const least = Math.max(Math.ceil((planned * LEAST_PERCENT) / 100), choice.guests.children + 1, said, 1);
  const most = Math.max(planned, Math.floor((planned * MOST_PERCENT) / 100));
  const priced = chosen.tiers.at(-1)?.to ?? null;
  return countsBetween(Math.min(least, planned) - 1, most + 1).filter((guests) => {
    const counted = countedForTier(chosen, choiceAtCount(chosen, choice, guests).guests);
    return guests === planned || priced === null || counted <= priced;
  });
}

/** Both sides of every change in the price tier and in how many people serve. */
function changesIn({ terms, chosen, choice }: MoneySetting, counts: readonly number[]): number[] {
  const signs = counts.map((guests) => {
    const people = choiceAtCount(chosen, choice, guests).guests;
    const tier = findTier(chosen.tiers, countedForTier(chosen, people)).from;
    const serving = terms.staff.map((role) => peopleFor(role, people));
    return [tier, ...serving].join();
  });
  return counts.flatMap((guests, index) =>
    index > 0 && signs[index] !== signs[index - 1] ? [guests - 1, guests] : [],
  );
}

/** The last count calculated that loses money, and the next one that does not. */
function lastLoss(points: readonly MoneyPoint[]): { loss: number; next: number } | undefined {
  const last = points.findLastIndex(({ margin }) => margin.amount.lt(0));
  const [loss, next] = [points[last], points[last + 1]];
  return loss && next && { loss: loss.guests, next: next.guests };
}

function countsBetween(below: number, above: number): number[] {
  return Array.from({ length: Math.max(0, above - below - 1) }, (_, index) => below + 1 + index);
}

function sorted(points: ReadonlyMap<number, MoneyPoint>): MoneyPoint[] {
  return [...points.values()].sort((a, b) => a.guests - b.guests);
}
