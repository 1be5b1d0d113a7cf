import { notParsed, type Parsed } from '../parsed.ts';

/** The most digits a number written by hand may have in one run: beyond it a typing slip is certain. */
export const MOST_DIGITS = 12;

interface Slip {
  readonly form: RegExp;
  readonly what: (found: string) => string;
  readonly wayOut: (found: string) => string;
}

const bare = (found: string): string => found.replace(/\D/g, '');

/** Ways of writing a number that other places or programs use; each is refused, never guessed at. */
const SLIPS: readonly Slip[] = [
  {
    form: /^[-−–—]\s*[\d.]*/u,
    what: (found) => `"${found}" is negative`,
    wayOut: () => 'write an amount above zero',
  },
  {
    form: /^\+[\d.]*/,
    what: (found) => `"${found}" has a sign`,
    wayOut: () => 'write the number without +',
  },
  {
    form: /^0[xob][\da-f_]*/i,
    what: (found) => `"${found}" is not a kitchen number`,
    wayOut: () => 'write it in ordinary digits',
  },
  {
    form: /^\d+(?:_\d*)+/,
    what: (found) => `"${found}" has an underscore`,
    wayOut: (found) => `write ${bare(found)}`,
  },
  {
    form: /^\d+(?:\.\d+)?e[+-]?\d+/i,
    what: (found) => `"${found}" has an exponent`,
    wayOut: () => 'write all its digits',
  },
  {
    form: /^\d{1,3}(?:,\d{3})+(?![\d,])(?:\.\d+)?/,
    what: (found) => `"${found}" has a comma`,
    wayOut: (found) =>
      found.endsWith(',000') || found.includes('.')
        ? `write ${found.replaceAll(',', '')}`
        : `write ${bare(found)}, or ${found.replaceAll(',', '.')} if the comma is a decimal point`,
  },
  {
    form: /^\d+,\d+/,
    what: (found) => `"${found}" has a decimal comma`,
    wayOut: (found) => `write ${found.replace(',', '.')}`,
  },
  {
    form: /^\d{1,3}(?: \d{3})+(?!\d| ?\/)/,
    what: (found) => `"${found}" has a space between its digits`,
    wayOut: (found) => `write ${bare(found)}`,
  },
];

/**
 * Names the known slip at the start of `text` (a sign, a thousands separator, a decimal comma, an exponent,
 * a programmer's number), as a refusal with the way out; `undefined` if the text starts with none of them.
 */
export function numberSlip<T>(text: string): Parsed<T> | undefined {
  for (const { form, what, wayOut } of SLIPS) {
    const found = form.exec(text)?.[0].trim();
    if (found !== undefined) return notParsed(what(found), wayOut(found));
  }
  return undefined;
}
