import { describe, expect, test } from 'vitest';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import { ALLERGEN_LAWS, declaredNames, outsideLaw } from '../../../src/engine/food/allergen-law.ts';
import { must } from '../../unit/plan/builders.ts';

const all = (...words: string[]) => words.map((word) => must(parseAllergen(word)));

/*
 * The nine major food allergens: 21 U.S.C. 321(qq) (FALCPA 2004; FASTER Act 2021 for sesame), FDA Food Code 1-201.10.
 * 21 U.S.C. 343(w) asks for the type of tree nut and the species of fish and crustacean shellfish.
 */
describe('the nine major allergens of the US', () => {
  test.each([
    ['milk', 'milk'],
    ['egg', 'egg'],
    ['fish (cod)', 'fish (cod)'],
    ['crustacean (shrimp)', 'crustacean shellfish (shrimp)'],
    ['almond', 'tree nuts (almond)'],
    ['wheat', 'wheat'],
    ['peanut', 'peanuts'],
    ['soy', 'soybeans'],
    ['sesame', 'sesame'],
  ])('%s is declared as %s', (word, name) => {
    expect(declaredNames(all(word), ['us'])).toEqual([name]);
  });

  test('are nine and no more', () => {
    expect(ALLERGEN_LAWS.us).toHaveLength(9);
    expect(
      declaredNames(
        all('rye', 'barley', 'oats', 'mollusc (squid)', 'celery', 'mustard', 'lupin', 'sulphites'),
        ['us'],
      ),
    ).toEqual([]);
  });

  test('count spelt as wheat, whose species it is', () => {
    expect(declaredNames(all('spelt', 'barley'), ['us'])).toEqual(['wheat (spelt)']);
  });
});

/*
 * Regulation (EU) No 1169/2011, Annex II, in the order of its numbers, as published. Its exceptions (glucose syrup of
 * wheat, fully refined soybean oil, whey for distillates and so on) are for a label to say: what contains an allergen
 * is what the kitchen writes.
 */
describe('the fourteen groups of the EU', () => {
  test.each([
    ['rye', 'cereals containing gluten (rye)'],
    ['crustacean (crab)', 'crustaceans (crab)'],
    ['egg', 'eggs'],
    ['fish (anchovy)', 'fish (anchovy)'],
    ['peanut', 'peanuts'],
    ['soy', 'soybeans'],
    ['milk', 'milk'],
    ['hazelnut', 'nuts (hazelnut)'],
    ['celery', 'celery'],
    ['mustard', 'mustard'],
    ['sesame', 'sesame seeds'],
    ['sulphites', 'sulphur dioxide and sulphites'],
    ['lupin', 'lupin'],
    ['mollusc (mussel)', 'molluscs (mussel)'],
  ])('%s is declared as %s', (word, name) => {
    expect(declaredNames(all(word), ['eu'])).toEqual([name]);
  });

  test('are fourteen, and their numbers are the order of the list', () => {
    expect(ALLERGEN_LAWS.eu.map((law) => law.group)).toEqual([
      'cereal',
      'crustacean',
      'egg',
      'fish',
      'peanut',
      'soy',
      'milk',
      'tree nut',
      'celery',
      'mustard',
      'sesame',
      'sulphites',
      'lupin',
      'mollusc',
    ]);
  });

  test('name every cereal of No. 1 and every nut of No. 8 by its kind, pine nut and chestnut not among them', () => {
    const cereals = ['wheat', 'spelt', 'khorasan', 'rye', 'barley', 'oats'];
    expect(declaredNames(all(...cereals), ['eu'])).toEqual([
      'cereals containing gluten (barley, khorasan, oats, rye, spelt, wheat)',
    ]);
    const nuts = ['almond', 'hazelnut', 'walnut', 'cashew', 'pecan', 'brazil nut', 'pistachio', 'macadamia'];
    expect(declaredNames(all(...nuts), ['eu'])[0]?.split(', ')).toHaveLength(8);
    expect(declaredNames(all('pine nut', 'chestnut'), ['eu'])).toEqual([]);
    expect(outsideLaw(all('pine nut', 'almond'), ['eu'])).toEqual(all('pine nut'));
  });
});

describe('what Annex II asks for and US law does not', () => {
  // The items of Annex II that have no place among the nine of 21 U.S.C. 321(qq).
  test.each([
    ['rye', ['cereals containing gluten (rye)']],
    ['barley', ['cereals containing gluten (barley)']],
    ['oats', ['cereals containing gluten (oats)']],
    ['celery', ['celery']],
    ['mustard', ['mustard']],
    ['lupin', ['lupin']],
    ['sulphites', ['sulphur dioxide and sulphites']],
    ['mollusc (squid)', ['molluscs (squid)']],
  ])('%s', (word, names) => {
    expect(declaredNames(all(word), ['eu'])).toEqual(names);
    expect(declaredNames(all(word), ['us'])).toEqual([]);
    // A kitchen under US law still says it, in plain words.
    expect(outsideLaw(all(word), ['us'])).toEqual(all(word));
  });

  test('and the other way round: pine nut and chestnut, tree nuts in the US alone', () => {
    expect(declaredNames(all('pine nut', 'chestnut'), ['us'])).toEqual(['tree nuts (chestnut, pine nut)']);
  });
});

describe('where both laws rule', () => {
  test('a group is named once, by the law that covers more of it', () => {
    expect(declaredNames(all('barley', 'wheat', 'almond', 'pine nut', 'celery'), ['us', 'eu'])).toEqual([
      'cereals containing gluten (barley, wheat)',
      'tree nuts (almond, pine nut)',
      'celery',
    ]);
    expect(declaredNames(all('wheat', 'egg'), ['us', 'eu'])).toEqual(['wheat', 'egg']);
  });

  test('what differs between them is left to the law that asks for it', () => {
    expect(outsideLaw(all('celery', 'barley', 'mollusc (squid)'), ['us'])).toHaveLength(3);
    expect(outsideLaw(all('celery', 'barley', 'mollusc (squid)'), ['us', 'eu'])).toEqual([]);
  });
});
