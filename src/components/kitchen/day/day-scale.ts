import type { PlanDayPicture } from '../../../exports/form/day.ts';
import { hourText } from '../../../exports/words/clock-text.ts';

/** A line of hours across a day's picture: where it stands, in minutes from the beginning, and what it says. */
export interface HourMark {
  readonly minute: number;
  readonly text: string;
}

/** Most hours that are written across a picture; a longer day has every second or fourth. */
const MOST = 9;

/** The whole hours of a day's picture: by the clock where its beginning is known, else since it began. */
export function hourMarks(
  { from, minutes }: Pick<PlanDayPicture, 'from' | 'minutes'>,
  locale: string,
): HourMark[] {
  const offset = from === null ? 0 : (60 - (((from % 60) + 60) % 60)) % 60;
  const all: HourMark[] = [];
  for (let minute = offset; minute <= minutes; minute += 60)
    all.push({ minute, text: from === null ? `+${minute / 60} h` : hourText(hourOf(from + minute), locale) });
  const every = all.length > 2 * MOST ? 4 : all.length > MOST ? 2 : 1;
  return all.filter((_, index) => index % every === 0);
}

function hourOf(minute: number): number {
  return ((((minute / 60) % 24) + 24) % 24) | 0;
}

/** Tasks of one station put into rows, so that none covers another: what is unattended runs on beside the next. */
export function rowsOf<Task extends { readonly begins: number; readonly ends: number }>(
  tasks: readonly Task[],
  least: number,
): Task[][] {
  const rows: Task[][] = [];
  for (const task of tasks) {
    const row = rows.find((each) => {
      const last = each.at(-1) as Task;
      return Math.max(last.ends, last.begins + least) <= task.begins;
    });
    if (row) row.push(task);
    else rows.push([task]);
  }
  return rows;
}

/** A bar of a row that has one thing after the other. */
export interface Bar<Item> {
  readonly item: Item;
  readonly left: number;
  readonly width: number;
  /** Whether it is too narrow for a number of the usual size. */
  readonly small: boolean;
  /** How far it is from its end to the next bar. */
  readonly room: number;
}

/**
 * The bars of one row, in order of time: as wide as `bar` at least, so that a number fits, but never over the next one, since
 * nobody is in two places.
 */
export function barsOf<Item extends { readonly begins: number; readonly ends: number }>(
  items: readonly Item[],
  x: (minute: number) => number,
  bar: number,
): Bar<Item>[] {
  return items.map((item, index) => {
    const next = items[index + 1];
    const left = x(item.begins);
    const until = next ? x(next.begins) : Number.POSITIVE_INFINITY;
    const width = Math.max(x(item.ends) - left, Math.min(bar, until - left));
    return { item, left, width, small: width < bar, room: until - left - width };
  });
}

/** About as wide as a letter of the picture's names is. */
const LETTER = 8.2;
/** The most letters of a name; the list has all of it. */
const MOST_LETTERS = 34;

/** Where the name of a bar stands: in it where it is long enough, else before or after it, where there is more room. */
export function waitLabel(
  name: string,
  from: number,
  until: number,
  left: number,
  right: number,
): { readonly text: string; readonly x: number; readonly before: boolean } {
  const text = name.length > MOST_LETTERS ? `${name.slice(0, MOST_LETTERS - 1).trimEnd()}…` : name;
  const width = text.length * LETTER;
  if (until - from > width + 16) return { text, x: from + 8, before: false };
  return from - left > right - until
    ? { text, x: from - 6, before: true }
    : { text, x: until + 6, before: false };
}
