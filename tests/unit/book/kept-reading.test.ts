import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { type KeptReading, keepReading } from '../../../src/book/kept-reading.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { copyOf } from '../../commands/kitchen-copy.ts';

const DEMO = fileURLToPath(new URL('../../../content', import.meta.url));

/** Everything that a reading says, places of every item included. */
async function said(dir: string, kept?: KeptReading) {
  const { book, findings } = await readBook(dir, undefined, undefined, kept);
  const { placeOf, ...facts } = book ?? { placeOf: () => undefined };
  const items = [
    ...[...(book?.recipes.keys() ?? [])].map((id) => `recipe/${id}` as const),
    ...[...(book?.proposals.keys() ?? [])].map((id) => `proposal/${id}` as const),
    ...[...(book?.packages.keys() ?? [])].map((id) => `package/${id}` as const),
  ];
  return {
    facts,
    fileDigests: book?.fileDigests,
    places: items.map((item) => [
      item,
      placeOf(item),
      placeOf(item, ['yields']),
      placeOf(item, ['title'], 'key'),
    ]),
    findings: findings.map((each) => JSON.stringify(each)).sort(),
  };
}

/** One edit after another, each of another kind of file, ending where they began. */
function edits(dir: string): (readonly [name: string, edit: () => void])[] {
  const first = (folder: string) => join(dir, folder, readdirSync(join(dir, folder)).sort()[0]!);
  const [proposal, recipe, packageFile, prices] = ['proposals', 'recipes', 'packages', 'prices'].map(
    first,
  ) as [string, string, string, string];
  const kitchen = join(dir, 'kitchen.yaml');
  const mark = join(dir, 'brand', 'mark.svg');
  const was = new Map(
    [proposal, recipe, packageFile, prices, kitchen, mark].map((file) => [file, readFileSync(file, 'utf8')]),
  );
  const write = (file: string, text: (before: string) => string) => () =>
    writeFileSync(file, text(was.get(file)!));
  return [
    ['a letter with another word', write(proposal, (text) => `${text}\nAnother word.\n`)],
    ['a recipe that cannot be read', write(recipe, (text) => text.replace('---', '--- [[['))],
    ['a menu gone', () => rmSync(packageFile)],
    ['the recipe mended', write(recipe, (text) => text)],
    ['a dearer pack', write(prices, (text) => text.replace(/(\d)\.(\d\d)/, '$19.$2'))],
    ['the menu back', write(packageFile, (text) => text)],
    ['a key of the kitchen that nobody knows', write(kitchen, (text) => `${text}\nfish-knife: yes\n`)],
    ['the kitchen mended', write(kitchen, (text) => text)],
    ['another drawing of the mark', write(mark, (text) => text.replace('</svg>', '<circle r="1"/></svg>'))],
    ['a picture in the folder', () => writeFileSync(join(dir, 'recipes', 'none.png'), 'no picture')],
    ['a file renamed in place', () => writeFileSync(join(dir, 'recipes', 'again.mdx'), was.get(recipe)!)],
    [
      'all as it was',
      () => {
        for (const [file, text] of was) writeFileSync(file, text);
        rmSync(join(dir, 'recipes', 'none.png'));
        rmSync(join(dir, 'recipes', 'again.mdx'));
      },
    ],
  ];
}

test('after every edit a kept reading says what a fresh one says', async () => {
  const dir = copyOf(DEMO);
  const kept = keepReading();
  const before = await said(dir, kept);
  const seen = new Set<string>();
  for (const [name, edit] of edits(dir)) {
    edit();
    const now = await said(dir, kept);
    expect(now, name).toEqual(await said(dir));
    seen.add(JSON.stringify([now.findings, [...(now.fileDigests ?? [])]]));
  }
  expect(await said(dir, kept)).toEqual(before);
  // Most of the edits change what is said; a reading that always said the same would pass the rest.
  expect(seen.size).toBeGreaterThan(8);
});

test('menus whose files are as they were are given again, not read again', async () => {
  const dir = copyOf(DEMO);
  const kept = keepReading();
  const { book: first } = await readBook(dir, undefined, undefined, kept);
  const { book: second } = await readBook(dir, undefined, undefined, kept);
  expect(second!.recipes).toBe(first!.recipes);
  expect(second!.proposals).not.toBe(first!.proposals);
});
