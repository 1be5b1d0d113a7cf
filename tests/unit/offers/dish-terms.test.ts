import { describe, expect, test } from 'vitest';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import { dishTerms, offeredFood, recipeFacts } from '../../../src/offers/issue/dish-terms.ts';
import { proposalAddress } from '../../../src/offers/issue/proposal-address.ts';
import { dish, food, line, must, recipe } from '../plan/builders.ts';
import { sampleAddOn, sampleCourse, sampleDish, samplePackage, sampleTerms } from '../quote/sample-terms.ts';

const butter = food('butter', { from: ['milk'], allergens: ['milk'] });
const flour = food('flour', { allergens: ['wheat'], mayContain: [must(parseAllergen('soy'))] });
const mystery = food('mystery', { contains: undefined });
const toast = (facts: object = {}) =>
  recipe('toast', '10 pieces', [line(flour, '1 lb'), line(butter, '4 oz')], facts);

describe('what is known of a dish’s food, as an offer freezes it', () => {
  test('is its diets and allergens, and nothing on request where nothing of it can be changed', () => {
    expect(recipeFacts(toast())).toStrictEqual({
      marks: ['vegetarian', 'pescatarian', 'no pork', 'no alcohol'],
      contains: ['wheat', 'milk'],
      mayContain: ['soy'],
    });
  });

  test('says that something is not known wherever an ingredient’s allergens are not stated, parts included', () => {
    const sauce = recipe('sauce', '1 qt', [line(mystery, '1 cup')]);
    expect(recipeFacts(recipe('dip', '1 qt', [line(sauce, '1 cup')])).unsaid).toBe(true);
    expect(recipeFacts(toast())).not.toHaveProperty('unsaid');
  });

  test('names what it can be made without, the diets first', () => {
    const changes = [{ item: 'butter', instead: undefined, needs: ['vegan', 'milk'] }];
    expect(recipeFacts(toast({ changes })).onRequest).toEqual(['vegan', 'milk']);
    const none = [{ item: 'flour', instead: undefined, needs: ['milk'] }];
    expect(recipeFacts(toast({ changes: none }))).not.toHaveProperty('onRequest');
  });

  test('goes with the dish as the menu states it: its own role before its recipe’s', () => {
    const of = toast({ role: 'side' });
    const { course: _, ...stated } = dish(of, '2 pieces per guest');
    expect(dishTerms(stated as never)).toMatchObject({
      recipe: 'toast',
      perGuest: '2 pieces per guest',
      role: 'side',
      contains: recipeFacts(of).contains,
    });
    expect(dishTerms({ ...stated, role: 'main' } as never).role).toBe('main');
  });
});

test('all food of an offer is that of every menu, course and add-on', () => {
  const of = (id: string) => sampleDish({ recipe: id, name: id });
  const terms = sampleTerms({
    packages: [
      samplePackage({
        courses: [
          sampleCourse({ dishes: [of('soup')] }),
          sampleCourse({ name: 'Sweet', dishes: [of('pears')] }),
        ],
      }),
      samplePackage({ id: 'second', courses: [sampleCourse({ dishes: [of('hake')] })] }),
    ],
    addOns: [sampleAddOn(), sampleAddOn({ id: 'late', dishes: [of('rolls')] })],
  });
  expect([...offeredFood(terms)].map(([id, { name }]) => [id, name])).toEqual([
    ['soup', 'soup'],
    ['pears', 'pears'],
    ['hake', 'hake'],
    ['rolls', 'rolls'],
  ]);
});

test('a proposal’s page is served under its link', () => {
  expect(proposalAddress('https://ruddock.example', 'abc')).toBe('https://ruddock.example/proposals/abc/');
});
