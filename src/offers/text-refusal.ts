import { type Statement, statement } from '../engine/text/statement.ts';
import type { TextProblem } from '../engine/text/visible-text.ts';

/** A text that a client or a guest writes. */
export type WrittenText = 'name' | 'note' | 'table' | 'need' | 'need’s name';

/** What is wrong with such a text, as a clause: `the name has an invisible character (U+202E)`. */
export function textRefusal(text: WrittenText, { wrong, sign }: TextProblem): Statement {
  switch (wrong) {
    case 'hidden':
      return statement('answers.text.hidden', { text, sign });
    case 'blank':
      return statement('answers.text.blank', { text });
    case 'loose':
      return statement('answers.text.loose', { text });
  }
}
