import type { WordKey } from '../../words/catalogues.ts';
import { wordsIn } from '../../words/words-in.ts';

/** Stands in data after the allergens of food of which not all are known. */
export const NOT_ALL_KNOWN = 'NOT ALL KNOWN';

/** The names that are spelled in two ways, as data has them. */
const NAMES = /\b(?:sulphur dioxide and sulphites|sulphites|molluscs?)\b/gi;

const WORDS: Readonly<Record<string, WordKey>> = {
  'sulphur dioxide and sulphites': 'allergens.law.sulphites',
  sulphites: 'allergens.sulphites',
  mollusc: 'allergens.mollusc',
  molluscs: 'allergens.molluscs',
};

/**
 * An allergen’s name, by itself, by law or in a sentence, in the spelling of a locale. Data writes `sulphites` and `molluscs`
 * as Regulation (EU) No 1169/2011, Annex II, does in English, and so they stay everywhere but in the United States, whose
 * Food and Drug Administration spells sulfites (21 CFR 101.100(a)(4), from memory). Names in capitals stay so. Which allergen
 * it is never changes. That not all are known is told in the language of the page.
 */
export function allergenAsRead(name: string, locale: string): string {
  if (name === NOT_ALL_KNOWN) return wordsIn(locale)('allergens.not-all-known');
  const say = wordsIn(isAmerican(locale) ? 'en-US' : 'en-GB');
  return name.replace(NAMES, (found) => {
    const words = WORDS[found.toLowerCase()];
    if (words === undefined) return found;
    return found === found.toUpperCase() ? say(words).toUpperCase() : say(words);
  });
}

/** English of no country is American here as everywhere; a German kitchen's pages name allergens by the law of the Union. */
function isAmerican(locale: string): boolean {
  const { language, region } = new Intl.Locale(locale);
  return region === undefined ? language === 'en' : region === 'US';
}
