import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { projectDir } from '../../../src/build/project-dir.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { siteOf } from '../../../src/views/site-of.ts';

/** What the kitchen's side of the demo is made from, after a change of one of its files, on a day. */
async function from(file?: string, change = (text: string) => text, today = '2027-04-26'): Promise<string> {
  const dir = mkdtempSync(join(tmpdir(), 'salver-from-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  cpSync(join(projectDir, 'content'), dir, { recursive: true });
  if (file !== undefined) {
    const before = existsSync(join(dir, file)) ? readFileSync(join(dir, file), 'utf8') : '';
    const after = change(before);
    if (after === before) throw new Error(`${file} was not changed`);
    writeFileSync(join(dir, file), after);
  }
  const { book } = await readBook(dir);
  if (!book) throw new Error('the kitchen could not be read');
  return siteOf(book, null, today as Day).part?.cacheKey ?? '';
}

const more = (text: string) => `${text}\n`;

test('what the kitchen’s side is made from is the same for the words of a letter that nobody accepted', async () => {
  expect(await from('proposals/tansyfield-lunch.md', (text) => `${text}\nSee you soon.\n`)).toBe(
    await from(),
  );
});

test('it changes with everything else: every kind of file, where a proposal stands, and the day', async () => {
  const changed = [
    await from(),
    await from(undefined, undefined, '2027-04-27'),
    await from('kitchen.yaml', more),
    await from('suppliers.yaml', more),
    await from('stock.csv', more),
    await from('ingredients/breads-and-grains.yaml', more),
    await from('prices/green-quay.csv', more),
    await from('recipes/duck-legs-cherries.mdx', more),
    await from('packages/long-table.mdx', more),
    await from('proposals/weir-crew-supper.md', more),
    await from('proposals/tansyfield-lunch.md', (text) => text.replace(/^occasion: .+$/m, 'occasion: Tea')),
    await from('events/weir-crew-supper/001-accepted.json', more),
    await from('offers/weir-crew-supper-r1.json', (text) => text.replace(/"digest": "./, '"digest": "0')),
  ];
  expect(new Set(changed).size).toBe(changed.length);
});
