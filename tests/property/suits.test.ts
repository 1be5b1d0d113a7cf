import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allergenText, parseAllergen } from '../../src/engine/food/allergen.ts';
import type { Suits } from '../../src/engine/food/diets-of.ts';
import type { Ingredient } from '../../src/engine/food/ingredient.ts';
import { parseNeed } from '../../src/engine/food/need.ts';
import { ORIGINS } from '../../src/engine/food/origin.ts';
import { recipeSuits, rulingOut } from '../../src/engine/food/variant.ts';
import { food, line, must, recipe } from '../unit/plan/builders.ts';

/**
 * The same question answered in another way: from the words of the foods alone, one by one, whatever recipes they stand in.
 * Allergens by 21 U.S.C. 321(qq) and Regulation (EU) No 1169/2011, Annex II; animal origins by ISO 23662:2021.
 */
const ALLERGENS = ['milk', 'egg', 'wheat', 'spelt', 'rye', 'almond', 'pecan', 'peanut', 'fish (cod)'];
const SEAFOOD = ['fish', 'crustacean', 'mollusc'];
const ANIMALS = [
  ...SEAFOOD,
  ...['beef', 'pork', 'lamb', 'poultry', 'game', 'insect', 'animal rennet', 'gelatin'],
];
const GLUTEN = ['wheat', 'spelt', 'rye'];

/** A need by what rules it out and what must be known for it. */
interface Told {
  readonly allergens: readonly string[];
  readonly origins: readonly string[];
  /** What leaves it open: an origin that may or may not be against it. */
  readonly open: readonly string[];
  /** Whether a mere warning rules it out, leaves it open, or is nothing to it. */
  readonly warning: Suits;
  readonly asks: readonly ('from' | 'contains')[];
}
const allergy = (...allergens: string[]): Told => ({
  allergens,
  origins: [],
  open: [],
  warning: 'no',
  asks: ['contains'],
});
const TOLD: Readonly<Record<string, Told>> = {
  milk: allergy('milk'),
  egg: allergy('egg'),
  wheat: allergy('wheat', 'spelt'),
  rye: allergy('rye'),
  almond: allergy('almond'),
  'tree nuts': allergy('almond', 'pecan'),
  nuts: allergy('almond', 'pecan', 'peanut'),
  fish: allergy('fish (cod)'),
  'fish (cod)': allergy('fish (cod)'),
  cereals: allergy(...GLUTEN),
  vegan: {
    allergens: ['milk', 'egg', 'fish (cod)'],
    origins: [...ANIMALS, 'milk', 'egg', 'honey'],
    open: [],
    warning: 'yes',
    asks: ['from', 'contains'],
  },
  vegetarian: {
    allergens: ['fish (cod)'],
    origins: ANIMALS,
    open: [],
    warning: 'yes',
    asks: ['from', 'contains'],
  },
  pescatarian: {
    allergens: [],
    origins: ANIMALS.filter((origin) => !SEAFOOD.includes(origin)),
    open: [],
    warning: 'yes',
    asks: ['from', 'contains'],
  },
  'no gluten': { allergens: GLUTEN, origins: [], open: [], warning: 'unknown', asks: ['contains'] },
  'no pork': { allergens: [], origins: ['pork'], open: ['gelatin'], warning: 'yes', asks: ['from'] },
  'no alcohol': { allergens: [], origins: ['alcohol'], open: [], warning: 'yes', asks: ['from'] },
};

/** Whether what is stated of a food leaves out an allergen that it comes from. */
function contradicts({ from, contains }: Ingredient): boolean {
  return ['milk', 'egg', ...SEAFOOD].some(
    (origin) =>
      from?.some((each) => each === origin) &&
      contains !== undefined &&
      !contains.some(({ group }) => group === origin),
  );
}

function foodSuits(of: Ingredient, need: Told): Suits {
  const stated = (of.contains ?? []).map(allergenText);
  const warned = of.mayContain.map(allergenText);
  const against = (words: readonly string[]) => words.some((word) => need.allergens.includes(word));
  if (against(stated) || (of.from ?? []).some((origin) => need.origins.includes(origin))) return 'no';
  if (against(warned) && need.warning === 'no') return 'no';
  if (need.asks.includes('contains') && (of.contains === undefined || contradicts(of))) return 'unknown';
  if (need.asks.includes('from') && (of.from ?? []).length === 0) return 'unknown';
  if ((of.from ?? []).some((origin) => need.open.includes(origin))) return 'unknown';
  return against(warned) ? need.warning : 'yes';
}

function worst(of: readonly Suits[]): Suits {
  return of.includes('no') ? 'no' : of.includes('unknown') ? 'unknown' : 'yes';
}

const anyFood = fc
  .record({
    from: fc.option(fc.uniqueArray(fc.constantFrom(...ORIGINS, 'plant' as const), { maxLength: 2 }), {
      nil: undefined,
      freq: 8,
    }),
    allergens: fc.uniqueArray(fc.constantFrom(...ALLERGENS), { maxLength: 2 }),
    traces: fc.uniqueArray(fc.constantFrom(...ALLERGENS), { maxLength: 2 }),
    stated: fc.integer({ min: 0, max: 7 }),
  })
  .map(
    ({ from, allergens, traces, stated }) =>
      (id: string): Ingredient =>
        food(id, {
          from,
          allergens,
          mayContain: traces.map((word) => must(parseAllergen(word))),
          ...(stated > 0 ? {} : { contains: undefined }),
        }),
  );
const foods = (most: number) =>
  fc
    .array(anyFood, { minLength: 1, maxLength: most })
    .map((drawn) => drawn.map((make, index) => make(`food-${index}`)));
const words = Object.keys(TOLD);

/** The first food by itself, the rest inside a recipe of their own. */
function nested(all: readonly Ingredient[]) {
  const [first, ...rest] = all.map((each) => line(each, '1 oz'));
  const inner = recipe('inner', '1 lb', rest);
  return recipe('dish', '1 lb', [first!, ...(rest.length > 0 ? [line(inner, '1 lb')] : [])]);
}

test('whether a dish suits a need is what its foods, asked one by one, make of it', () => {
  fc.assert(
    fc.property(foods(4), fc.constantFrom(...words), (all, word) => {
      expect(recipeSuits(nested(all), must(parseNeed(word)))).toBe(
        worst(all.map((each) => foodSuits(each, TOLD[word]!))),
      );
    }),
    { numRuns: 3000 },
  );
});

test('a dish suits two needs of one guest as the worse of the two says', () => {
  fc.assert(
    fc.property(foods(3), fc.constantFrom(...words), fc.constantFrom(...words), (all, one, other) => {
      const each = [one, other].flatMap((word) => all.map((of) => foodSuits(of, TOLD[word]!)));
      expect(recipeSuits(nested(all), must(parseNeed(`${one} + ${other}`)))).toBe(worst(each));
    }),
    { numRuns: 1500 },
  );
});

test('what stands against a need is every food that rules it out, or where none does all that leave it open', () => {
  fc.assert(
    fc.property(foods(4), fc.constantFrom(...words), (all, word) => {
      const told = all.map((each) => ({ id: each.id, suits: foodSuits(each, TOLD[word]!) }));
      const asked = told.some(({ suits }) => suits === 'no') ? 'no' : 'unknown';
      const against = told.filter(({ suits }) => suits === asked).map(({ id }) => id);
      expect(rulingOut(nested(all), must(parseNeed(word))).toSorted()).toEqual(against.toSorted());
    }),
    { numRuns: 3000 },
  );
});
