/*
 * What a client may write: names, needs, notes, guest lists. It ends on cards, labels and lists of allergens, so that
 * it must show what it is. The signs refused are those of Unicode's properties, not a list of our own:
 * - Bidi_Control turns the order of letters about (UAX #9, section 2; UTS #55, section 2.2 on what that hides);
 * - Default_Ignorable_Code_Point is drawn as nothing (UAX #44, table 9; the Unicode Standard, section 5.21): tags, fillers,
 *   soft hyphens, joiners and spaces without width. UTS #39, table 1, restricts them in identifiers (Default_Ignorable);
 * - Noncharacter_Code_Point, private use and halves of pairs stand for nothing that a reader could know;
 * - U+FFF9 to U+FFFB mark annotations (the Unicode Standard, section 23.8, for use inside of programs).
 * Kept is what writing needs: variation selectors behind what they vary, and the joiners U+200C and U+200D inside of scripts
 * that join (UAX #31, section 2.3.1) and of emoji (UTS #51, section 2.2).
 */
const HIDDEN =
  /[\p{Bidi_Control}\p{Default_Ignorable_Code_Point}\p{Noncharacter_Code_Point}\p{Co}\p{Cs}\uFFF9-\uFFFB]/u;
const VARIATION = /\p{Variation_Selector}/u;
const VARIED = /[\p{L}\p{M}\p{N}\p{S}\p{Emoji}]/u;
const JOINER = /[\u200C\u200D]/u;
const JOINED =
  /[\p{Extended_Pictographic}\p{Emoji_Modifier}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Mongolian}\p{Script=Devanagari}\p{Script=Bengali}\p{Script=Gurmukhi}\p{Script=Gujarati}\p{Script=Oriya}\p{Script=Tamil}\p{Script=Telugu}\p{Script=Kannada}\p{Script=Malayalam}\p{Script=Sinhala}\p{Script=Khmer}\p{Script=Myanmar}]/u;
/** Letters, figures and signs; the empty pattern of Braille is a sign and shows nothing. */
const SEEN = /[\p{L}\p{N}\p{P}\p{S}]/u;
const BLANK_SIGN = '\u2800';

/** One line: letters in their composed form (NFC, UAX #15), runs of spaces and of controls as one space, none outside. */
export function tidyLine(text: string): string {
  return text
    .toWellFormed()
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Z}\s]+/gu, ' ')
    .trim();
}

/** A tidied line without the signs that `textProblem` refuses: for a header that has to be written, whatever it holds. */
export function visibleLine(text: string): string {
  return tidyLine(withoutHidden(text.toWellFormed()));
}

/** Several lines: the same, but tabs and line breaks are kept, and other controls go. */
export function tidyText(text: string): string {
  return text
    .toWellFormed()
    .normalize('NFC')
    .replace(/[^\P{Cc}\t\n]/gu, '')
    .trim();
}

/**
 * Why a client's text cannot be taken: a sign that nobody sees (`sign` is its code, `U+200B`, else empty), nothing in it that
 * shows, or letters that are not composed (Unicode NFC).
 */
export type TextProblem = { readonly wrong: 'hidden' | 'blank' | 'loose'; readonly sign: string };

/**
 * What is wrong with a client's text; undefined where it can be taken. A text of spaces has nothing against it: whether it
 * may be empty is for others to say.
 */
export function textProblem(text: string): TextProblem | undefined {
  const hidden = hiddenSign(text);
  if (hidden !== undefined) {
    const code = hidden.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0');
    return { wrong: 'hidden', sign: `U+${code}` };
  }
  if (text.trim() !== '' && ![...text].some((sign) => SEEN.test(sign) && sign !== BLANK_SIGN))
    return { wrong: 'blank', sign: '' };
  return text.normalize('NFC') === text ? undefined : { wrong: 'loose', sign: '' };
}

function withoutHidden(text: string): string {
  let rest = text;
  for (let hidden = hiddenSign(rest); hidden !== undefined; hidden = hiddenSign(rest))
    rest = rest.replaceAll(hidden, '');
  return rest;
}

/** The first sign that nobody can see and no writing needs. */
function hiddenSign(text: string): string | undefined {
  const signs = [...text];
  let before = '';
  for (const [index, sign] of signs.entries()) {
    const isNeeded = VARIATION.test(sign)
      ? VARIED.test(before)
      : JOINER.test(sign) && JOINED.test(before) && JOINED.test(signs[index + 1] ?? '');
    if (HIDDEN.test(sign) && !isNeeded) return sign;
    if (!VARIATION.test(sign)) before = sign;
  }
  return undefined;
}
