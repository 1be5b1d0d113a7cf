import type { ScriptKey } from '../words/script-words.ts';
import type { Spoken } from '../words/words-in.ts';

type Messages = Readonly<Record<string, (spoken: Spoken) => string>>;

/** Compiled where the script is bundled: `src/build/compiled-words.ts`. */
const catalogues = import.meta.glob<Messages>('../words/*/script.json', {
  query: '?compiled',
  import: 'default',
  eager: true,
});

/** A message in the language that the page is in. */
export function say(key: ScriptKey, spoken: Spoken = {}): string {
  const message = inLanguage(globalThis.document?.documentElement.lang)?.[key] ?? inLanguage('en-US')?.[key];
  if (!message) throw new Error(`there are no words for “${key}”`);
  return message(spoken);
}

function inLanguage(language = ''): Messages | undefined {
  return catalogues[`../words/${language}/script.json`];
}
