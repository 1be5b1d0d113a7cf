/** The longest word of a dish on a card, in characters: two of them stand beside each other on a place card. */
export const LONGEST_CARD_WORD = 14;

/** A dish as its card names it. */
export interface CardDish {
  readonly name: string;
  /** The kitchen's own word; undefined where it gives none. */
  readonly card: string | undefined;
}

/** What ends the part of an English dish's name that says what it is. */
const ENDS = /\s*[,;:(–—]\s*|\s+(?:with|in|on|and|&|from|for|under|over|without)\s+/iu;
const ARTICLE = /^(?:the|an?|our)\s+/iu;

/**
 * The short word for a dish where there is little room, in capitals: the kitchen's own, else what its name says before
 * `with`, `in` and the like (`SLOW BARLEY`); where that is long, its last word, if it reads like a noun (`TORTE`). In
 * doubt the whole name, never a part of a word: a server must not guess.
 */
export function cardWord({ name, card }: CardDish): string {
  if (card !== undefined) return card.toUpperCase();
  const [head = name, ...rest] = name.trim().replace(ARTICLE, '').split(ENDS);
  if (head !== '' && head.length <= LONGEST_CARD_WORD) return head.toUpperCase();
  const last = head.split(/\s+/).at(-1) ?? '';
  const isNoun = rest.length > 0 && last.length >= 3 && !/(?:ed|ing)$/iu.test(last) && !/\sof\s/iu.test(head);
  return (isNoun && last.length <= LONGEST_CARD_WORD ? last : name).toUpperCase();
}

/** The words of a course's dishes, no two alike: dishes with the same word have their whole names, then numbers. */
export function cardWords(dishes: readonly CardDish[]): string[] {
  const short = dishes.map(cardWord);
  const longer = dishes.map(({ name }, at) =>
    isOnly(short, at) ? (short[at] as string) : name.trim().toUpperCase(),
  );
  return longer.map((word, at) => {
    if (!/[\p{L}\p{N}]/u.test(word)) return `DISH ${at + 1}`;
    return isOnly(longer, at) ? word : `${word} ${at + 1}`;
  });
}

function isOnly(words: readonly string[], at: number): boolean {
  return words.filter((word) => word === words[at]).length === 1;
}
