/** Fractions that have a glyph of their own (Unicode Number Forms and Latin-1), as numerator and denominator. */
const GLYPHS: ReadonlyMap<string, readonly [bigint, bigint]> = new Map([
  ['½', [1n, 2n]],
  ['⅓', [1n, 3n]],
  ['⅔', [2n, 3n]],
  ['¼', [1n, 4n]],
  ['¾', [3n, 4n]],
  ['⅕', [1n, 5n]],
  ['⅖', [2n, 5n]],
  ['⅗', [3n, 5n]],
  ['⅘', [4n, 5n]],
  ['⅙', [1n, 6n]],
  ['⅚', [5n, 6n]],
  ['⅐', [1n, 7n]],
  ['⅛', [1n, 8n]],
  ['⅜', [3n, 8n]],
  ['⅝', [5n, 8n]],
  ['⅞', [7n, 8n]],
  ['⅑', [1n, 9n]],
  ['⅒', [1n, 10n]],
]);

const BY_FRACTION: ReadonlyMap<string, string> = new Map(
  [...GLYPHS].map(([glyph, [n, d]]) => [`${n}/${d}`, glyph]),
);

/** Every fraction glyph in a row, for use inside the brackets of a regular expression. */
export const FRACTION_GLYPHS: string = [...GLYPHS.keys()].join('');

/** Numerator and denominator of a fraction glyph, `undefined` for any other character. */
export function fractionOfGlyph(glyph: string): readonly [bigint, bigint] | undefined {
  return GLYPHS.get(glyph);
}

/** The glyph of the fraction n/d in lowest terms, `undefined` where there is none. */
export function glyphOfFraction(n: bigint, d: bigint): string | undefined {
  return BY_FRACTION.get(`${n}/${d}`);
}

/**
 * True of a half, thirds, quarters and eighths below one in lowest terms: the fractions that kitchens measure by, and
 * the only ones that a price list may write with a slash.
 */
export function isEverydayFraction(n: bigint, d: bigint): boolean {
  return [2n, 3n, 4n, 8n].includes(d) && glyphOfFraction(n, d) !== undefined;
}
