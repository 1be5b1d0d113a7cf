import MessageFormat, { type MessageFunction } from '@messageformat/core';
import { CATALOGUES, type WordKey } from './catalogues.ts';

/** What a message speaks of, by the names it has there. A number that decides between one and many goes in as a number. */
export type Spoken = Readonly<Record<string, string | number>>;

/** A message in words. Throws where something that it speaks of is not given: that is a fault of the page. */
export type Say = (key: WordKey, spoken?: Spoken) => string;

const made = new Map<string, Say>();

/** The words of a locale, or of the nearest language that there are words for. */
export function wordsIn(locale: string): Say {
  const language = languageOf(locale);
  const known = made.get(language);
  if (known) return known;
  const format = new MessageFormat(language, { requireAllArguments: true });
  const compiled = new Map<WordKey, MessageFunction<'string'>>();
  const say: Say = (key, spoken = {}) => {
    const message = compiled.get(key) ?? format.compile(messageIn(language, key));
    compiled.set(key, message);
    return message(spoken);
  };
  made.set(language, say);
  return say;
}

/**
 * The language that pages of a locale are in, as a BCP 47 tag: its own where there are words for it, that of another
 * country with the same language, else American English.
 */
export function languageOf(locale: string): string {
  const languages = Object.keys(CATALOGUES);
  const { language } = new Intl.Locale(locale);
  return (
    languages.find((each) => each === locale) ??
    languages.find((each) => each.split('-')[0] === language) ??
    'en-US'
  );
}

/** A message as its catalogue has it, uncompiled. */
export function messageIn(language: string, key: WordKey): string {
  const dot = key.indexOf('.');
  const [area, name] = [key.slice(0, dot), key.slice(dot + 1)];
  const texts = [language, 'en-US'].map(
    (each) => (CATALOGUES[each] as Record<string, Record<string, string> | undefined>)[area]?.[name],
  );
  const text = texts.find((each) => each !== undefined);
  if (text === undefined) throw new Error(`there are no words for “${key}”`);
  return text;
}
