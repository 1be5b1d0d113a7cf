/** Text that fits beside others in one line at the head of a sheet: cut after so many letters. */
export function headText(text: string, most: number): string {
  const letters = [...new Intl.Segmenter(undefined, { granularity: 'grapheme' }).segment(text)];
  if (letters.length <= most) return text;
  const kept = letters.slice(0, most - 1).map(({ segment }) => segment);
  return `${kept.join('').trimEnd()}…`;
}

/** Text as a CSS string, so that whatever an author writes stays words in a margin box. */
export function cssText(text: string): string {
  const escaped = text.replace(/["\\<>&\p{Cc}]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `);
  return `"${escaped}"`;
}
