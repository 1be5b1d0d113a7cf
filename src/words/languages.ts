/** The languages that there are words for, as BCP 47 tags. */
export const LANGUAGES = ['en-US', 'en-GB'] as const;
export type Language = (typeof LANGUAGES)[number];

/**
 * The language that pages of a locale are in: its own where there are words for it, that of another country with the
 * same language, else American English.
 */
export function languageOf(locale: string): Language {
  const { language } = new Intl.Locale(locale);
  return (
    LANGUAGES.find((each) => each === locale) ??
    LANGUAGES.find((each) => each.split('-')[0] === language) ??
    'en-US'
  );
}
