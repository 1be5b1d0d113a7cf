import { expect, test } from 'vitest';
import { correctedDish, correctionsTo } from '../../../src/offers/corrections/corrections.ts';
import type { Change } from '../../commands/kitchen-copy.ts';
import { offerOf, secondKitchen } from './second-kitchen.ts';

async function correctionsAfter(...changes: readonly Change[]) {
  const offer = offerOf(await secondKitchen());
  return { offer, corrections: correctionsTo(offer, await secondKitchen(...changes)) };
}

test('nothing is corrected while nothing has become known', async () => {
  expect((await correctionsAfter()).corrections).toEqual([]);
});

test('an allergen added to an ingredient corrects every dish it is in, and the claims it ends', async () => {
  const { offer, corrections } = await correctionsAfter([
    'ingredients/own.yaml',
    'tinned-butter-beans:\n  name: Butter beans, large tin\n  from: plant\n  contains: none',
    'tinned-butter-beans:\n  name: Butter beans, large tin\n  from: plant, egg\n  contains: egg',
  ]);
  expect(corrections).toEqual([
    {
      recipe: 'bean-and-leek-stew',
      dish: 'Butter bean and leek stew',
      contains: ['egg'],
      mayContain: [],
      lostMarks: expect.arrayContaining(['vegan']),
    },
  ]);
  const frozen = offer.terms.packages[0]?.courses[0]?.dishes.find(
    ({ recipe }) => recipe === 'bean-and-leek-stew',
  );
  expect(frozen?.marks).toContain('vegan');
  const shown = correctedDish(frozen!, corrections);
  expect(shown.contains).toContain('egg');
  expect(shown.marks).not.toContain('vegan');
  expect(shown.marks).toContain('vegetarian');
});

test('a new warning of traces corrects, and an allergen that was a trace and is now contained is no longer listed as one', async () => {
  const traces = await correctionsAfter([
    'ingredients/own.yaml',
    'tinned-butter-beans:\n  name: Butter beans, large tin\n  from: plant\n  contains: none\n  may contain: none',
    'tinned-butter-beans:\n  name: Butter beans, large tin\n  from: plant\n  contains: none\n  may contain: sesame',
  ]);
  expect(traces.corrections).toMatchObject([
    { recipe: 'bean-and-leek-stew', contains: [], mayContain: ['sesame'] },
  ]);

  const contained = await correctionsAfter([
    'ingredients/own.yaml',
    '  contains: wheat, milk\n  may contain: oats',
    '  contains: wheat, milk, oats',
  ]);
  expect(contained.corrections).toMatchObject([
    { recipe: 'haddock-chowder', contains: ['oats'], mayContain: [] },
  ]);
  const chowder = contained.offer.terms.packages[0]?.courses[0]?.dishes[0];
  expect(chowder?.mayContain).toContain('oats');
  const shown = correctedDish(chowder!, contained.corrections);
  expect([shown.contains.includes('oats'), shown.mayContain.includes('oats')]).toEqual([true, false]);
});

test('an allergen taken out corrects nothing: the offer stays as it was', async () => {
  const { corrections } = await correctionsAfter([
    'recipes/haddock-chowder.mdx',
    '  soda-bread: 40 slices\n',
    '',
  ]);
  expect(corrections).toEqual([]);
});

test('a dish whose recipe cannot be read is claimed for nobody, and one without corrections is shown as offered', async () => {
  const book = await secondKitchen();
  const offer = offerOf(book);
  const corrections = correctionsTo(offer, { ...book, recipes: new Map() });
  const dishes = offer.terms.packages.flatMap(({ courses }) => courses.flatMap((each) => each.dishes));
  for (const dish of dishes) {
    const shown = correctedDish(dish, corrections);
    expect([shown.marks, shown.onRequest ?? [], shown.unsaid]).toEqual([[], [], true]);
    expect(shown.contains).toEqual(dish.contains);
  }
  expect(correctedDish(dishes[0]!, [])).toBe(dishes[0]);
});
