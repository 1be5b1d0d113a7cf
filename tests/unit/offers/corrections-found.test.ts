import { describe, expect, test } from 'vitest';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { Recipe, RecipeChange } from '../../../src/engine/food/recipe.ts';
import type { DishTerms } from '../../../src/engine/quote/terms.ts';
import {
  type CorrectionSources,
  canEat,
  correctedDish,
  correctionsNow,
  correctionsTo,
  type DishCorrection,
} from '../../../src/offers/corrections/corrections.ts';
import { recipeFacts } from '../../../src/offers/issue/dish-terms.ts';
import { day, food, line, must, recipe } from '../plan/builders.ts';
import { sampleAddOn, sampleCourse, sampleDish, samplePackage, sampleTerms } from '../quote/sample-terms.ts';

const oil = food('oil');
const leek = food('leek');
const butter = food('butter', { from: ['milk'], allergens: ['milk'] });
const traces = (...words: string[]) => words.map((word) => must(parseAllergen(word)));
const tart = (foods: readonly Ingredient[], changes: readonly RecipeChange[] = []): Recipe =>
  recipe(
    'tart',
    '8 pieces',
    foods.map((each) => line(each, '1 lb')),
    { name: 'Leek tart', changes },
  );

const offeredAs = (of: Recipe): DishTerms => sampleDish({ recipe: of.id, name: of.name, ...recipeFacts(of) });
const OFFERED = offeredAs(tart([oil, leek]));

function offerOf(...dishes: readonly DishTerms[]) {
  const packages = [samplePackage({ courses: [sampleCourse({ dishes })] })];
  return { proposal: 'gale', revision: 2, terms: sampleTerms({ packages }) };
}

function bookOf(recipes: readonly Recipe[], change: Partial<CorrectionSources> = {}): CorrectionSources {
  return {
    recipes: new Map(recipes.map((each) => [each.id, each])),
    corrections: new Map(),
    told: new Map(),
    held: new Map(),
    ...change,
  };
}

const statement = (facts: Partial<DishCorrection>) => ({
  recipe: 'tart',
  dish: 'Leek tart',
  contains: [] as string[],
  mayContain: [] as string[],
  lostMarks: [] as string[],
  ...facts,
});
const published = (facts: Partial<DishCorrection>, revision = 2): Partial<CorrectionSources> => ({
  corrections: new Map([
    [
      'gale',
      [
        {
          version: 1,
          kind: 'correction',
          on: day('2027-04-20'),
          proposal: 'gale',
          revision,
          dishes: [statement(facts)],
        } as never,
      ],
    ],
  ]),
});
const wasTold = (facts: Partial<DishCorrection>): Partial<CorrectionSources> => ({
  told: new Map([
    [
      'gale',
      [
        {
          version: 1,
          kind: 'told',
          on: day('2027-04-20'),
          proposal: 'gale',
          revision: 2,
          dishes: [statement(facts)],
        } as never,
      ],
    ],
  ]),
});

describe('a dish by its recipe as it is now', () => {
  test('is not corrected where all is as offered, or safer', () => {
    expect(correctionsTo(offerOf(OFFERED), bookOf([tart([oil, leek])]))).toEqual([]);
    const withButter = offeredAs(tart([butter, leek]));
    expect(correctionsTo(offerOf(withButter), bookOf([tart([leek])]))).toEqual([]);
  });

  test('is corrected by each allergen contained, each warning, each diet lost', () => {
    const spread = food('spread', { mayContain: traces('sesame', 'milk'), allergens: ['celery'] });
    expect(correctionsTo(offerOf(OFFERED), bookOf([tart([butter, leek, spread])]))).toEqual([
      statement({ contains: ['milk', 'celery'], mayContain: ['sesame'], lostMarks: ['vegan'] }),
    ]);
  });

  test('is corrected only by what was not offered: a warning made certain is contained, the reverse is nothing', () => {
    const warned = food('spread', { mayContain: traces('celery') });
    const certain = food('spread', { allergens: ['celery'] });
    const offering = (of: Ingredient) => offerOf(offeredAs(tart([leek, of])));
    expect(correctionsTo(offering(warned), bookOf([tart([leek, certain])]))).toEqual([
      statement({ contains: ['celery'] }),
    ]);
    expect(correctionsTo(offering(certain), bookOf([tart([leek, warned])]))).toEqual([]);
  });

  test('is corrected by an allergen and a warning that end no claim', () => {
    const offered = { ...OFFERED, marks: [] };
    const spread = food('spread', { mayContain: traces('sesame'), allergens: ['celery'] });
    expect(correctionsTo(offerOf(offered), bookOf([tart([leek, spread])]))).toEqual([
      statement({ contains: ['celery'], mayContain: ['sesame'] }),
    ]);
  });

  test('says so where nobody states the allergens of a food any longer, and keeps no diet', () => {
    const [found] = correctionsTo(
      offerOf(OFFERED),
      bookOf([tart([leek, food('oil', { contains: undefined })])]),
    );
    expect(found).toMatchObject({
      contains: [],
      unsaid: true,
      lostMarks: ['vegetarian', 'vegan', 'pescatarian', 'no gluten'],
    });
    expect(found).not.toHaveProperty('unreadable');
    // What was offered as unknown is no news.
    const unknown = tart([leek, food('oil', { contains: undefined })]);
    expect(correctionsTo(offerOf(offeredAs(unknown)), bookOf([unknown]))).toEqual([]);
  });

  test('loses what it could be made for, and keeps it where it suits as it is or can still be made', () => {
    const without: RecipeChange = { item: 'butter', instead: undefined, needs: ['vegan', 'milk'] };
    const offered = offeredAs(tart([butter, leek], [without]));
    expect(offered.onRequest).toEqual(['vegan', 'milk']);
    const now = (of: Recipe) => correctionsTo(offerOf(offered), bookOf([of]));
    expect(now(tart([butter, leek]))).toEqual([
      statement({ lostMarks: ['vegan on request', 'milk on request'] }),
    ]);
    expect(now(tart([oil, leek]))).toEqual([]);
    const crumbs = food('crumbs', { mayContain: traces('milk') });
    expect(now(tart([butter, leek, crumbs], [without]))).toEqual([
      // The offer says already that milk is in it.
      statement({ lostMarks: ['milk on request'] }),
    ]);
  });

  test('is looked for among the food of add-ons as well', () => {
    const offer = {
      ...offerOf(),
      terms: sampleTerms({ packages: [], addOns: [sampleAddOn({ dishes: [OFFERED] }), sampleAddOn()] }),
    };
    expect(correctionsTo(offer, bookOf([tart([butter, leek])]))).toEqual([
      statement({ contains: ['milk'], lostMarks: ['vegan'] }),
    ]);
  });
});

describe('a correction that was published', () => {
  const milk = { contains: ['milk'], lostMarks: ['vegan'] };

  test('stays on the page when the recipe is as offered again, and is nothing to tell', () => {
    const book = bookOf([tart([oil, leek])], published(milk));
    expect(correctionsTo(offerOf(OFFERED), book)).toEqual([statement(milk)]);
    expect(correctionsNow(offerOf(OFFERED), book)).toEqual([]);
  });

  test('is joined with what is new, nothing twice, and a published warning gives way to what is contained', () => {
    const book = bookOf(
      [tart([butter, leek])],
      published({ mayContain: ['milk', 'sesame'], contains: ['egg'] }),
    );
    expect(correctionsTo(offerOf(OFFERED), book)).toEqual([
      statement({ contains: ['milk', 'egg'], mayContain: ['sesame'], lostMarks: ['vegan'] }),
    ]);
  });

  test('of another revision or another dish says nothing of this one', () => {
    expect(correctionsTo(offerOf(OFFERED), bookOf([tart([oil, leek])], published(milk, 1)))).toEqual([]);
    const other = published({ ...milk, recipe: 'soup' });
    expect(correctionsTo(offerOf(OFFERED), bookOf([tart([oil, leek])], other))).toEqual([]);
  });

  test('of a diet that was never claimed takes nothing off', () => {
    const book = bookOf([tart([oil, leek])], published({ lostMarks: ['no pork on request', 'halal'] }));
    expect(correctionsTo(offerOf(OFFERED), book)).toEqual([]);
  });

  test('counts for nothing that was only told while the recipe can be read', () => {
    const book = bookOf([tart([oil, leek])], wasTold(milk));
    expect([correctionsTo(offerOf(OFFERED), book), correctionsNow(offerOf(OFFERED), book)]).toEqual([[], []]);
  });
});

describe('a dish whose recipe cannot be read', () => {
  test('is unreadable, with what was published and told of it, on the page and for whoever tells', () => {
    const told = wasTold({ mayContain: ['sesame'], lostMarks: ['vegetarian'] });
    const book = bookOf([], { ...published({ contains: ['milk'] }), ...told });
    const found = [
      statement({ contains: ['milk'], mayContain: ['sesame'], lostMarks: ['vegetarian'], unreadable: true }),
    ];
    expect(correctionsTo(offerOf(OFFERED), book)).toEqual(found);
    expect(correctionsNow(offerOf(OFFERED), book)).toEqual(found);
    expect(correctionsTo(offerOf(OFFERED), bookOf([]))).toEqual([statement({ unreadable: true })]);
  });

  test('is each dish of a proposal whose published corrections are lost, with all that its recipe says', () => {
    const held = new Map([['corrections/gale', 'it is no JSON']]);
    const book = bookOf([tart([butter, leek])], { held, ...wasTold({ contains: ['egg'] }) });
    const found = [statement({ contains: ['milk', 'egg'], lostMarks: ['vegan'], unreadable: true })];
    expect(correctionsTo(offerOf(OFFERED), book)).toEqual(found);
    expect(correctionsNow(offerOf(OFFERED), book)).toEqual(found);
    const others = new Map([['corrections/storm', 'it is no JSON']]);
    expect(correctionsTo(offerOf(OFFERED), bookOf([tart([leek])], { held: others }))).toEqual([]);
  });
});

describe('a dish as it is shown with its corrections', () => {
  const offered = sampleDish({
    recipe: 'tart',
    marks: ['vegan', 'vegetarian'],
    contains: ['rye'],
    mayContain: ['milk', 'sesame'],
    onRequest: ['no gluten', 'milk'],
  });

  test('has the allergens found besides those offered, none listed twice, and only the claims that stay', () => {
    const found = statement({
      contains: ['milk'],
      mayContain: ['egg'],
      lostMarks: ['vegan', 'milk on request'],
    });
    expect(correctedDish(offered, [statement({ recipe: 'soup', contains: ['fish (cod)'] }), found])).toEqual({
      ...offered,
      marks: ['vegetarian'],
      contains: ['rye', 'milk'],
      mayContain: ['sesame', 'egg'],
      onRequest: ['no gluten'],
    });
  });

  test('claims nothing where it cannot be read, and is marked unknown there and where an allergen is', () => {
    const unreadable = correctedDish(offered, [statement({ unreadable: true })]);
    expect(unreadable).toMatchObject({ marks: [], onRequest: [], unsaid: true, contains: ['rye'] });
    expect(correctedDish(offered, [statement({ unsaid: true })])).toMatchObject({
      marks: ['vegan', 'vegetarian'],
      unsaid: true,
    });
    expect(correctedDish(offered, [statement({ contains: ['egg'] })])).not.toHaveProperty('unsaid');
    const { onRequest: _, ...plain } = offered;
    expect(correctedDish(plain, [statement({ unreadable: true })])).not.toHaveProperty('onRequest');
  });

  test('is as offered without any', () => {
    expect(correctedDish(offered, [statement({ recipe: 'soup', contains: ['egg'] })])).toBe(offered);
  });
});

test('a guest can eat what suits as it is or can be made, and nothing by a word that is no need', () => {
  const made = tart([butter, leek], [{ item: 'butter', instead: undefined, needs: ['vegan'] }]);
  expect(['vegan', 'vegetarian', 'milk', 'kiwi'].map((need) => canEat(made, need))).toEqual([
    true,
    true,
    false,
    false,
  ]);
});
