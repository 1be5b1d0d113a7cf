/** The languages that there are words for, as BCP 47 tags. */
export const LANGUAGES = ['en-US', 'en-GB'] as const;
export type Language = (typeof LANGUAGES)[number];

/**
 * The language that pages of a locale are in: its own where there are words for it, British English for English of any
 * country but the United States, as most of them spell, else American English.
 */
export function languageOf(locale: string): Language {
  const { language, region } = new Intl.Locale(locale);
  return (
    LANGUAGES.find((each) => each === locale) ??
    (language === 'en' && region !== undefined && region !== 'US' ? 'en-GB' : 'en-US')
  );
}
