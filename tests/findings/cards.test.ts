import { expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

const withCards = (soup: string, cheese: string) =>
  contentWith({
    ...changed('packages/supper.mdx', '  - name: All of it\n', '  - name: All of it\n    each guest: one\n'),
    ...changed('recipes/lentil-soup.mdx', 'name: Lentil soup\n', `name: Lentil soup\n${soup}`),
    ...changed('recipes/cheese-plate.mdx', 'name: Cheese plate\n', `name: Cheese plate\n${cheese}`),
  });
const aboutCards = async (dir: string) =>
  (await foundIn(dir)).split('\n').filter((text) => /card/.test(text));

test('two dishes of a course with the same word on place cards are told, with the way out', async () => {
  expect(await aboutCards(withCards('card: bowl\n', 'card: Bowl\n'))).toEqual([
    'content/packages/supper.mdx:12:7 warning card-word-twice “lentil-soup” and “cheese-plate” of “All of it” have the same word on place cards, BOWL, so their full names are printed — give each its own word in its recipe, such as “card: soup”',
  ]);
  expect(await aboutCards(withCards('card: soup\n', 'card: cheese\n'))).toEqual([]);
  expect(await aboutCards(withCards('', ''))).toEqual([]);
});

test('a word that is too long for a card, or none at all, is told', async () => {
  expect(await aboutCards(withCards('card: soup with lentils\n', ''))).toEqual([
    'content/recipes/lentil-soup.mdx:3:7 error not-understood “soup with lentils” is too long for a card — write up to 14 characters, such as card: barley',
  ]);
  expect(await aboutCards(withCards('card: …\n', ''))).toEqual([
    'content/recipes/lentil-soup.mdx:3:7 error not-understood “…” has no letter in it — write a word for the dish, such as card: barley',
  ]);
});
