import type { TextProblem } from '../engine/text/visible-text.ts';

/** What is wrong with a text, as the end of a refusal that begins with what the text is: `the name has …`. */
export function textRefusal({ wrong, sign }: TextProblem): string {
  switch (wrong) {
    case 'hidden':
      return `has an invisible character (${sign})`;
    case 'blank':
      return 'has no visible character in it';
    case 'loose':
      return 'has letters that are not composed (Unicode NFC)';
  }
}
