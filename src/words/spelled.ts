import { languageOf } from './languages.ts';

/** Words that code and findings spell as Americans do, and the British spelling. */
const BRITISH: Readonly<Record<string, string>> = {
  canceled: 'cancelled',
  center: 'centre',
  color: 'colour',
  colors: 'colours',
  labor: 'labour',
};
const SPELLED = new RegExp(`\\b(?:${Object.keys(BRITISH).join('|')})\\b`, 'gi');

/** A sentence that is no message of the catalogues, in the spelling of a locale; a capital stays one. */
export function spelledIn(text: string, locale: string): string {
  if (languageOf(locale) !== 'en-GB') return text;
  return text.replace(SPELLED, (word) => {
    const british = BRITISH[word.toLowerCase()] ?? word;
    return word.charAt(0) === word.charAt(0).toUpperCase()
      ? british.charAt(0).toUpperCase() + british.slice(1)
      : british;
  });
}
