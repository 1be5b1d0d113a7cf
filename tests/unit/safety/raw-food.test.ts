import { describe, expect, test } from 'vitest';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import { ORIGINS } from '../../../src/engine/food/origin.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import { isRawAnimalFood, rawFoodIn } from '../../../src/engine/safety/raw-food.ts';
import { receivingChecks } from '../../../src/engine/safety/receiving-checks.ts';
import { allInWords, inWords } from '../../in-words.ts';
import { food, line, recipe } from '../plan/builders.ts';

const limitsOf = (of: Ingredient, facts: Partial<Recipe> = {}, preparation: string | null = null) =>
  rawFoodIn({ ...recipe('dish', '1 lb', [line(of, '1 lb', preparation)]), ...facts }).map(
    ({ limit }) => limit,
  );

describe('raw animal food', () => {
  // FDA Food Code 3-401.11: what each kind is cooked by. Milk, honey and plants are not cooked for their kind.
  test('is cooked by the limit of its kind, and what is no raw animal by none', () => {
    expect(
      Object.fromEntries(ORIGINS.map((origin) => [origin, limitsOf(food('it', { from: [origin] }))])),
    ).toMatchObject({
      poultry: ['poultry'],
      egg: ['eggs'],
      beef: ['intact meat and fish'],
      pork: ['intact meat and fish'],
      lamb: ['intact meat and fish'],
      game: ['intact meat and fish'],
      insect: ['intact meat and fish'],
      fish: ['intact meat and fish'],
      crustacean: ['intact meat and fish'],
      mollusc: ['intact meat and fish'],
      plant: [],
      fungus: [],
      milk: [],
      honey: [],
      water: [],
    });
    expect(limitsOf(food('it', { from: undefined }))).toEqual([]);
    // A sausage of beef and oats, a fish cake: what is not all animal is cooked for what is.
    expect(limitsOf(food('it', { from: ['plant', 'beef'] }))).toEqual(['intact meat and fish']);
    expect(limitsOf(food('it', { from: ['plant', 'fish'] }))).toEqual(['intact meat and fish']);
  });

  test('asks more where it is ground, injected, tenderized or stuffed, by the food or by the recipe', () => {
    const beef = food('beef', { from: ['beef'] });
    const hake = food('hake', { from: ['fish'] });
    for (const state of ['ground', 'injected', 'tenderized'] as const) {
      expect(limitsOf({ ...beef, soldAs: state })).toEqual(['ground or injected meat']);
      expect(limitsOf(hake, { cookedAs: state })).toEqual(['ground or injected meat']);
    }
    expect([limitsOf({ ...beef, soldAs: 'stuffed' }), limitsOf(beef, { cookedAs: 'stuffed' })]).toEqual([
      ['stuffed food'],
      ['stuffed food'],
    ]);
    // Only meat is a roast, and only where the recipe says so; ground it is none.
    expect(limitsOf(beef, { cookedAs: 'whole roast' })).toEqual(['whole roasts']);
    expect(limitsOf(hake, { cookedAs: 'whole roast' })).toEqual(['intact meat and fish']);
    expect(limitsOf({ ...beef, soldAs: 'ground' }, { cookedAs: 'whole roast' })).toEqual([
      'ground or injected meat',
    ]);
    expect(limitsOf(beef, { cookedAs: 'to order' })).toEqual(['intact meat and fish']);
  });

  test.each([
    ['ground-beef', 'Beef', null],
    ['beef', 'Minced beef', null],
    ['beef', 'Beef', 'tenderised'],
    ['beef', 'Beef, Injected', null],
  ])('is taken for opened where a cook says so: %s, %s, %s', (id, name, preparation) => {
    const of = { ...food(id, { from: ['beef'] }), name };
    expect(limitsOf(of, {}, preparation)).toEqual(['ground or injected meat']);
  });

  test.each([
    ['background', null],
    ['beef', 'sliced'],
  ])('is whole where no word says otherwise: %s, %s', (id, preparation) => {
    expect(limitsOf(food(id, { from: ['beef'] }), {}, preparation)).toEqual(['intact meat and fish']);
  });

  test('of several kinds is cooked by each, the strictest first', () => {
    const filling = food('filling', { from: ['egg', 'fish', 'poultry'] });
    expect(limitsOf(filling)).toEqual(['poultry', 'eggs', 'intact meat and fish']);
    expect(limitsOf(filling, { cookedAs: 'to order' })).toEqual([
      'poultry',
      'intact meat and fish',
      'eggs to order',
    ]);
    const made = rawFoodIn(
      recipe('pie', '1 lb', [
        line(food('hake', { from: ['fish'] }), '1 lb'),
        line(food('duck', { from: ['poultry'] }), '1 lb'),
      ]),
    );
    expect(made.map(({ ingredient, limit }) => `${ingredient.id}: ${limit}`)).toEqual([
      'duck: poultry',
      'hake: intact meat and fish',
    ]);
  });

  test('is named once for each limit, and is stuffed where what it goes into is', () => {
    const hake = food('hake', { from: ['fish'] });
    const twice = recipe('dish', '1 lb', [
      line(hake, '1 lb'),
      line(hake, '2 lb'),
      line(hake, '1 lb', 'minced'),
    ]);
    expect(rawFoodIn(twice).map(({ limit }) => limit)).toEqual([
      'ground or injected meat',
      'intact meat and fish',
    ]);
    const farce = recipe('farce', '1 lb', [line(hake, '1 lb')]);
    const [raw] = rawFoodIn({ ...recipe('roll', '1 lb', [line(farce, '1 lb')]), cookedAs: 'stuffed' });
    expect([raw?.limit, raw?.from?.id]).toEqual(['stuffed food', 'farce']);
  });

  test('that is sold ready to eat is none', () => {
    expect(isRawAnimalFood(food('ham', { from: ['pork'], soldAs: 'ready to eat' }))).toBe(false);
    expect(isRawAnimalFood(food('ham', { from: ['pork'], soldAs: 'ground' }))).toBe(true);
  });
});

test('a delivery of shellfish is written down with the number of its tag', () => {
  const [, tags] = receivingChecks(
    [{ supplierName: 'Quay', foods: [food('mussel', { from: ['mollusc'] })] }],
    FOOD_CODE_2022,
    'F',
  );
  expect([tags?.section, allInWords(tags?.blanks)]).toEqual([
    '3-203.12',
    ['tag number', 'kept until', 'initials'],
  ]);
});

describe('a delivery', () => {
  const checks = (...foods: Ingredient[]) =>
    receivingChecks([{ supplierName: 'Quay', foods }], FOOD_CODE_2022, 'F').map(({ what, limit }) => [
      inWords(what),
      inWords(limit),
    ]);
  const COLD = '41 °F or below';

  // FDA Food Code 3-202.11: 41 °F, raw eggs in air of 45 °F, frozen food frozen; tags of shellfish 3-203.12.
  test.each<[string, Partial<Ingredient>, string[]]>([
    ['meat, however it is kept', { from: ['beef'], storage: undefined }, [COLD]],
    ['meat said to be dry', { from: ['beef'], storage: 'dry' }, [COLD]],
    ['raw eggs', { from: ['egg'], storage: 'chilled' }, ['air at 45 °F or below']],
    ['what is made of eggs and flour', { from: ['egg', 'plant'], storage: 'chilled' }, [COLD]],
    ['boiled eggs', { from: ['egg'], storage: 'chilled', soldAs: 'ready to eat' }, [COLD]],
    ['milk, however it is kept', { from: ['milk'], storage: undefined }, [COLD]],
    ['milk said to be dry', { from: ['milk'], storage: 'dry' }, []],
    ['chilled milk', { from: ['milk'], storage: 'chilled' }, [COLD]],
    ['ham', { from: ['pork'], storage: 'chilled', soldAs: 'ready to eat' }, [COLD]],
    ['canned ham', { from: ['pork'], storage: 'dry', soldAs: 'ready to eat' }, []],
    ['chilled food of plants and milk', { from: ['plant', 'milk'], storage: 'chilled' }, [COLD]],
    ['whole chilled produce', { from: ['plant', 'fungus'], storage: 'chilled' }, []],
    [
      'chilled food of several parts',
      { from: ['plant'], storage: 'chilled', parts: 'chickpeas, oil' },
      [COLD],
    ],
    ['chilled food of which nobody says what it is', { from: undefined, storage: 'chilled' }, [COLD]],
    [
      'ham, and nobody says how it is kept',
      { from: ['pork'], storage: undefined, soldAs: 'ready to eat' },
      [COLD],
    ],
    ['chilled honey', { from: ['honey'], storage: 'chilled' }, [COLD]],
    ['honey', { from: ['honey'], storage: undefined }, []],
    ['food of which nobody says anything', { from: undefined, storage: undefined }, []],
    ['frozen peas', { from: ['plant'], storage: 'frozen' }, ['frozen solid, no sign of thawing']],
    ['frozen meat', { from: ['beef'], storage: 'frozen' }, ['frozen solid, no sign of thawing']],
    [
      'live shellfish',
      { from: ['mollusc'], storage: 'chilled' },
      [COLD, 'tag on each container; keep it with the date served'],
    ],
    ['frozen shellfish', { from: ['mollusc'], storage: 'frozen' }, ['frozen solid, no sign of thawing']],
    ['cooked shellfish', { from: ['mollusc'], storage: 'chilled', soldAs: 'ready to eat' }, [COLD]],
    ['flour', { from: ['plant'] }, []],
  ])('of %s', (_, facts, limits) => {
    expect(checks(food('it', facts))).toEqual(limits.map((limit) => ['Quay: it', limit]));
  });

  test('is one check for all that is measured alike', () => {
    expect(checks(food('hake', { from: ['fish'] }), food('rye'), food('cream', { from: ['milk'] }))).toEqual([
      ['Quay: hake; cream', COLD],
    ]);
    expect(checks()).toEqual([]);
  });
});
