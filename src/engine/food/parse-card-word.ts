import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { LONGEST_CARD_WORD } from './card-word.ts';

/** Reads a dish's word for cards: one to 14 characters with a letter or digit among them, spaces made single. */
export function parseCardWord(text: string): Parsed<string> {
  const word = text.trim().replace(/\s+/g, ' ');
  if ([...word].length > LONGEST_CARD_WORD)
    return notParsed(
      `“${word.slice(0, 40)}” is too long for a card`,
      `write up to ${LONGEST_CARD_WORD} characters, such as card: barley`,
    );
  return /[\p{L}\p{N}]/u.test(word)
    ? parsed(word)
    : notParsed(`“${word}” has no letter in it`, 'write a word for the dish, such as card: barley');
}
