/** The pairs of typefaces that come with Salver: one that speaks, with serifs, and one for figures and facts. */
export const FONT_PAIRS = ['source', 'garamond', 'bitter'] as const;

/** A pair by its name; `source` where the kitchen names none. */
export type FontPair = (typeof FONT_PAIRS)[number];
