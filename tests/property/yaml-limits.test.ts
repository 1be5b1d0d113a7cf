import fc from 'fast-check';
import { expect, test } from 'vitest';
import { firstOver, isSurelyWithin, overLimit } from '../../src/book/files/yaml-limits.ts';

/** Texts of the signs that YAML nests and hides brackets with, in all orders. */
const SIGNS = [
  ...[
    '[',
    '[[[[',
    '{',
    ']',
    '}',
    ']]',
    '"]"',
    "'}'",
    '#]',
    '\n',
    '\n  ',
    '- ',
    '- - - - - - ',
    '? ',
    '? ? ? ? ',
  ],
  ...['a', 'a: ', ', ', '"', "'", '|\n', '>\n', '!t]', '&a]', '*a]', '\\', '%', '\n%', '---\n', '\t', ':'],
];
const hostile = fc.array(fc.constantFrom(...SIGNS), { maxLength: 60 }).map((parts) => parts.join(''));

test('what is let pass without a lexer is within every limit that the lexer finds', () => {
  let passed = 0;
  let over = 0;
  fc.assert(
    fc.property(hostile, (text) => {
      const found = firstOver(text);
      if (isSurelyWithin(text)) passed += 1;
      if (found) over += 1;
      if (isSurelyWithin(text)) expect(found).toBeUndefined();
      expect(overLimit(text)).toEqual(found);
    }),
    { numRuns: 5000 },
  );
  // Both happen often enough to mean something.
  expect(passed).toBeGreaterThan(200);
  expect(over).toBeGreaterThan(200);
});

test('a text too long to be let pass is counted by the lexer', () => {
  const lines = 'a: b\n'.repeat(21_000);
  expect([isSurelyWithin(lines), overLimit(lines)]).toEqual([false, undefined]);
  expect(isSurelyWithin('a: [b, c]\n'.repeat(5_000))).toBe(true);
});
