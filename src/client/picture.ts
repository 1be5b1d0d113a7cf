/** What a picture shows: totals of two sides over the same counts, and where each side stands. */
export interface PictureInput {
  readonly width: number;
  readonly height: number;
  readonly counts: readonly number[];
  /** Totals as numbers: they are drawn, not calculated with. */
  readonly totals: readonly [readonly number[], readonly number[]];
}

/** Where everything of a picture stands, in its own units. */
export interface Picture {
  readonly lines: readonly [string, string];
  readonly across: readonly Tick[];
  readonly up: readonly Tick[];
  readonly frame: Frame;
  /** The place of a count and a total; outside the frame where they are. */
  place(count: number, total: number): { readonly x: number; readonly y: number };
}

/** A value on an edge of the picture and where. */
export interface Tick {
  readonly at: number;
  readonly value: number;
}

/** The edges of the part that the lines are drawn in. */
export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const MARGIN = { left: 64, right: 16, top: 16, bottom: 32 };

/** Lays a picture out: totals from a round figure below the least to one above the most, counts from edge to edge. */
export function pictureOf({ width, height, counts, totals }: PictureInput): Picture {
  const frame = {
    left: MARGIN.left,
    right: Math.max(MARGIN.left + 1, width - MARGIN.right),
    top: MARGIN.top,
    bottom: height - MARGIN.bottom,
  };
  const [first = 0, last = 1] = [counts[0], counts.at(-1)];
  const all = [...totals[0], ...totals[1]];
  const up = roundTicks(Math.min(...all), Math.max(...all), 4);
  const [low = 0, high = 1] = [up[0], up.at(-1)];
  const place = (count: number, total: number) => ({
    x: along(count, first, last, frame.left, frame.right),
    y: along(total, low, high, frame.bottom, frame.top),
  });
  const line = (values: readonly number[]) =>
    counts
      .map((count, index) => {
        const { x, y } = place(count, values[index] ?? low);
        return `${index === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`;
      })
      .join('');
  const wanted = width < 480 ? 4 : 8;
  return {
    lines: [line(totals[0]), line(totals[1])],
    across: roundTicks(first, last, wanted)
      .filter((value) => value >= first && value <= last)
      .map((value) => ({ value, at: place(value, low).x })),
    up: up.map((value) => ({ value, at: place(first, value).y })),
    frame,
    place,
  };
}

/** Round figures, about so many steps of them, from at or below the least to at or above the most. */
export function roundTicks(least: number, most: number, steps: number): number[] {
  const span = Math.max(1, most - least);
  const rough = span / steps;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((times) => times * power).find((each) => each >= rough) ?? power * 10;
  const [from, to] = [
    Math.floor(least / step),
    Math.max(Math.ceil(most / step), Math.floor(least / step) + 1),
  ];
  return Array.from({ length: to - from + 1 }, (_, index) => (from + index) * step);
}

function along(value: number, low: number, high: number, start: number, end: number): number {
  return high === low ? start : start + ((value - low) / (high - low)) * (end - start);
}
