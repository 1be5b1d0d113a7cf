import { counted } from '../../../engine/text/counted.ts';

/** The letters of a link: base32 in lower case, five random bits each. */
const LINK_FORM = /^[a-z2-7]+$/;
/** 20 letters hold 100 random bits. */
const FEWEST_LETTERS = 20;
/**
 * Of 20 random letters 15 are different on average, and fewer than 9 in less than one of 10,000 links: such a
 * text was rather typed than drawn.
 */
const FEWEST_DIFFERENT = 9;
const ALPHABET = 'abcdefghijklmnopqrstuvwxyz234567';
const LONGEST_RUN = 5;

/** Why a link could be guessed, as part of a sentence; undefined for one that looks drawn at random. */
export function linkWeakness(link: string): string | undefined {
  if (!LINK_FORM.test(link)) return 'has characters other than a–z and 2–7';
  if (link.length < FEWEST_LETTERS)
    return `has ${counted(link.length, 'character')}, and needs at least ${FEWEST_LETTERS}`;
  if (new Set(link).size < FEWEST_DIFFERENT) return 'uses too few different characters';
  for (let start = 0; start + LONGEST_RUN <= link.length; start += 1) {
    if (ALPHABET.includes(link.slice(start, start + LONGEST_RUN))) return 'contains a run of the alphabet';
  }
  const half = Math.floor(link.length / 2);
  if (link.slice(0, half) === link.slice(half, 2 * half)) return 'repeats itself';
  return undefined;
}
