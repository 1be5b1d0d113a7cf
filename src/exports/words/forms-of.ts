import { languageOf } from '../../words/languages.ts';

/**
 * The locale whose forms stand inside sentences for a kitchen's locale: the language that the sentences are in, by the
 * country's habits. A German kitchen's pages in English say `Saturday, 15 May 2027` and `17:30`, and no `Samstag`.
 */
export function formsOf(locale: string): string {
  const { language } = new Intl.Locale(languageOf(locale));
  const { region } = new Intl.Locale(locale);
  return region === undefined ? language : `${language}-${region}`;
}
