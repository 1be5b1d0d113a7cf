/** The counts that are written as words, from one. */
export const COUNT_WORDS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');

const LEADING = new RegExp(`^(?:(\\d{1,3})|(${COUNT_WORDS.join('|')}))(?=$|[\\s,;:×])`, 'i');

/** The whole number that a text begins with, in digits or as a word up to twelve: `2 convection`, `two`. Undefined where it begins with none. */
export function leadingCount(text: string): number | undefined {
  const [, digits, word] = LEADING.exec(text.trim()) ?? [];
  if (digits !== undefined) return Number(digits);
  return word === undefined ? undefined : COUNT_WORDS.indexOf(word.toLowerCase()) + 1;
}
