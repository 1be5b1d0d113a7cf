import type { MarginPictureView } from '../../../views/kitchen/owner-money.ts';

/** Where counts and sums lie in the picture, in its own units. */
export interface MarginScale {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (guests: number) => number;
  readonly y: (margin: number) => number;
}

/** The picture for a desk or paper, and the one for a phone, whose words are as large in less room. */
export const FRAMES = {
  wide: { width: 1006, height: 470, left: 118, right: 986, top: 12, bottom: 410 },
  narrow: { width: 470, height: 430, left: 112, right: 446, top: 12, bottom: 370 },
} as const;

/** Lays the picture out: counts from the first to the last, sums from the lowest mark to the highest. */
export function marginScale(
  { points, sums }: MarginPictureView,
  frame: (typeof FRAMES)[keyof typeof FRAMES],
): MarginScale {
  const [from, to] = [points[0]?.guests ?? 0, points.at(-1)?.guests ?? 1];
  const [least, most] = [sums[0]?.margin ?? 0, sums.at(-1)?.margin ?? 1];
  const across = Math.max(1, to - from);
  const tall = Math.max(1, most - least);
  const tenth = (value: number) => Math.round(value * 10) / 10;
  const { left, right, top, bottom } = frame;
  return {
    ...frame,
    x: (guests) => tenth(left + ((guests - from) / across) * (right - left)),
    y: (margin) => tenth(bottom - ((margin - least) / tall) * (bottom - top)),
  };
}

/** Where the words of a mark begin or end, and how far below it they stand. */
export interface LabelPlace {
  readonly x: number;
  readonly anchor: 'before' | 'after';
  readonly lift: number;
}

/**
 * Where a mark's words have room: before it and above in the right half of the picture, after it and below in the
 * left, since a margin mostly rises.
 */
export function labelPlace(at: number, { left, right }: Pick<MarginScale, 'left' | 'right'>): LabelPlace {
  return at > (left + right) / 2
    ? { x: at - 14, anchor: 'before', lift: -14 }
    : { x: at + 14, anchor: 'after', lift: 30 };
}
