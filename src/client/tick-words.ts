import type ticks from '../words/en-US/ticks.json';
import type { Spoken } from '../words/words-in.ts';

type Messages = Readonly<Record<keyof typeof ticks, (spoken: Spoken) => string>>;

/** Compiled where the script is bundled: `src/build/compiled-words.ts`. */
const catalogues = import.meta.glob<Messages>('../words/*/ticks.json', {
  query: '?compiled',
  import: 'default',
  eager: true,
});

/** What boxes to tick say, in the language that the page is in. */
export function sayOfTicks(key: keyof Messages, spoken: Spoken = {}): string {
  const inLanguage = (language: string) => catalogues[`../words/${language}/ticks.json`];
  const message = inLanguage(document.documentElement.lang)?.[key] ?? inLanguage('en-US')?.[key];
  if (!message) throw new Error(`there are no words for “${key}”`);
  return message(spoken);
}
