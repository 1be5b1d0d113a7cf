/** Text as a CSS string, so that whatever an author writes stays words in a margin box. */
export function cssText(text: string): string {
  const escaped = text.replace(/["\\<>&\p{Cc}]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `);
  return `"${escaped}"`;
}
