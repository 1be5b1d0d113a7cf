import type { Said, Several, Statement, StatementValue } from '../../engine/text/statement.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { languageOf } from '../../words/languages.ts';
import { wordsIn } from '../../words/words-in.ts';
import { countText } from './count-text.ts';
import { dateText } from './date-text.ts';

/** Makes sentences of statements. */
export type SayStatement = (said: Said | Several) => string;

/**
 * Statements in the words of a locale, days as its people say them; what is in words already stays. Figures keep data's
 * form, which `textAsRead` makes the locale's. Throws where no catalogue has the message or a value is missing.
 */
export function statementsIn(locale: string): SayStatement {
  const say = wordsIn(locale);
  const textOf = ({ key, values }: Statement): string => {
    const spoken = Object.entries(values).map(([name, value]) => [name, spokenOf(value)]);
    return say(key as WordKey, Object.fromEntries(spoken));
  };
  const spokenOf = (value: StatementValue): string | number => {
    if (typeof value !== 'object') return value;
    if ('count' in value) return countText(value.count, locale);
    if ('day' in value) return dateText(value.day, locale);
    return 'key' in value ? textOf(value) : rowOf(value);
  };
  const rowOf = ({ by, list }: Several): string => {
    const words = list.map((each) => (typeof each === 'string' ? each : textOf(each)));
    if (by === 'plus') return words.join(' + ');
    if (by === 'comma') return words.join(', ');
    if (by === 'lines') return words.join('\n');
    return by === 'and' ? allOf(words, locale) : anyOf(words, locale);
  };
  return (said) => (typeof said === 'string' ? said : 'key' in said ? textOf(said) : rowOf(said));
}

/** All of several things, as the language of the page lists them: `soup, tart, and bread` (en-US). */
export function allOf(words: readonly string[], locale: string): string {
  return new Intl.ListFormat(languageOf(locale), { type: 'conjunction' }).format(words);
}

/** Any of them: `soup, tart, or bread` (en-US). */
export function anyOf(words: readonly string[], locale: string): string {
  return new Intl.ListFormat(languageOf(locale), { type: 'disjunction' }).format(words);
}
