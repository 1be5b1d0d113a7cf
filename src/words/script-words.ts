import type script from './en-US/script.json';
import { type Spoken, wordsIn } from './words-in.ts';

/** A message that the page's script says too: its name in `src/words/<language>/script.json`. */
export type ScriptKey = keyof typeof script;

/** Such a message in words. What both the page and its script write is given one of these. */
export type ScriptSay = (key: ScriptKey, spoken?: Spoken) => string;

/** The script's words, for a page that is made before its script runs. */
export function scriptWordsIn(locale: string): ScriptSay {
  const say = wordsIn(locale);
  return (key, spoken) => say(`script.${key}`, spoken);
}
