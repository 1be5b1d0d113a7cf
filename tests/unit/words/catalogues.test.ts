import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse, type Token } from '@messageformat/parser';
import { describe, expect, it } from 'vitest';
import { CATALOGUES, type WordKey } from '../../../src/words/catalogues.ts';
import { languageOf } from '../../../src/words/languages.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

const folder = fileURLToPath(new URL('../../../src/', import.meta.url));

interface Message {
  readonly language: string;
  readonly key: WordKey;
  readonly text: string;
}

const messages: Message[] = Object.entries(CATALOGUES).flatMap(([language, areas]) =>
  Object.entries(areas).flatMap(([area, texts]) =>
    Object.entries(texts).map(([name, text]) => ({ language, key: `${area}.${name}` as WordKey, text })),
  ),
);
const american = new Map(
  messages.filter(({ language }) => language === 'en-US').map(({ key, text }) => [key, text]),
);

/** What a message speaks of: the names in its braces, those inside its plurals too. */
function argumentsOf(tokens: readonly Token[]): string[] {
  const names = tokens.flatMap((token) => {
    if (token.type === 'content' || token.type === 'octothorpe') return [];
    const inside = 'cases' in token ? token.cases.flatMap(({ tokens: each }) => argumentsOf(each)) : [];
    return [token.arg, ...inside];
  });
  return [...new Set(names)].sort();
}

describe('the catalogues of words', () => {
  it('hold messages that can be read, and say nothing empty', () => {
    expect(american.size).toBeGreaterThan(5);
    for (const { key, text } of messages) {
      expect(text.trim(), key).toBe(text);
      expect(text, key).not.toBe('');
      expect(() => parse(text), key).not.toThrow();
    }
  });

  it('have in each language the messages of American English, and speak of the same there', () => {
    for (const { language, key, text } of messages.filter((each) => each.language !== 'en-US')) {
      const original = american.get(key);
      expect(original, `${language} ${key}`).toBeDefined();
      expect(argumentsOf(parse(text)), `${language} ${key}`).toEqual(argumentsOf(parse(original ?? '')));
      expect(text, `${language} ${key} says what American English says: leave it out`).not.toBe(original);
    }
  });

  it('hold no message that nothing says', () => {
    const code = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|astro)$/.test(file))
      .map((file) => readFileSync(join(folder, file), 'utf8'))
      .join('\n');
    const unused = [...american.keys()].filter((key) => {
      const name = key.replace(/^(?:script|ticks)\./, '');
      return !code.includes(`'${name}'`);
    });
    expect(unused).toEqual([]);
  });

  it('are chosen by language where there is none of the country', () => {
    expect(['en-US', 'en-GB', 'en-AU', 'de-DE'].map(languageOf)).toEqual([
      'en-US',
      'en-GB',
      'en-GB',
      'en-US',
    ]);
    expect(() => wordsIn('en-US')('page.nowhere' as WordKey)).toThrow(
      'there are no words for “page.nowhere”',
    );
  });
});
