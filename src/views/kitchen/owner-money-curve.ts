import { type Money, money } from '../../engine/money/money.ts';
import type { MoneyPoint } from '../../engine/plan/money/at.ts';
import type { Fall, MarginCurve } from '../../engine/plan/money/curve.ts';
import type { WordKey } from '../../words/catalogues.ts';
import type { Say } from '../../words/words-in.ts';
import type { MarginPictureView, MarginView, MoneyRowView } from './owner-money.ts';

type Show = (sum: Money) => string;

/** So many rows stand beside the picture, besides the counts that something happens at. */
const ROWS = 8;

/** So many falls are told one by one. */
const MOST_FALLS = 6;

/** The curve as the page shows it: picture, sentences and tables say the same. */
export function marginView(curve: MarginCurve, differs: string, show: Show, say: Say): MarginView {
  const rows = curve.points.map((point) => rowOf(point, curve, show, say));
  const kept = countsKept(curve);
  return {
    picture: pictureOf(curve, show, say),
    breakEven: breakEvenText(curve, say),
    how: howText(curve, say),
    differs,
    rows: rows.filter((_, index) => kept.has(curve.points[index]?.guests ?? 0)),
    allRows: rows,
    revenueFalls: fallTexts(curve.revenueFalls, EARNED, show, say),
    marginFalls: fallTexts(curve.marginFalls, MARGIN, show, say),
  };
}

function breakEvenText({ breakEven, from, to, step }: MarginCurve, say: Say): string {
  if (breakEven.kind === 'never') return say('money.even.never', { n: to });
  if (breakEven.kind === 'always')
    return say(step === 1 ? 'money.even.always' : 'money.even.always-tried', { n: from, to });
  return say(step === 1 ? 'money.even.from' : 'money.even.from-tried', {
    n: breakEven.guests,
    to,
    below: breakEven.guests - 1,
  });
}

function howText({ step, from, to }: MarginCurve, say: Say): string {
  const which =
    step === 1 ? say('money.how.every', { from, to }) : say('money.how.steps', { from, to, step });
  return `${which} ${say('money.how.rest')}`;
}

function rowOf(point: MoneyPoint, { planned, breakEven }: MarginCurve, show: Show, say: Say): MoneyRowView {
  const { guests } = point;
  const even = breakEven.kind === 'from' && breakEven.guests === guests;
  const isPlanned = guests === planned;
  return {
    guests: String(guests),
    revenue: show(point.revenue),
    food: show(point.food),
    labour: show(point.labour),
    other: show(point.other),
    margin: show(point.margin),
    note: even
      ? say(isPlanned ? 'money.row.planned-even' : 'money.row.even')
      : isPlanned
        ? say('money.row.planned')
        : '',
  };
}

/** Counts for the short table: evenly spread, the planned one, the break-even and the deepest falls. */
function countsKept({ points, planned, breakEven, marginFalls, revenueFalls }: MarginCurve): Set<number> {
  const kept = new Set([planned]);
  for (let row = 0; row < ROWS; row += 1) {
    const point = points[Math.round((row * (points.length - 1)) / (ROWS - 1))];
    if (point) kept.add(point.guests);
  }
  if (breakEven.kind === 'from') kept.add(breakEven.guests - 1).add(breakEven.guests);
  for (const { before, after } of [...revenueFalls.slice(0, 2), ...marginFalls.slice(0, 2)])
    kept.add(before).add(after);
  return kept;
}

/** What falls, for a count from which as much comes in again and where there is none. */
interface FallKeys {
  readonly back: WordKey;
  readonly forGood: WordKey;
}

const EARNED: FallKeys = { back: 'money.fall.earned', forGood: 'money.fall.earned-for-good' };
const MARGIN: FallKeys = { back: 'money.fall.margin', forGood: 'money.fall.margin-for-good' };

function fallTexts(falls: readonly Fall[], keys: FallKeys, show: Show, say: Say): string[] {
  const told = falls.slice(0, MOST_FALLS).map(({ before, after, was, is, regained }) => {
    const values = { before, n: after, was: show(was), is: show(is) };
    return regained === null ? say(keys.forGood, values) : say(keys.back, { ...values, again: regained });
  });
  const more = falls.length - told.length;
  return more > 0 ? [...told, say('money.falls-more', { n: more })] : told;
}

function pictureOf(curve: MarginCurve, show: Show, say: Say): MarginPictureView {
  const { points, planned, breakEven, from, to } = curve;
  const drawn = points.map(({ guests, margin }) => ({ guests, margin: margin.amount.toNumber() }));
  const chosen = points.find(({ guests }) => guests === planned);
  const [first, last] = [points[0], points.at(-1)];
  if (!chosen || !first || !last) throw new Error('a margin curve has its planned count');
  const { currency } = chosen.margin;
  const sums = ticks(
    Math.min(0, ...drawn.map(({ margin }) => margin)),
    Math.max(0, ...drawn.map(({ margin }) => margin)),
    5,
  );
  return {
    points: drawn,
    counts: ticks(from, to, 7).filter((count) => count >= from && count <= to),
    sums: sums.map((margin) => ({
      margin,
      // Marks are whole numbers, so that no sum is made of a binary fraction.
      text: show(money(String(margin), currency)),
    })),
    planned: {
      guests: planned,
      margin: chosen.margin.amount.toNumber(),
      text: say('money.picture.planned', { n: planned, margin: show(chosen.margin) }),
    },
    breakEven:
      breakEven.kind === 'from'
        ? { guests: breakEven.guests, text: say('money.picture.even', { n: breakEven.guests }) }
        : null,
    said: say('money.picture', {
      n: from,
      least: show(first.margin),
      most: show(last.margin),
      to,
      margin: show(chosen.margin),
      planned,
      even: breakEvenText(curve, say),
    }),
  };
}

/** Round whole numbers, about so many, from below the least to above the most. */
export function ticks(least: number, most: number, about: number): number[] {
  const rough = Math.max(1, (most - least) / about);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = Math.max(1, [1, 2, 5, 10].map((each) => each * power).find((each) => each >= rough) ?? rough);
  const begin = Math.floor(least / step);
  const end = Math.ceil(most / step);
  return Array.from({ length: end - begin + 1 }, (_, index) => (begin + index) * step);
}
