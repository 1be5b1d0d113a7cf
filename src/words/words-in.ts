import MessageFormat, { type MessageFunction } from '@messageformat/core';
import { decimalMark } from '../engine/money/display-money.ts';
import { CATALOGUES, type WordKey } from './catalogues.ts';
import { type Language, languageOf } from './languages.ts';

/** What a message speaks of, by the names it has there. A number that decides between one and many goes in as a number. */
export type Spoken = Readonly<Record<string, string | number>>;

/** A message in words. Throws where something that it speaks of is not given: that is a fault of the page. */
export type Say = (key: WordKey, spoken?: Spoken) => string;

const made = new Map<string, Say>();

/**
 * The words of a locale, or of the nearest language that there are words for. One and many are told apart as the language
 * does, and their counts (`#`) have the form of the locale.
 */
export function wordsIn(locale: string): Say {
  const language = languageOf(locale);
  const counts = countsIn(locale, language);
  const known = made.get(`${language} ${counts}`);
  if (known) return known;
  const format = new MessageFormat(pluralsOf(language, counts), { requireAllArguments: true });
  const compiled = new Map<WordKey, MessageFunction<'string'>>();
  const say: Say = (key, spoken = {}) => {
    const message = compiled.get(key) ?? format.compile(messageIn(language, key));
    compiled.set(key, message);
    return message(spoken);
  };
  made.set(`${language} ${counts}`, say);
  return say;
}

/** The locale that groups thousands as `countText` does: with a narrow space, as French has it, where decimals have a comma. */
function countsIn(locale: string, language: Language): string {
  return decimalMark(locale) === ',' ? 'fr-FR' : language;
}

/** The plurals of a language under the name of another locale, by which the library forms numbers. */
function pluralsOf(language: Language, counts: string) {
  const [cardinal, ordinal] = (['cardinal', 'ordinal'] as const).map(
    (type) => new Intl.PluralRules(language, { type }),
  );
  const plural = (n: string | number, isOrdinal?: boolean) =>
    (isOrdinal ? ordinal : cardinal)!.select(Number(n));
  return Object.defineProperties(plural, {
    name: { value: counts },
    cardinals: { value: cardinal!.resolvedOptions().pluralCategories },
    ordinals: { value: ordinal!.resolvedOptions().pluralCategories },
  });
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
