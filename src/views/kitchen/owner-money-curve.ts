import { type Money, money } from '../../engine/money/money.ts';
import type { MoneyPoint } from '../../engine/plan/money/at.ts';
import type { Fall, MarginCurve } from '../../engine/plan/money/curve.ts';
import { counted } from '../../engine/text/counted.ts';
import type { MarginPictureView, MarginView, MoneyRowView } from './owner-money.ts';

type Show = (sum: Money) => string;

/** So many rows stand beside the picture, besides the counts that something happens at. */
const ROWS = 8;

/** So many falls are told one by one. */
const MOST_FALLS = 6;

/** The curve as the page shows it: picture, sentences and tables say the same. */
export function marginView(curve: MarginCurve, differs: string, show: Show): MarginView {
  const rows = curve.points.map((point) => rowOf(point, curve, show));
  const kept = countsKept(curve);
  return {
    picture: pictureOf(curve, show),
    breakEven: breakEvenText(curve),
    how: howText(curve),
    differs,
    rows: rows.filter((_, index) => kept.has(curve.points[index]?.guests ?? 0)),
    allRows: rows,
    revenueFalls: fallTexts(curve.revenueFalls, 'what is earned falls', show),
    marginFalls: fallTexts(curve.marginFalls, 'the margin falls', show),
  };
}

function breakEvenText({ breakEven, from, to, step }: MarginCurve): string {
  const looked = step === 1 ? 'at every count' : 'at every count tried';
  if (breakEven.kind === 'never')
    return `The event loses money at every count tried, up to ${counted(to, 'guest')}.`;
  if (breakEven.kind === 'always') return `Profitable ${looked} from ${counted(from, 'guest')} to ${to}.`;
  return `Profitable ${looked} from ${counted(breakEven.guests, 'guest')} to ${to}; at ${breakEven.guests - 1} it loses money.`;
}

function howText({ step, from, to }: MarginCurve): string {
  const which =
    step === 1
      ? `Every count from ${from} to ${to} is quoted and planned on its own`
      : `From ${from} to ${counted(to, 'guest')} every ${step === 2 ? 'second' : step === 3 ? 'third' : `${step}th`} count is quoted and planned on its own, plus both sides of each change in price or serving staff, the counts around the planned one, and all between the last loss and the next count`;
  return `${which}. Adults make the difference; children, vendors, staff, needs and add-ons stay. Each food is bought in its cheapest whole packs from the suppliers of this event’s order, with their fees and without their minimum orders. Each count is billed as if it were the final one, without the contract’s minimum. Costs that are not stated are in no margin.`;
}

function rowOf(point: MoneyPoint, { planned, breakEven }: MarginCurve, show: Show): MoneyRowView {
  const { guests } = point;
  const even = breakEven.kind === 'from' && breakEven.guests === guests ? ['break-even'] : [];
  return {
    guests: String(guests),
    revenue: show(point.revenue),
    food: show(point.food),
    labour: show(point.labour),
    other: show(point.other),
    margin: show(point.margin),
    note: [...(guests === planned ? ['planned'] : []), ...even].join(', '),
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

function fallTexts(falls: readonly Fall[], what: string, show: Show): string[] {
  const told = falls.slice(0, MOST_FALLS).map(({ before, after, was, is, regained }) => {
    const again =
      regained === null
        ? 'at no larger count tried does it recover'
        : `it recovers at ${counted(regained, 'guest')}`;
    return `From ${before} to ${counted(after, 'guest')} ${what}, from ${show(was)} to ${show(is)}; ${again}.`;
  });
  const more = falls.length - told.length;
  return more > 0 ? [...told, `And ${more} smaller ${more === 1 ? 'fall' : 'falls'}.`] : told;
}

function pictureOf(curve: MarginCurve, show: Show): MarginPictureView {
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
      text: `${planned} planned: ${show(chosen.margin)}`,
    },
    breakEven:
      breakEven.kind === 'from'
        ? { guests: breakEven.guests, text: `break-even at ${breakEven.guests}` }
        : null,
    said: `The margin goes from ${show(first.margin)} at ${counted(from, 'guest')} to ${show(last.margin)} at ${to}; ${show(chosen.margin)} at the ${planned} planned. ${breakEvenText(curve)} The table below has the sums.`,
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
