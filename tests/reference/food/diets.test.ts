import { describe, expect, test } from 'vitest';
import { DIETS, type Diet } from '../../../src/engine/food/diet.ts';
import { ingredientSuits } from '../../../src/engine/food/diets-of.ts';
import { ORIGINS, type Origin } from '../../../src/engine/food/origin.ts';
import { food } from '../../unit/plan/builders.ts';

const suits = (diet: Diet, from: readonly Origin[], allergens: string[] = []) =>
  ingredientSuits(food('food', { from, allergens }), diet);
/** What contains what it comes from says so; a food that does not contradicts itself, and nothing is known of it. */
const OWN_ALLERGEN: Partial<Record<Origin, string>> = {
  milk: 'milk',
  egg: 'egg',
  fish: 'fish (cod)',
  crustacean: 'crustacean (shrimp)',
  mollusc: 'mollusc (mussel)',
};
const allergensOf = (origin: Origin) => [OWN_ALLERGEN[origin]].filter((each) => each !== undefined);
const allowed = (diet: Diet) =>
  ORIGINS.filter((origin) => suits(diet, [origin], allergensOf(origin)) === 'yes');

const NO_ANIMAL: Origin[] = ['plant', 'fungus', 'mineral', 'water', 'microbe', 'alcohol'];

/*
 * ISO 23662:2021, clause 4, as quoted by those who apply it: ovo-lacto-vegetarian food (4.2) has nothing of animal
 * origin, additives, processing aids and enzymes included, but milk, eggs, honey and what is made of them; vegan food
 * nothing at all. The standard itself was not read.
 */
describe('what ISO 23662 calls vegetarian and vegan', () => {
  test('vegetarian has milk, egg and honey, and nothing else of an animal', () => {
    expect(allowed('vegetarian').sort()).toEqual([...NO_ANIMAL, 'milk', 'egg', 'honey'].sort());
  });

  test('vegan has nothing of an animal', () => {
    expect(allowed('vegan').sort()).toEqual([...NO_ANIMAL].sort());
  });

  test('an enzyme counts: cheese with calf rennet is not vegetarian (Parmigiano Reggiano is made with it), with microbial rennet it is', () => {
    expect(suits('vegetarian', ['milk', 'animal rennet', 'microbe'], ['milk'])).toBe('no');
    expect(suits('vegetarian', ['milk', 'microbe'], ['milk'])).toBe('yes');
    expect(suits('pescatarian', ['milk', 'animal rennet'], ['milk'])).toBe('no');
  });

  test('gelatin is of an animal, that of fish too', () => {
    expect(['vegetarian', 'vegan', 'pescatarian'].map((diet) => suits(diet as Diet, ['gelatin']))).toEqual([
      'no',
      'no',
      'no',
    ]);
  });
});

/* Common usage, no source. */
describe('diets without a standard', () => {
  test('pescatarian adds fish, crustaceans and molluscs to vegetarian', () => {
    expect(allowed('pescatarian').sort()).toEqual(
      [...allowed('vegetarian'), 'fish', 'crustacean', 'mollusc'].sort(),
    );
  });

  test('no pork cannot tell gelatin, which may be of pigs; no alcohol has none', () => {
    expect(suits('no pork', ['pork'])).toBe('no');
    expect(suits('no pork', ['gelatin'])).toBe('unknown');
    expect(allowed('no pork')).toHaveLength(ORIGINS.length - 2);
    expect(allowed('no alcohol')).toHaveLength(ORIGINS.length - 1);
  });
});

/* Regulation (EU) No 1169/2011, Annex II no. 1, names the cereals; a hybrid of wheat and rye is triticale. */
describe('no gluten', () => {
  test.each(['wheat', 'spelt', 'khorasan', 'rye', 'barley', 'oats', 'triticale'])('has no %s', (cereal) => {
    expect(suits('no gluten', ['plant'], [cereal])).toBe('no');
  });

  test('has other grain, and is never called gluten-free', () => {
    expect(suits('no gluten', ['plant'])).toBe('yes');
    expect(DIETS.filter((diet) => /free/.test(diet))).toEqual([]);
  });
});

test('nothing is claimed of a food whose origin nobody has said', () => {
  const unsaid = food('relish', { from: undefined, contains: undefined });
  for (const diet of DIETS) expect(ingredientSuits(unsaid, diet)).toBe('unknown');
});
