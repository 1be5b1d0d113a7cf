import MessageFormat, { type MessageFunction } from '@messageformat/core';
import { CATALOGUES, type WordKey } from './catalogues.ts';
import { type Language, languageOf } from './languages.ts';

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

/** A message as its catalogue has it, uncompiled. */
export function messageIn(language: Language, key: WordKey): string {
  const dot = key.indexOf('.');
  const [area, name] = [key.slice(0, dot), key.slice(dot + 1)];
  const texts = [language, 'en-US'].map(
    (each) =>
      (CATALOGUES[each as Language] as Record<string, Record<string, string> | undefined>)[area]?.[name],
  );
  const text = texts.find((each) => each !== undefined);
  if (text === undefined) throw new Error(`there are no words for “${key}”`);
  return text;
}
