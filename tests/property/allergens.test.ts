import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { allergenText, parseAllergen } from '../../src/engine/food/allergen.ts';
import { allergensOf } from '../../src/engine/food/allergens-of.ts';
import { dietsOf, ingredientSuits } from '../../src/engine/food/diets-of.ts';
import type { Ingredient } from '../../src/engine/food/ingredient.ts';
import { parseNeed } from '../../src/engine/food/need.ts';
import { ORIGINS } from '../../src/engine/food/origin.ts';
import type { Recipe, RecipeChange } from '../../src/engine/food/recipe.ts';
import { recipeSuits, variantFor } from '../../src/engine/food/variant.ts';
import { ingredientsOf } from '../../src/engine/food/walk.ts';
import { guestNeeds } from '../../src/engine/menu/guest-needs.ts';
import { assignNeeds } from '../../src/engine/plan/servings/assign-needs.ts';
import { partDishes } from '../../src/engine/plan/servings/portions.ts';
import { countedFor } from '../../src/engine/plan/servings/servings.ts';
import { dish, food, line, must, recipe } from '../unit/plan/builders.ts';

const WORDS = ['milk', 'egg', 'wheat', 'rye', 'almond', 'celery', 'fish (cod)', 'sulphites'];
/** Origins that are allergens themselves: a food from one that does not state it is not known. */
const SOURCES = ['milk', 'egg', 'fish', 'crustacean', 'mollusc'] as const;
const NEEDS = [
  'vegan',
  'vegetarian',
  'no gluten',
  'milk',
  'tree nuts',
  'fish',
  'vegan + no gluten',
  'egg + milk',
];

const anyFood = fc
  .record({
    from: fc.option(fc.uniqueArray(fc.constantFrom(...ORIGINS), { minLength: 1, maxLength: 2 }), {
      nil: undefined,
      freq: 6,
    }),
    allergens: fc.uniqueArray(fc.constantFrom(...WORDS), { maxLength: 2 }),
    traces: fc.uniqueArray(fc.constantFrom(...WORDS), { maxLength: 2 }),
    said: fc.integer({ min: 0, max: 6 }),
  })
  .map(
    ({ from, allergens, traces, said }) =>
      (id: string): Ingredient =>
        food(id, {
          from,
          allergens,
          mayContain: traces.map((word) => must(parseAllergen(word))),
          ...(said > 0 ? {} : { contains: undefined }),
        }),
  );
const foods = fc
  .array(anyFood, { minLength: 1, maxLength: 6 })
  .map((drawn) => drawn.map((make, index) => make(`food-${index}`)));

/** The foods at the bottom of ten recipes, each inside the next. */
function deep(of: readonly Ingredient[], changes: readonly RecipeChange[] = []): Recipe {
  const lines = of.map((each) => line(each, '1 lb'));
  let at = recipe('level-0', '1 lb', lines, { changes });
  for (let level = 1; level <= 10; level += 1) at = recipe(`level-${level}`, '1 lb', [line(at, '1 lb')]);
  return at;
}

describe('the allergens of a dish ten recipes deep', () => {
  const wordsOf = (of: Recipe) => {
    const { contains, mayContain, unsaid } = allergensOf(of);
    const words = (sources: typeof contains) => sources.map(({ allergen }) => allergenText(allergen));
    return { contains: words(contains), warned: words(mayContain), unsaid: unsaid.length };
  };

  test('are exactly what the foods at the bottom contain, are warned of and leave unknown, gathered here', () => {
    fc.assert(
      fc.property(foods, foods, (below, above) => {
        // The same facts without the function under test: of a flat list of foods, whatever recipes they stand in.
        const renamed = above.map((each) => ({ ...each, id: `above-${each.id}` }));
        const all = [...below, ...renamed];
        const top = recipe('top', '1 lb', [
          line(deep(below), '1 lb'),
          ...renamed.map((each) => line(each, '1 lb')),
        ]);
        const contained = new Set(all.flatMap(({ contains }) => (contains ?? []).map(allergenText)));
        const warned = new Set(all.flatMap(({ mayContain }) => mayContain.map(allergenText)));
        const facts = wordsOf(top);
        expect([...facts.contains].sort()).toEqual([...contained].sort());
        expect([...facts.warned].sort()).toEqual([...warned].filter((word) => !contained.has(word)).sort());
        const unknown = all.filter(
          ({ from, contains }) =>
            !contains ||
            SOURCES.some(
              (group) => from?.includes(group) && !contains.some((allergen) => allergen.group === group),
            ),
        );
        expect(facts.unsaid).toBe(unknown.length);
      }),
      { numRuns: 300 },
    );
  });

  test('are never fewer for another ingredient: each stays contained, and a warning at most becomes certain', () => {
    fc.assert(
      fc.property(foods, anyFood, fc.subarray(WORDS), (all, more, traces) => {
        const warning = food('traces', { mayContain: traces.map((word) => must(parseAllergen(word))) });
        const before = wordsOf(deep([...all, warning]));
        const after = wordsOf(deep([...all, warning, more('added')]));
        for (const word of before.contains) expect(after.contains).toContain(word);
        for (const word of before.warned) expect([...after.contains, ...after.warned]).toContain(word);
        expect(after.unsaid).toBeGreaterThanOrEqual(before.unsaid);
      }),
      { numRuns: 300 },
    );
  });

  test('are by taking one out only fewer by what it brought in itself, each with a way down to who brings it', () => {
    fc.assert(
      fc.property(foods, fc.nat(5), (all, at) => {
        const out = all[at % all.length] as Ingredient;
        const left = all.filter((each) => each !== out);
        if (left.length === 0) return;
        const [before, after] = [wordsOf(deep(all)), wordsOf(deep(left))];
        const brought = (out.contains ?? []).map(allergenText);
        for (const word of before.contains)
          if (!brought.includes(word)) expect(after.contains).toContain(word);
        for (const word of after.contains) expect(before.contains).toContain(word);
        for (const { allergen, paths } of allergensOf(deep(all)).contains)
          for (const path of paths) {
            expect(path).toHaveLength(12);
            const bottom = all.find(({ id }) => id === path.at(-1));
            expect(bottom?.contains?.map(allergenText)).toContain(allergenText(allergen));
          }
      }),
      { numRuns: 300 },
    );
  });
});

describe('what is claimed of a dish ten recipes deep', () => {
  test('is never gained by another ingredient, and never turns from unknown to yes', () => {
    fc.assert(
      fc.property(foods, anyFood, (all, more) => {
        const before = new Map(dietsOf(deep(all)).map(({ diet, suits }) => [diet, suits]));
        for (const { diet, suits } of dietsOf(deep([...all, more('added')])))
          if (suits === 'yes') expect([diet, before.get(diet)]).toEqual([diet, 'yes']);
      }),
      { numRuns: 300 },
    );
  });

  test('is gained by taking something out only where that stood against it, or was unknown', () => {
    fc.assert(
      fc.property(foods, fc.nat(5), (all, at) => {
        const out = all[at % all.length] as Ingredient;
        const left = all.filter((each) => each !== out);
        if (left.length === 0) return;
        const before = new Map(dietsOf(deep(all)).map(({ diet, suits }) => [diet, suits]));
        for (const { diet, suits } of dietsOf(deep(left)))
          if (suits !== before.get(diet)) expect(ingredientSuits(out, diet)).not.toBe('yes');
      }),
      { numRuns: 300 },
    );
  });

  test('is never a yes for any need while something about it is unsaid', () => {
    fc.assert(
      fc.property(foods, fc.constantFrom(...NEEDS), (all, text) => {
        const relish = food('relish', { from: undefined, contains: undefined });
        expect(recipeSuits(deep([...all, relish]), must(parseNeed(text)))).not.toBe('yes');
      }),
    );
  });

  test('of several needs together is what is claimed of each', () => {
    fc.assert(
      fc.property(foods, (all) => {
        const suits = (text: string) => recipeSuits(deep(all), must(parseNeed(text)));
        const [vegan, gluten, both] = [suits('vegan'), suits('no gluten'), suits('vegan + no gluten')];
        expect(both === 'yes').toBe(vegan === 'yes' && gluten === 'yes');
        expect(both === 'no').toBe(vegan === 'no' || gluten === 'no');
      }),
    );
  });
});

/** Changes that leave out or swap some of the foods for some of the needs. */
const changesOf = (all: readonly Ingredient[]) =>
  fc
    .array(
      fc.record({
        item: fc.nat(all.length - 1),
        swap: fc.boolean(),
        needs: fc.subarray(NEEDS, { minLength: 1 }),
      }),
      { maxLength: 6 },
    )
    .map((drawn) =>
      drawn.map(
        ({ item, swap, needs }): RecipeChange => ({
          item: (all[item] as Ingredient).id,
          instead: swap ? { kind: 'ingredient', ingredient: food('instead') } : undefined,
          needs,
        }),
      ),
    );
const changing = foods.chain((all) => changesOf(all).map((changes) => deep(all, changes)));

describe('a dish made apart', () => {
  test('suits its need for certain, is another recipe, and brings in nothing but what is swapped in', () => {
    let made = 0;
    fc.assert(
      fc.property(changing, fc.constantFrom(...NEEDS), (of, text) => {
        const need = must(parseNeed(text));
        const variant = variantFor(of, need);
        if (!variant) return;
        made += 1;
        expect(recipeSuits(of, need)).not.toBe('yes');
        expect(recipeSuits(variant.recipe, need)).toBe('yes');
        expect(variant.recipe.id).not.toBe(of.id);
        const known = new Set([...ingredientsOf(of).map(({ id }) => id), 'instead']);
        for (const { id } of ingredientsOf(variant.recipe)) expect(known).toContain(id);
      }),
      { numRuns: 500 },
    );
    expect(made).toBeGreaterThan(10);
  });
});

describe('portions', () => {
  const guests = fc.record({
    adults: fc.integer({ min: 40, max: 200 }),
    children: fc.nat(30),
    vendors: fc.nat(5),
    staff: fc.nat(10),
  });
  const needs = fc
    .dictionary(fc.constantFrom(...NEEDS), fc.nat(5), { maxKeys: 5 })
    .map((named) => new Map(Object.entries(named)));
  const share = fc.constantFrom(undefined, '0', '2/25', '1/10');

  test('of a dish, as it is and made apart, are as many as the guests counted', () => {
    fc.assert(
      fc.property(
        fc.array(changing, { minLength: 1, maxLength: 3 }),
        guests,
        needs,
        share,
        fc.constantFrom('adults, children', 'adults, children at 1/2, vendors'),
        (recipes, people, named, noMeat, counts) => {
          const dishes = recipes.map((each, index) => ({
            ...dish({ ...each, id: `dish-${index}`, name: `dish ${index}` }, '1 lb per guest', { counts }),
          }));
          const planned = guestNeeds(named, people, noMeat === undefined ? undefined : new Fraction(noMeat));
          const split = partDishes(dishes, people, planned).dishes;
          for (const each of dishes) {
            const portions = split.filter(
              ({ recipe: of, portions: its }) => (its?.apart?.recipe ?? of.id) === each.recipe.id,
            );
            const sum = portions.reduce((all, one) => all.add(countedFor(one, people)), new Fraction(0n));
            expect(sum.equals(countedFor(each, people))).toBe(true);
            for (const { recipe: of, portions: its } of portions)
              for (const { need } of its?.needs ?? [])
                expect(recipeSuits(of, must(parseNeed(need)))).toBe('yes');
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  test('by guest feed as many guests with needs as any dealing out could, and no dish more than chose it', () => {
    const row = fc.tuple(fc.boolean(), fc.boolean(), fc.boolean());
    fc.assert(
      fc.property(
        fc.array(fc.nat(3), { minLength: 3, maxLength: 3 }),
        fc.array(fc.nat(3), { minLength: 3, maxLength: 3 }),
        fc.array(row, { minLength: 3, maxLength: 3 }),
        fc.array(row, { minLength: 3, maxLength: 3 }),
        (hungry, capacity, suits, apart) => {
          const given = assignNeeds(hungry, capacity, suits, apart);
          const may = suits.map((each, need) => each.map((yes, at) => yes || apart[need]![at]!));
          const total = given.flat().reduce((all, count) => all + count, 0);
          for (const [need, counts] of given.entries()) {
            expect(counts.every((count, at) => count >= 0 && (count === 0 || may[need]![at]))).toBe(true);
            expect(counts.reduce((all, count) => all + count, 0)).toBeLessThanOrEqual(hungry[need]!);
          }
          for (const [at, most] of capacity.entries())
            expect(given.reduce((all, counts) => all + counts[at]!, 0)).toBeLessThanOrEqual(most);
          expect(total).toBe(mostFed(hungry, capacity, may));
        },
      ),
      { numRuns: 150 },
    );
  });
});

/** The most that can be fed, by trying every way, guest by guest. */
function mostFed(hungry: readonly number[], capacity: readonly number[], may: readonly boolean[][]): number {
  const queue = hungry.flatMap((count, need) => Array.from({ length: count }, () => need));
  const known = new Map<string, number>();
  const best = (at: number, room: readonly number[]): number => {
    const need = queue[at];
    if (need === undefined) return 0;
    const key = `${at}:${room.join()}`;
    let most = known.get(key);
    if (most !== undefined) return most;
    most = best(at + 1, room);
    for (const [dishAt, left] of room.entries())
      if (left > 0 && may[need]?.[dishAt])
        most = Math.max(most, 1 + best(at + 1, room.with(dishAt, left - 1)));
    known.set(key, most);
    return most;
  };
  return best(0, capacity);
}
