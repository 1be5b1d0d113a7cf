import type { BuffetCard } from '../../../views/kitchen/buffet-cards.ts';

/** How large a card's words are set: the largest that one face of the folded card has room for. */
export type BuffetCardSize = 'large' | 'normal' | 'small' | 'tiny' | 'flat';

/** Room for words on one face, within its padding and above its caution; millimetres. `flat` is not folded. */
const WIDTH = 82;
const HEIGHT = 46;
const point = 25.4 / 72;
/** Type sizes of the dish's name and of the rest, points; as in buffet-cards.css. */
const SIZES = {
  large: [24, 12],
  normal: [19, 11],
  small: [15, 9.5],
  tiny: [10.5, 7.5],
} as const;
/** Wide letters of the widest of our fonts, as a share of the type size, so that a guess errs to too many lines. */
const LETTER = 0.54;
const LINE = 1.18;

/** A card in the largest type that holds all of it; nothing is ever cut off. */
export function buffetCardSize(card: BuffetCard): BuffetCardSize {
  const found = Object.entries(SIZES).find(([, [name, words]]) => heightOf(card, name, words) <= HEIGHT);
  return (found?.[0] as BuffetCardSize | undefined) ?? 'flat';
}

function heightOf(
  { dish, changes, marks, contains, mayContain, until }: BuffetCard,
  name: number,
  words: number,
) {
  const rows: [text: string, size: number][] = [
    [dish, name],
    [changes, words],
    [marks.join('   '), words],
    [contains, words],
    [mayContain, words],
    [until, words],
  ];
  return rows
    .filter(([text]) => text !== '')
    .reduce((sum, [text, size]) => sum + linesOf(text, size) * size * point * LINE + 1.6, 0);
}

/** Lines that a text takes when no word is split but one longer than a line. */
function linesOf(text: string, size: number): number {
  const room = Math.floor(WIDTH / (size * point * LETTER));
  let lines = 1;
  let used = 0;
  for (const { length } of text.split(/\s+/)) {
    if (used > 0 && used + 1 + length > room) {
      lines += 1;
      used = 0;
    }
    used += (used > 0 ? 1 : 0) + length;
    while (used > room) {
      lines += 1;
      used -= room;
    }
  }
  return lines;
}
