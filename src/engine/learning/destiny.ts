/** What became of food that was left, in the words that people enter it in. */
export const DESTINIES = ['thrown away', 'given away', 'brought home'] as const;
export type Destiny = (typeof DESTINIES)[number];

const AT_END = /^(.*?)[\s,;]+(?:and )?(thrown away|given away|brought home)$/i;

/** An answer such as `14 pieces, given away` as what came back and where it went; where it does not say, all of it is the first. */
export function splitDestiny(text: string): { readonly back: string; readonly destiny: Destiny | undefined } {
  const found = AT_END.exec(text.slice(0, 200).trim());
  return { back: found?.[1]?.trim() ?? text, destiny: parseDestiny(found?.[2] ?? '') };
}

/** The destiny that a word names; undefined for any other word. */
export function parseDestiny(text: string): Destiny | undefined {
  const word = text.trim().replace(/\s+/g, ' ').toLowerCase();
  return DESTINIES.find((each) => each === word);
}
