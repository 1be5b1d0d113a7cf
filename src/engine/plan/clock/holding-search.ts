import Fraction from 'fraction.js';
import { standsWithoutControl } from '../../safety/time-without-control.ts';
import type { Lag, ScheduleProblem } from '../../schedule/problem.ts';
import type { Keeps } from '../days/holding-room.ts';
import type { ClockStep } from './clock-step.ts';
import { loadOfEvent } from './day-problem.ts';
import { type Filling, fillings, type Held, type HeldFood, heldAt } from './holding.ts';
import { dayProblem, type Solved } from './solved.ts';

/** A date's problem and the times found for it. */
export interface SolvedDay {
  readonly problem: ScheduleProblem;
  readonly solution: Solved;
}

/** How many times food is made to wait less, and how many dishes are tried each time. */
const TRIED = { rounds: 4, foods: 4 } as const;
const NOTHING = new Fraction(0n);
const ALL = new Fraction(1n);
const KINDS: readonly Keeps[] = ['hot', 'cold'];

/**
 * A date whose waiting food has room in what keeps it hot or cold: as it was solved, where that fits; else solved again
 * with food for a later truck finished only once an earlier one is loaded, work begun no earlier, and no food that time
 * alone keeps safe begun earlier. Where nothing fits, that in which the least is
 * over. What is tried, and in which order, does not depend on how much room there is, so more room never does worse.
 */
export function withRoom<T extends SolvedDay>(
  first: T,
  steps: readonly ClockStep[],
  held: readonly Held[],
): T {
  let best = first;
  let least = overIn(first, held);
  if (least.equals(NOTHING)) return first;
  const isAsGood = noEarlier(first, steps);
  for (const tried of tries(first, held)) {
    if (!isAsGood(tried)) continue;
    const over = overIn(tried, held);
    if (over.equals(NOTHING)) return tried;
    if (over.lt(least)) [best, least] = [tried, over];
  }
  return best;
}

/** By how much more than all of the room is taken up at the most, hot and cold together; 0 where all has room. */
export function overIn({ solution }: SolvedDay, held: readonly Held[]): Fraction {
  const foods = heldAt(held, solution.at);
  return KINDS.reduce((sum, keeps) => {
    const most = peakOf(fillings(foods, keeps))?.share ?? NOTHING;
    return most.gt(ALL) ? sum.add(most.sub(ALL)) : sum;
  }, NOTHING);
}

function noEarlier(first: SolvedDay, steps: readonly ClockStep[]): (tried: SolvedDay) => boolean {
  const byTime = steps.filter(({ batch }) => standsWithoutControl(batch.recipe)).map(({ id }) => id);
  const begin = ({ solution }: SolvedDay) =>
    Math.min(...solution.schedule.placed.map((placed) => placed.begin));
  const beginOf = ({ solution }: SolvedDay, id: string) => solution.at(id)?.begins ?? Infinity;
  return (tried) =>
    begin(tried) >= begin(first) && byTime.every((id) => beginOf(tried, id) >= beginOf(first, id));
}

/** Less and less waiting hot; then less and less waiting cold, as solved first and with the least that waits hot. */
function* tries<T extends SolvedDay>(first: T, held: readonly Held[]): Generator<T> {
  let last = { day: first, lags: [] as readonly Lag[] };
  for (const tried of lessAndLess(last, held, 'hot')) {
    last = tried;
    yield tried.day;
  }
  for (const start of last.day === first ? [last] : [{ day: first, lags: [] }, last])
    for (const { day } of lessAndLess(start, held, 'cold')) yield day;
}

interface Bounded<T> {
  readonly day: T;
  /** What has been asked for beyond the problem. */
  readonly lags: readonly Lag[];
}

/** A date with a lower peak each time: one dish more is finished after the peak of the time before. */
function* lessAndLess<T extends SolvedDay>(
  start: Bounded<T>,
  held: readonly Held[],
  keeps: Keeps,
): Generator<Bounded<T>> {
  let now = start;
  for (let round = 0; round < TRIED.rounds; round++) {
    const peak = peakIn(now.day, held, keeps);
    if (!peak) return;
    const better = triedFrom(peak)
      .flatMap((food): (Bounded<T> & { peak: Filling | undefined })[] => {
        const tried = bounded(now, food, peak.until);
        return tried ? [{ ...tried, peak: peakIn(tried.day, held, keeps) }] : [];
      })
      .filter((tried) => isLower(tried.peak, peak))
      .reduce<(Bounded<T> & { peak: Filling | undefined }) | undefined>(
        (a, b) => (a && !isLower(b.peak, a.peak) ? a : b),
        undefined,
      );
    if (!better) return;
    now = { day: better.day, lags: better.lags };
    yield now;
  }
}

/** What waits on after a peak: what takes up the most of it first. */
function triedFrom({ foods, until }: Filling): HeldFood[] {
  return foods
    .filter((food) => food.until > until)
    .sort((a, b) => b.share.compare(a.share) || a.from - b.from)
    .slice(0, TRIED.foods);
}

/** The date solved again with some food finished no earlier than a minute, counted back from its truck. */
function bounded<T extends SolvedDay>(
  { day, lags }: Bounded<T>,
  food: HeldFood,
  minute: number,
): Bounded<T> | undefined {
  const [ready] = food.after.slice(-1);
  if (ready === undefined) return undefined;
  const lag: Lag = {
    from: ready,
    to: loadOfEvent(food.event),
    kind: 'end-begin',
    most: food.until - minute,
    why: 'room',
  };
  const problem = { ...day.problem, lags: [...day.problem.lags, lag] };
  const solution = dayProblem(problem).solved('final');
  return solution.complete ? { day: { ...day, problem, solution }, lags: [...lags, lag] } : undefined;
}

function peakIn({ solution }: SolvedDay, held: readonly Held[], keeps: Keeps): Filling | undefined {
  return peakOf(fillings(heldAt(held, solution.at), keeps));
}

/** The fullest stretch, the first of several. */
function peakOf(stretches: readonly Filling[]): Filling | undefined {
  return stretches.reduce<Filling | undefined>((a, b) => (a && !b.share.gt(a.share) ? a : b), undefined);
}

function isLower(a: Filling | undefined, b: Filling | undefined): boolean {
  if (!a || !b) return !a && b !== undefined;
  return a.share.lt(b.share) || (a.share.equals(b.share) && a.until - a.from < b.until - b.from);
}
