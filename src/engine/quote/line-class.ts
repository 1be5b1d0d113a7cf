/** What a line of a quote is for. Tax, discount, service charge and minimum spend go by class. */
export const LINE_CLASSES = ['food', 'drink', 'service charge', 'rental', 'labour', 'delivery'] as const;

/** One class of lines. */
export type LineClass = (typeof LINE_CLASSES)[number];
