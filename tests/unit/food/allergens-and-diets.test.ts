import { describe, expect, test } from 'vitest';
import { allergenText, parseAllergen } from '../../../src/engine/food/allergen.ts';
import { allergensKnown, leftOutAllergens } from '../../../src/engine/food/allergens-known.ts';
import { allergensOf, MOST_PATHS } from '../../../src/engine/food/allergens-of.ts';
import type { Diet } from '../../../src/engine/food/diet.ts';
import { dietsOf } from '../../../src/engine/food/diets-of.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import { parseNeed, suitsNeed } from '../../../src/engine/food/need.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { food, line, must, recipe } from '../plan/builders.ts';

const one = (...foods: Ingredient[]) =>
  recipe(
    'dish',
    '1 serving',
    foods.map((each) => line(each, '1 lb')),
  );
const suits = (of: Recipe, diet: Diet) => dietsOf(of).find((claim) => claim.diet === diet);

describe('the allergens of a recipe', () => {
  const celery = food('celery', { allergens: ['celery'] });
  const stock = recipe('stock', '1 gal', [line(celery, '1 lb')]);
  const sauce = recipe('sauce', '1 qt', [
    line(stock, '1 cup'),
    line(food('soy-sauce', { allergens: ['soy', 'wheat'] }), '1 cup'),
  ]);

  test('come with every way from the dish down to the ingredient, in the order of Annex II', () => {
    const dish = recipe('stew', '1 serving', [
      line(sauce, '1 cup'),
      line(stock, '1 cup'),
      line(celery, '1 oz', 'chopped'),
      line(celery, '1 oz'),
    ]);
    expect(
      allergensOf(dish).contains.map(({ allergen, paths }) => [
        allergenText(allergen),
        ...paths.map((path) => path.join(' → ')),
      ]),
    ).toEqual([
      ['wheat', 'stew → sauce → soy-sauce'],
      ['soy', 'stew → sauce → soy-sauce'],
      ['celery', 'stew → sauce → stock → celery', 'stew → stock → celery', 'stew → celery'],
    ]);
  });

  test('keep a warning apart, and drop it where the same allergen is contained anyway', () => {
    const bread = food('bread', {
      allergens: ['wheat'],
      mayContain: [must(parseAllergen('sesame')), must(parseAllergen('wheat'))],
    });
    const { contains, mayContain } = allergensOf(one(bread));
    expect(contains.map(({ allergen }) => allergenText(allergen))).toEqual(['wheat']);
    expect(mayContain.map(({ allergen, paths }) => [allergenText(allergen), paths])).toEqual([
      ['sesame', [['dish', 'bread']]],
    ]);
  });

  test('are not known where what is stated leaves out what the food comes from', () => {
    const sauce = food('pepper-sauce', { from: ['plant', 'fish'], allergens: ['barley'] });
    const facts = allergensOf(recipe('slaw', '1 lb', [line(one(sauce), '1 lb')]));
    expect(facts.unsaid).toEqual([['slaw', 'dish', 'pepper-sauce']]);
    // What is stated stays: barley is in it either way.
    expect(facts.contains.map(({ allergen }) => allergenText(allergen))).toEqual(['barley']);
    for (const need of ['fish', 'celery'])
      expect(suitsNeed(must(parseNeed(need)), facts, [])).toBe('unknown');
    expect(suits(one(sauce), 'pescatarian')?.suits).toBe('unknown');
    expect(suits(one(sauce), 'vegan')?.suits).toBe('no');
    // Each origin that is an allergen itself: FDA's major food allergens, Regulation (EU) No 1169/2011, Annex II.
    for (const origin of ['milk', 'egg', 'fish', 'crustacean', 'mollusc'] as const)
      expect(allergensOf(one(food('x', { from: [origin], allergens: [] }))).unsaid).toHaveLength(1);
    const named = food('pepper-sauce', { from: ['plant', 'fish'], allergens: ['fish (anchovy)'] });
    expect(allergensOf(one(named)).unsaid).toEqual([]);
  });

  test('are unsaid where an ingredient is, which none is not', () => {
    const unknown = food('relish', { contains: undefined });
    expect(allergensOf(recipe('a', '1 lb', [line(one(unknown, celery), '1 lb')])).unsaid).toEqual([
      ['a', 'dish', 'relish'],
    ]);
    expect(allergensOf(one(celery)).unsaid).toEqual([]);
  });

  test('of thirty recipes that each use two below twice over are found in bounded ways', () => {
    let [left, right] = [one(celery), recipe('other', '1 lb', [line(celery, '1 lb')])];
    for (let level = 0; level < 30; level += 1) {
      const lines = [line(left, '1 serving'), line(right, '1 lb')];
      [left, right] = [recipe(`l${level}`, '1 serving', lines), recipe(`r${level}`, '1 lb', lines)];
    }
    const [source] = allergensOf(left).contains;
    expect(source && allergenText(source.allergen)).toBe('celery');
    expect(source?.paths).toHaveLength(MOST_PATHS);
  });

  test('of a recipe that contains itself are an error that names the ring', () => {
    const lines = [line(celery, '1 lb')];
    const inner = recipe('inner', '1 lb', lines);
    const outer = recipe('outer', '1 lb', [line(inner, '1 lb')]);
    lines.push(line(outer, '1 lb'));
    expect(() => allergensOf(outer)).toThrow('recipe outer contains itself: outer → inner → outer');
  });
});

describe('the diets of a recipe', () => {
  test.each<[string, Ingredient, Partial<Record<Diet, string>>]>([
    [
      'butter',
      food('butter', { from: ['milk'], allergens: ['milk'] }),
      { vegetarian: 'yes', vegan: 'no', pescatarian: 'yes' },
    ],
    ['honey', food('honey', { from: ['honey'] }), { vegetarian: 'yes', vegan: 'no' }],
    [
      'cheese made with animal rennet',
      food('cheese', { from: ['milk', 'animal rennet'], allergens: ['milk'] }),
      { vegetarian: 'no', vegan: 'no', pescatarian: 'no', 'no pork': 'yes' },
    ],
    ['gelatin', food('gelatin', { from: ['gelatin'] }), { vegetarian: 'no', 'no pork': 'unknown' }],
    ['ham', food('ham', { from: ['pork'] }), { vegetarian: 'no', 'no pork': 'no', 'no alcohol': 'yes' }],
    [
      'cod',
      food('cod', { from: ['fish'], allergens: ['fish (cod)'] }),
      { vegetarian: 'no', pescatarian: 'yes' },
    ],
    [
      'a sauce whose origin forgets its anchovies',
      food('sauce', { from: ['plant'], allergens: ['fish (anchovy)'] }),
      { vegetarian: 'no', vegan: 'no', pescatarian: 'yes' },
    ],
    ['wine', food('wine', { from: ['plant', 'alcohol'] }), { vegan: 'yes', 'no alcohol': 'no' }],
    ['barley', food('barley', { allergens: ['barley'] }), { 'no gluten': 'no', vegan: 'yes' }],
    ['oats', food('oats', { allergens: ['oats'] }), { 'no gluten': 'no' }],
    [
      'buckwheat milled beside wheat',
      food('buckwheat', { mayContain: [must(parseAllergen('wheat'))] }),
      { 'no gluten': 'unknown', vegan: 'yes' },
    ],
    [
      'a food of unsaid origin',
      food('relish', { from: undefined }),
      { vegetarian: 'unknown', 'no pork': 'unknown', 'no gluten': 'yes' },
    ],
    [
      'a food of unsaid allergens',
      food('relish', { contains: undefined }),
      { vegan: 'unknown', 'no gluten': 'unknown', 'no pork': 'yes' },
    ],
  ])('of %s are claimed no further than it is known', (_, ingredient, expected) => {
    const claims = Object.fromEntries(dietsOf(one(ingredient)).map((claim) => [claim.diet, claim.suits]));
    expect(claims).toMatchObject(expected);
  });

  test('are no as soon as one ingredient stands against, and name it', () => {
    const dish = one(food('relish', { from: undefined }), food('ham', { from: ['pork'] }), food('carrot'));
    expect(suits(dish, 'vegan')).toEqual({ diet: 'vegan', suits: 'no', because: ['ham'] });
    expect(suits(one(food('relish', { from: undefined }), food('carrot')), 'vegan')).toEqual({
      diet: 'vegan',
      suits: 'unknown',
      because: ['relish'],
    });
  });

  test('are not claimed for a recipe without ingredients', () => {
    const claims = dietsOf(recipe('air', '1 lb', []));
    expect(claims.map(({ suits: each, because }) => [each, because])).toEqual(
      claims.map(() => ['unknown', ['air']]),
    );
    const carrot = dietsOf(one(food('carrot')));
    expect(carrot.map(({ suits: each, because }) => [each, because])).toEqual(carrot.map(() => ['yes', []]));
  });
});

test('a guest who must not eat wheat is not served spelt, which is one', () => {
  const need = must(parseNeed('wheat'));
  const served = (word: string) => {
    const dish = one(food('grain', { allergens: [word] }));
    return suitsNeed(need, allergensOf(dish), dietsOf(dish));
  };
  expect([served('spelt'), served('wheat'), served('rye')]).toEqual(['no', 'no', 'yes']);
});

test('what a food comes from and does not state is told of what it states alone', () => {
  expect(
    leftOutAllergens({ from: ['milk', 'egg', 'plant'], contains: [must(parseAllergen('milk'))] }),
  ).toEqual(['egg']);
  expect(leftOutAllergens({ from: ['milk'], contains: undefined })).toEqual([]);
  expect(leftOutAllergens({ from: undefined, contains: [] })).toEqual([]);
  expect(
    [undefined, [], [must(parseAllergen('egg'))]].map((contains) =>
      allergensKnown({ from: ['egg'], contains }),
    ),
  ).toEqual([false, false, true]);
});
