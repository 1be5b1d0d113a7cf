import { expect, test } from 'vitest';
import { printFindings } from '../../../src/book/findings/print-findings.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { contentWith, SMALL_CONTENT } from '../../findings/small-content.ts';

const files = (skill: string, soup = '') =>
  contentWith({
    'kitchen.yaml': (SMALL_CONTENT['kitchen.yaml'] ?? '').replace(
      '  stove: Stove',
      `  stove: { name: Stove, skill: ${skill} }\ncrew: { people: 3, hours: 8 hours, skills: { grill: 1, pastry: 1 } }`,
    ),
    'recipes/lentil-soup.mdx': (SMALL_CONTENT['recipes/lentil-soup.mdx'] ?? '').replace(
      'station: stove',
      `station: stove${soup}`,
    ),
  });

test('a station’s skill is that of its hands-on steps which name no other, and one that the crew has', async () => {
  const skillWith = async (soup: string) =>
    (await readBook(files('grill', soup))).book?.recipes.get('lentil-soup')?.steps[0]?.skill;
  expect(await skillWith('\n    hands-on: 20 min')).toBe('grill');
  expect(await skillWith('\n    hands-on: 20 min\n    skill: pastry')).toBe('pastry');
  // Nobody is at it.
  expect(await skillWith('')).toBeUndefined();
  const { findings } = await readBook(files('gril'));
  expect(printFindings(findings, 'content')).toContain('no skill is called “gril” — did you mean grill?');
});
