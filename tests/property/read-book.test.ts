import fc from 'fast-check';
import { expect, test } from 'vitest';
import { printFindings } from '../../src/book/findings/print-findings.ts';
import { readBook } from '../../src/check/read-book.ts';
import { contentWith, SMALL_CONTENT } from '../findings/small-content.ts';

const FILES = Object.keys(SMALL_CONTENT);
const SCRAPS = [
  '\0',
  '{',
  '[',
  ': ',
  '- ',
  '\n---\n',
  '"',
  '&a',
  '*a',
  '<x>',
  '{{',
  '\uFFFD',
  '1e309',
  '-1',
  ',,,',
  '__proto__: ',
  'constructor: x\n',
  '\t',
];

/** A file with a piece cut out and something else put in. */
const spoiled = fc.record({
  file: fc.constantFrom(...FILES),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  cut: fc.integer({ min: 0, max: 40 }),
  put: fc.oneof(fc.constantFrom(...SCRAPS), fc.string({ unit: 'binary', maxLength: 12 })),
});

test('whatever happens to the files, reading ends in findings with a place or in a Book, and never throws', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(spoiled, { minLength: 1, maxLength: 4 }), async (slips) => {
      const changes: Record<string, string> = {};
      for (const { file, at, cut, put } of slips) {
        const text = changes[file] ?? SMALL_CONTENT[file] ?? '';
        const start = Math.floor(at * text.length);
        changes[file] = text.slice(0, start) + put + text.slice(start + cut);
      }
      const { book, findings } = await readBook(contentWith(changes));
      expect(book !== undefined || findings.some(({ severity }) => severity === 'error')).toBe(true);
      for (const { place } of findings) {
        expect(place.file).toMatch(/^[^/].*\.(yaml|csv|mdx?|json)$|^[a-z]+$/);
        expect(Math.min(place.line, place.column)).toBeGreaterThanOrEqual(1);
      }
      for (const [, reason] of book?.held ?? []) expect(reason).not.toBe('');
      expect(printFindings(findings, 'content')).not.toMatch(/undefined|\[object/);
    }),
    { numRuns: 60 },
  );
});
