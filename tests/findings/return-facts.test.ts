import { expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

const withPlates = (facts: string) =>
  contentWith(
    changed(
      'kitchen.yaml',
      'add-ons:',
      `rentals:\n  plate: { amount: 1 each per guest, counts: adults, ${facts} }\nadd-ons:`,
    ),
  );

test('what a thing states of its way back is read', async () => {
  const dir = withPlates(
    'hired from: Tallow Yard Hire, back within: same day, washed: place, replacement: 6.50',
  );
  expect(await foundIn(dir)).toBe('');
  expect((await readBook(dir)).book?.kitchen.rentals.get('plate')?.back).toEqual({
    hiredFrom: 'Tallow Yard Hire',
    backWithin: 0,
    washed: 'place',
    replacement: '6.50',
  });
});

test.each([
  ['back within: 2 days', '“back within” is stated, but not whom it is hired from'],
  ['washed: hirer', '“washed” is stated, but not whom it is hired from'],
  ['hired from: Tallow Yard Hire, back within: soon', '“soon” is not a time'],
  ['replacement: a lot', 'a lot'],
])('%s is said to be wrong, with what to write', async (facts, what) => {
  const found = await foundIn(withPlates(facts));
  expect(found).toContain(what);
  expect(found).toMatch(/kitchen\.yaml:\d+:\d+/);
});
