import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import type { Book } from '../../src/book/book.ts';
import { readBook } from '../../src/check/read-book.ts';
import { quote } from '../../src/engine/quote/quote.ts';
import { currentTerms } from '../../src/offers/issue/current-terms.ts';

// A kitchen as caterers wrote it in November 2026, byte for byte. A later Salver has to read it as it is, and it has to
// mean the same: where a test here fails the code is wrong, and never the files.
const folder = fileURLToPath(new URL('../fixtures/kitchen-2026-11/', import.meta.url));
const content = join(folder, 'content');

test('the kitchen of November 2026 is the bytes that were written then', () => {
  const hash = createHash('sha256');
  const files = readdirSync(content, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .sort();
  for (const file of files) hash.update(readFileSync(file));
  expect(hash.digest('hex')).toBe('d382f48da12cea536908b4e749f33c9b050fcea5b0fab0a742f5fce676a9f3b7');
});

test('it is read without an error or a warning, and what has a better name by now is a note', async () => {
  const { findings } = await readBook(content);
  expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
  const renamed = findings.flatMap(({ rewrite }) => (rewrite ? [`${rewrite.from} → ${rewrite.to}`] : []));
  expect(new Set(renamed)).toEqual(new Set(['e-mail → email', 'beside → served with']));
  const components = findings.filter(({ code }) => code === 'body-component-renamed');
  expect(new Set(components.map(({ what }) => what))).toEqual(
    new Set(['<Caution> is now called <WatchOut>', '<Tip> is now called <CooksNote>']),
  );
});

test('it means what it meant: every price, and what each dish is made of and free of', async () => {
  const { book } = await readBook(content);
  if (!book) throw new Error('the kitchen could not be read');
  await expect(`${JSON.stringify(meaningOf(book), null, 1)}\n`).toMatchFileSnapshot(
    join(folder, 'means.json'),
  );
});

/** Totals as proposed, and for each dish offered its amount for a guest, allergens and needs. */
function meaningOf(book: Book) {
  return [...book.proposals.keys()].sort().map((id) => {
    const standing = currentTerms(book, id);
    if (!standing.ok) throw new Error(`${id}: ${standing.what}`);
    const { terms, choices } = standing.value;
    return {
      proposal: id,
      totals: choices.map((choice) => `${choice.package}: ${quote(terms, choice).total}`),
      dishes: terms.packages.flatMap((menu) =>
        menu.courses.flatMap(({ dishes }) =>
          dishes.map(
            ({ name, perGuest, contains, mayContain, marks }) =>
              `${name}: ${perGuest}; ${contains.join(', ')}; may: ${mayContain.join(', ')}; ${marks.join(', ')}`,
          ),
        ),
      ),
    };
  });
}
