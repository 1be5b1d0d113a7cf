import type { LineClass } from '../../engine/quote/line-class.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';
import { listText } from './counted-text.ts';

const CLASSES: Readonly<Record<LineClass, WordKey>> = {
  food: 'terms.class.food',
  drink: 'terms.class.drink',
  'service charge': 'terms.class.service-charge',
  rental: 'terms.class.rental',
  labour: 'terms.class.labor',
  delivery: 'terms.class.delivery',
};

/** What a line of a quote is for, as the locale spells it: `labor`. */
export function classWord(line: LineClass, locale: string): string {
  return wordsIn(locale)(CLASSES[line]);
}

/** `food, drink and labor`; empty for none. */
export function classWords(lines: readonly LineClass[], locale: string): string {
  return listText(
    scriptWordsIn(locale),
    lines.map((line) => classWord(line, locale)),
  );
}
