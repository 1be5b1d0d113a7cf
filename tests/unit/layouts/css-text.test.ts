import { expect, test } from 'vitest';
import { cssText, headText } from '../../../src/layouts/css-text.ts';

test('words at the head of a sheet are cut between letters as people count them, and only where they are too long', () => {
  expect(headText('Regatta lunch', 13)).toBe('Regatta lunch');
  expect(headText('Regatta lunch, Skerrivane', 15)).toBe('Regatta lunch,…');
  // Two letters of several code points each: a flag, and an e with its accent apart.
  expect(headText('🇮🇪e\u0301abc', 3)).toBe('🇮🇪e\u0301…');
});

test('text stays text in a style, whatever an author writes', () => {
  expect(cssText('a"; } </style>\n')).toBe('"a\\22 ; } \\3c /style\\3e \\a "');
});
