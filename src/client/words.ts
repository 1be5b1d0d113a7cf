import type script from '../words/en-US/script.json';
import type { Spoken } from '../words/words-in.ts';

/** A message of the page's script: its name in `src/words/<language>/script.json`. */
export type ScriptKey = keyof typeof script;

type Messages = Readonly<Record<string, (spoken: Spoken) => string>>;

/** Compiled where the script is bundled: `src/build/compiled-words.ts`. */
const catalogues = import.meta.glob<Messages>('../words/*/script.json', {
  query: '?compiled',
  import: 'default',
  eager: true,
});

/** A message in the language that the page is in. */
export function say(key: ScriptKey, spoken: Spoken = {}): string {
  const message = inLanguage(document.documentElement.lang)?.[key] ?? inLanguage('en-US')?.[key];
  if (!message) throw new Error(`there are no words for “${key}”`);
  return message(spoken);
}

function inLanguage(language: string): Messages | undefined {
  return catalogues[`../words/${language}/script.json`];
}
