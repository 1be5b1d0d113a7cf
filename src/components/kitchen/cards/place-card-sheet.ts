import type { PlaceCard } from '../../../views/kitchen/place-cards.ts';

/** Six tent cards to a sheet, the same on Letter and A4, in the middle of it; millimetres. */
const CARD = { width: 88.9, height: 85 };
const COLUMNS = 2;
const ROWS = 3;
const SHEETS = {
  letter: { width: 215.9, height: 279.4 },
  a4: { width: 210, height: 297 },
} as const;

/** Characters of a dish's name on one line of the back at its usual size, and lines that it holds; guesses to too many. */
const CHARACTERS_A_LINE = 30;
const MOST_LINES = { large: 6, middle: 9 } as const;

export const CARDS_PER_SHEET = COLUMNS * ROWS;

/** A line from one point to another, millimetres from the sheet's upper left corner. */
export interface Line {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Where a sheet's cards lie, where it is cut, and where each row is folded. */
export interface CardSheet {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly cuts: readonly Line[];
  readonly folds: readonly Line[];
}

/** Marks stand off the cards by this much, and are this long. */
const GAP = 1;
const MARK = 4;
/** Half of the cross where four cards meet. */
const CROSS = 2;

/** The sheet of a paper: cut marks around the cards and a small cross where four meet, fold marks at both edges. */
export function cardSheet(paper: 'letter' | 'a4'): CardSheet {
  const { width, height } = SHEETS[paper];
  const left = (width - COLUMNS * CARD.width) / 2;
  const top = (height - ROWS * CARD.height) / 2;
  const right = width - left;
  const bottom = height - top;
  const xs = Array.from({ length: COLUMNS + 1 }, (_, column) => left + column * CARD.width);
  const ys = Array.from({ length: ROWS + 1 }, (_, row) => top + row * CARD.height);
  const middles = Array.from({ length: ROWS }, (_, row) => top + (row + 0.5) * CARD.height);
  const upright = (x: number): Line[] => [
    { x1: x, y1: top - GAP - MARK, x2: x, y2: top - GAP },
    { x1: x, y1: bottom + GAP, x2: x, y2: bottom + GAP + MARK },
  ];
  const level = (y: number): Line[] => [
    { x1: left - GAP - MARK, y1: y, x2: left - GAP, y2: y },
    { x1: right + GAP, y1: y, x2: right + GAP + MARK, y2: y },
  ];
  const crosses = xs.slice(1, -1).flatMap((x) =>
    ys.slice(1, -1).flatMap((y) => [
      { x1: x - CROSS, y1: y, x2: x + CROSS, y2: y },
      { x1: x, y1: y - CROSS, x2: x, y2: y + CROSS },
    ]),
  );
  const cuts = [...xs.flatMap(upright), ...ys.flatMap(level), ...crosses];
  return { width, height, left, top, cuts, folds: middles.flatMap(level) };
}

/** How large a name is set, so that a long one stays on its card. */
export function nameSize(name: string): 'large' | 'middle' | 'small' {
  const longest = Math.max(...name.split(/\s+/).map((word) => [...word].length));
  const length = [...name].length;
  if (length <= 22 && longest <= 13) return 'large';
  return length <= 44 && longest <= 20 ? 'middle' : 'small';
}

/** How large the dishes are set on the back, so that many or long ones stay on their card. */
export function backSize({
  dishes,
  besides,
}: Pick<PlaceCard, 'dishes' | 'besides'>): 'large' | 'middle' | 'small' {
  const texts = [...dishes.map(({ name, tag }) => `${tag} ${name}`), ...besides];
  const lines = texts.reduce((sum, text) => sum + Math.ceil(text.length / CHARACTERS_A_LINE), 0);
  if (lines <= MOST_LINES.large) return 'large';
  return lines <= MOST_LINES.middle ? 'middle' : 'small';
}
