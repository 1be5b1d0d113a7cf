import pageGB from './en-GB/page.json' with { type: 'json' };
import scriptGB from './en-GB/script.json' with { type: 'json' };
import page from './en-US/page.json' with { type: 'json' };
import script from './en-US/script.json' with { type: 'json' };
import type { Language } from './languages.ts';

/**
 * All that Salver says to clients, guests and crews, by area: ICU messages, one file for each area. A new language is a
 * folder of such files, its tag in `languages.ts` and a line below.
 */
const enUS = { page, script };

type Areas = typeof enUS;

/** A message: its area, a dot, and its name there. */
export type WordKey = {
  [Area in keyof Areas & string]: `${Area}.${keyof Areas[Area] & string}`;
}[keyof Areas & string];

/** By language. One that has not every message takes the rest from American English. */
export const CATALOGUES: Readonly<
  Record<Language, { readonly [Area in keyof Areas]?: Partial<Areas[Area]> }>
> = {
  'en-US': enUS,
  'en-GB': { page: pageGB, script: scriptGB },
};
