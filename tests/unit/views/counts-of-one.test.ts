import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { ACCEPTED, acceptanceOf, ISSUED, offerIn } from '../../commands/accepted-kitchen.ts';
import { copyOf, SECOND_KITCHEN } from '../../commands/kitchen-copy.ts';
import { run } from '../../commands/run.ts';
import { wholeSite } from './whole-site.ts';

/** A supper for one adult and one child, with one photographer to feed and one of the crew who eats. */
async function supperForTwo(): Promise<string> {
  const dir = copyOf(SECOND_KITCHEN, [
    [
      'proposals/lifeboat-evening.md',
      'guests: { adults: 34, children: 3, vendors: 1, staff: 3 }',
      'guests: { adults: 1, children: 1, vendors: 1, staff: 1 }',
    ],
    ['proposals/lifeboat-evening.md', '  vegan: 3\n  celery: 1', '  celery: 1'],
    ['proposals/lifeboat-evening.md', 'haddock-chowder: 29', 'haddock-chowder: 1'],
    ['proposals/lifeboat-evening.md', 'bean-and-leek-stew: 9', 'bean-and-leek-stew: 2'],
  ]);
  expect(await run(dir, 'issue', 'lifeboat-evening', '--today', ISSUED)).toMatchObject({ code: 0 });
  return dir;
}

async function accepted(dir: string): Promise<void> {
  const file = join(copyOf(dir), 'answer.json');
  writeFileSync(file, JSON.stringify(acceptanceOf(offerIn(dir))));
  expect(await run(dir, 'accept', file, '--today', ACCEPTED)).toMatchObject({ code: 0 });
}

/** Places where one of something is told in the plural: `1 guests`. A figure that only ends in 1, `21`, `3.1` or `2/1`, is another. */
function onesInPlural(text: string): string[] {
  const things =
    'guests|adults|children|vendors|pieces|servings|helpings|people|events|findings|errors|warnings|dishes|foods|packs|files|lines|rows|needs|batches|loads|tables|(?:vendor |staff |crew )?meals|days|hours|tasks|are';
  const plural = new RegExp(String.raw`.{0,40}(?<![\d.,:/⁄-])1 (?:of them )?(?:${things})\b.{0,20}`, 'g');
  return [...text.matchAll(plural)].map(([found]) => found);
}

test('what this looks for is found', () => {
  expect(onesInPlural('for 1 guests, 21 guests and 1 guest')).toHaveLength(1);
  expect(onesInPlural('21 guests, 1 guest, 1,001 pieces, 3.1 servings')).toEqual([]);
});

describe('a supper for one adult and one child holds no “1 guests”', () => {
  test('on any page, paper or list, offered and accepted', async () => {
    const dir = await supperForTwo();
    for (const state of ['offered', 'accepted']) {
      if (state === 'accepted') await accepted(dir);
      const { book } = await readBook(dir);
      if (!book) throw new Error('the kitchen cannot be read');
      const { pages, prints, files } = await wholeSite(book, null, ACCEPTED as Day);
      const text = JSON.stringify([
        pages,
        prints,
        files.map(({ content }) => (typeof content === 'string' ? content : '')),
      ]);
      expect(text).toContain('1 adult');
      expect(onesInPlural(text)).toEqual([]);
    }
  });

  test('in what commands print', async () => {
    const dir = await supperForTwo();
    const offered = await run(dir, 'quote', 'lifeboat-evening', '--today', ACCEPTED);
    await accepted(dir);
    const told = [offered];
    const calls: [name: string, ...words: string[]][] = [
      ['plan', 'lifeboat-evening'],
      ['check'],
      ['guarantee', 'lifeboat-evening', '--adults', '1', '--children', '0', '--on', ACCEPTED],
      ['guarantee', 'lifeboat-evening', '--guests', '1', '--adults', '1', '--children', '1'],
      ['explain', 'lifeboat-evening'],
    ];
    for (const [name, ...words] of calls) told.push(await run(dir, name, ...words, '--today', ACCEPTED));
    const text = told.map(({ out, err }) => `${out}\n${err}`).join('\n');
    expect(text).toContain('1 adult, 1 child, 1 vendor meal, 1 staff meal');
    expect(onesInPlural(text)).toEqual([]);
  });
});
