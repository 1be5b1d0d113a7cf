import { describe, expect, test } from 'vitest';
import { CATALOGUES } from '../../../src/words/catalogues.ts';

/** Words that read as foreign to cooks and clients, or the wrong way round, with what is written instead. */
const AVOIDED: readonly (readonly [RegExp, string])[] = [
  [/\bno trace\b|ruled out/i, 'traces of any allergen are possible'],
  [/\b(made )?apart\b/i, 'made separately'],
  [/\bunsaid\b|nobody has said|not said/i, 'not stated, not known yet'],
  [/\bput off\b/i, 'postponed'],
  [/\bbesides\b/i, 'plus, also'],
  [/\bbegun\b/i, 'or part thereof'],
  [/\banew\b|\breckon|\bmend\b|\bparted by\b/i, 'again, calculated, fix, separated by'],
  [/by the head|per head/i, 'per guest'],
  [/\be-mail\b|\ba mail\b/i, 'email'],
  [/may only rise/i, 'can go up but not down'],
  [/\bdigest\b(?!\))/i, 'reference'],
];

const messages = Object.entries(CATALOGUES).flatMap(([language, areas]) =>
  Object.entries(areas).flatMap(([area, texts]) =>
    Object.entries(texts as Record<string, string>).map(([name, text]) => [
      `${language} ${area}.${name}`,
      // What a message speaks of is named for programmers.
      text.replace(/\{\w+(?=[,}])/g, '{'),
    ]),
  ),
);

describe('what clients, guests and crews read', () => {
  test.each(AVOIDED)('has nothing of %s, but %s', (avoided) => {
    expect(messages.length).toBeGreaterThan(300);
    expect(messages.filter(([, text]) => avoided.test(text ?? ''))).toEqual([]);
  });

  test('is spelled as each country spells it', () => {
    const american = messages
      .filter(([key]) => /^en-US (changes|dishes|form|mail|page|script|terms)\./.test(key ?? ''))
      .map(([, text]) => text);
    expect(
      american.filter((text) => /cancelled|labour|colour|sulphit|cheque|\btick /i.test(text ?? '')),
    ).toEqual([]);
  });
});
