import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { allergenText, CEREALS, TREE_NUTS } from '../../src/engine/food/allergen.ts';
import { allergensOf } from '../../src/engine/food/allergens-of.ts';
import { dietsOf } from '../../src/engine/food/diets-of.ts';
import { explode, purchasedIn } from '../../src/engine/food/explode.ts';
import type { Ingredient } from '../../src/engine/food/ingredient.ts';
import { ORIGINS } from '../../src/engine/food/origin.ts';
import type { BatchRule, Recipe, RecipeLine } from '../../src/engine/food/recipe.ts';
import { convert } from '../../src/engine/measure/conversions.ts';
import type { EventPlan } from '../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../src/engine/plan/plan-event.ts';
import type { PricedPack } from '../../src/engine/purchase/price-list.ts';
import { dish, event, food, kitchen, line, pack, prices, q, recipe } from '../unit/plan/builders.ts';

/*
 * A small kitchen drawn at random: foods with yields and packs, recipes in levels that use foods and any recipes
 * below them, dishes that take some of the recipes.
 */
const shares = ['1', '81/100', '3/4', '9/11', '1/3'] as const;
const units = ['lb', 'oz', 'kg', 'cup', 'each'] as const;

interface Drawn {
  readonly foods: Ingredient[];
  readonly recipes: Recipe[];
  readonly packs: PricedPack[];
}

function drawnKitchen(rules: readonly BatchRule[]): fc.Arbitrary<Drawn> {
  const ofFood = fc.record({
    share: fc.constantFrom(...shares),
    gramsInCup: fc.integer({ min: 50, max: 300 }),
  });
  const ofLine = fc.record({
    of: fc.nat(100),
    below: fc.boolean(),
    amount: fc.integer({ min: 1, max: 40 }),
    unit: fc.constantFrom(...units),
  });
  const ofRecipe = fc.record({
    makes: fc.integer({ min: 1, max: 60 }),
    rule: fc.constantFrom(...rules),
    lines: fc.array(ofLine, { minLength: 1, maxLength: 4 }),
  });
  return fc
    .record({
      foods: fc.array(ofFood, { minLength: 2, maxLength: 4 }),
      recipes: fc.array(ofRecipe, { minLength: 2, maxLength: 5 }),
      sizes: fc.array(
        fc.record({ size: fc.integer({ min: 1, max: 60 }), cents: fc.integer({ min: 1, max: 9999 }) }),
        {
          minLength: 1,
          maxLength: 3,
        },
      ),
    })
    .map((seed) => {
      const foods = seed.foods.map(({ share, gramsInCup }, at) =>
        food(`food-${at}`, {
          yield: new Fraction(share),
          sold: [`1 cup = ${gramsInCup} g`, '1 each = 120 g'],
        }),
      );
      const recipes: Recipe[] = [];
      for (const [at, { makes, rule, lines }] of seed.recipes.entries()) {
        const drawn = lines.map(({ of, below, amount, unit }): RecipeLine => {
          const part = below && at > 0 ? recipes[of % at] : undefined;
          return part
            ? line(part, `${amount} servings`)
            : line(foods[of % foods.length] as Ingredient, `${amount} ${unit}`);
        });
        recipes.push(recipe(`recipe-${at}`, `${makes} servings`, drawn, { batches: rule }));
      }
      const packs = foods.flatMap(({ id }) =>
        seed.sizes.map(({ size, cents }, at) =>
          pack(id, `${size} lb pack ${'abc'[at]}`, `${(cents / 100).toFixed(2)}`),
        ),
      );
      return { foods, recipes, packs };
    });
}

function planFor({ recipes, packs }: Drawn, adults: number, overage = '8/100'): EventPlan {
  const dishes = recipes.map((each, at) => dish(each, `${(at % 2) + 1} servings per guest`, { overage }));
  return planEvent(
    event(dishes, { guests: { adults, children: 0, vendors: 0, staff: 0 } }),
    kitchen(),
    prices(...packs),
  );
}

const anyKitchen = drawnKitchen(['exact', 'half', 'whole']);
const guests = fc.integer({ min: 1, max: 400 });

describe('a plan', () => {
  test('never needs less of anything for more guests, nor costs less', () => {
    fc.assert(
      fc.property(anyKitchen, guests, fc.integer({ min: 1, max: 50 }), (drawn, adults, more) => {
        const [few, many] = [planFor(drawn, adults), planFor(drawn, adults + more)];
        for (const [at, { need }] of few.dishes.entries())
          expect(many.dishes[at]?.need.amount.gte(need.amount)).toBe(true);
        for (const [at, { batches }] of few.recipes.entries())
          expect(many.recipes[at]?.batches.gte(batches)).toBe(true);
        for (const [at, { need, cost }] of few.purchases.entries()) {
          expect(many.purchases[at]?.need.amount.gte(need.amount)).toBe(true);
          expect(many.purchases[at]?.cost?.amount.gte(cost?.amount ?? 0)).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('buys at least what it needs, in whole packs, and its cost is the sum of their lines', () => {
    fc.assert(
      fc.property(anyKitchen, guests, (drawn, adults) => {
        for (const { ingredient, need, packs, bought, left, cost } of planFor(drawn, adults).purchases) {
          let held = new Fraction(0n);
          for (const { pack: one, count } of packs) {
            expect(Number.isSafeInteger(count) && count > 0).toBe(true);
            const size = convert(one.contents, need.unit, ingredient.conversions);
            held = held.add((size?.amount ?? new Fraction(0n)).mul(BigInt(count)));
          }
          expect(held.gte(need.amount)).toBe(true);
          expect(bought?.amount.equals(held)).toBe(true);
          expect(left?.amount.equals(held.sub(need.amount))).toBe(true);
          expect(cost?.amount.toFixed()).toBe(
            packs.reduce((sum, line) => line.cost.amount.plus(sum), cost!.amount.times(0)).toFixed(),
          );
        }
      }),
      { numRuns: 150 },
    );
  });

  test('doubles exactly for twice the guests where batches are exact', () => {
    const exactKitchen = drawnKitchen(['exact']);
    fc.assert(
      fc.property(exactKitchen, guests, (drawn, adults) => {
        // Without overage no serving is rounded, so nothing is.
        const [once, twice] = [planFor(drawn, adults, '0'), planFor(drawn, 2 * adults, '0')];
        for (const [at, { lines, batches }] of once.recipes.entries()) {
          expect(twice.recipes[at]?.batches.equals(batches.mul(2n))).toBe(true);
          for (const [row, { amount }] of lines.entries()) {
            expect(twice.recipes[at]?.lines[row]?.amount.amount.equals(amount.amount.mul(2n))).toBe(true);
          }
        }
        for (const [at, { need }] of once.purchases.entries()) {
          expect(twice.purchases[at]?.need.amount.equals(need.amount.mul(2n))).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('rounds a recipe once, whoever uses it: to the least batches that its rule allows for the sum', () => {
    const step = { exact: undefined, half: new Fraction('1/2'), whole: new Fraction(1n) };
    fc.assert(
      fc.property(anyKitchen, guests, (drawn, adults) => {
        const plan = planFor(drawn, adults);
        for (const { recipe: cooked, batches, usedBy } of plan.recipes) {
          // Its needs again, found without the explosion: every dish and every line that names it.
          let need = new Fraction(0n);
          for (const each of plan.dishes)
            if (each.dish.recipe.id === cooked.id) need = need.add(each.need.amount);
          for (const user of plan.recipes) {
            for (const { item, amount } of user.recipe.lines) {
              if (item.kind === 'recipe' && item.recipe.id === cooked.id)
                need = need.add(amount.amount.mul(user.batches));
            }
          }
          expect(usedBy.reduce((sum, use) => sum.add(use.need.amount), new Fraction(0n)).equals(need)).toBe(
            true,
          );
          const exact = need.div(cooked.makes[0].amount);
          const grain = step[cooked.batches];
          if (!grain) expect(batches.equals(exact)).toBe(true);
          else {
            expect(batches.gte(exact)).toBe(true);
            expect(batches.sub(exact).lt(grain)).toBe(true);
            expect(batches.div(grain).d).toBe(1n);
          }
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe('what a recipe is made of', () => {
  const words = ['milk', 'egg', 'peanut', 'celery', 'fish (cod)', ...CEREALS, ...TREE_NUTS];
  const anyFood = fc
    .record({
      id: fc.integer({ min: 0, max: 30 }),
      from: fc.option(fc.uniqueArray(fc.constantFrom(...ORIGINS), { minLength: 1, maxLength: 2 }), {
        nil: undefined,
      }),
      allergens: fc.uniqueArray(fc.constantFrom(...words), { maxLength: 3 }),
      said: fc.boolean(),
    })
    .map(({ id, from, allergens, said }) =>
      food(`food-${id}`, { from, allergens, ...(said ? {} : { contains: undefined }) }),
    );
  const names = (of: Recipe) =>
    new Set(allergensOf(of).contains.map(({ allergen }) => allergenText(allergen)));
  /** The foods at the bottom of ten recipes, each inside the next. */
  const deep = (foods: readonly Ingredient[]) => {
    let at = recipe(
      'level-0',
      '1 lb',
      foods.map((each) => line(each, '1 lb')),
    );
    for (let level = 1; level <= 10; level += 1) at = recipe(`level-${level}`, '1 lb', [line(at, '1 lb')]);
    return at;
  };

  test('never loses an allergen, an unknown or a no when something is added', () => {
    fc.assert(
      fc.property(fc.array(anyFood, { minLength: 1, maxLength: 6 }), anyFood, (foods, added) => {
        const [before, after] = [deep(foods), deep([...foods, food('added', { ...added, id: 'added' })])];
        for (const name of names(before)) expect(names(after)).toContain(name);
        for (const path of allergensOf(before).unsaid) expect(allergensOf(after).unsaid).toContainEqual(path);
        const rank = { no: 0, unknown: 1, yes: 2 };
        const earlier = new Map(dietsOf(before).map(({ diet, suits }) => [diet, rank[suits]]));
        for (const { diet, suits } of dietsOf(after))
          expect(rank[suits]).toBeLessThanOrEqual(earlier.get(diet) ?? -1);
      }),
    );
  });

  test('is never claimed for a diet while its origin is unsaid, ten recipes deep', () => {
    fc.assert(
      fc.property(fc.array(anyFood, { maxLength: 4 }), (foods) => {
        const claims = dietsOf(deep([...foods, food('relish', { from: undefined, contains: undefined })]));
        expect(claims.map(({ suits }) => suits)).not.toContain('yes');
      }),
    );
  });

  test('explodes to the same as a walk that never sums, while batches are exact', () => {
    fc.assert(
      fc.property(drawnKitchen(['exact']), guests, ({ foods, recipes }, servings) => {
        const top = recipes.at(-1) as Recipe;
        const walk = (of: Recipe, batches: Fraction, id: string): Fraction =>
          of.lines.reduce((sum, { item, amount }) => {
            const called = amount.amount.mul(batches);
            if (item.kind === 'recipe')
              return sum.add(walk(item.recipe, called.div(item.recipe.makes[0].amount), id));
            const grams = convert({ amount: called, unit: amount.unit }, 'g', item.ingredient.conversions);
            // A counted whole piece is as bought; what is weighed is what is left of it.
            const left = amount.unit === 'each' ? new Fraction(1n) : item.ingredient.yield!;
            return item.ingredient.id === id ? sum.add(grams!.amount.div(left)) : sum;
          }, new Fraction(0n));
        const need = q(`${servings} servings`);
        const { ingredients } = explode([{ recipe: top, need, by: 'test' }], (exact) => exact);
        for (const each of foods) {
          const { id } = each;
          const uses = ingredients.get(id)?.uses ?? [];
          const grams = uses.reduce(
            (sum, use) => sum.add(purchasedIn(use, 'g', each)!.amount),
            new Fraction(0n),
          );
          expect(grams.equals(walk(top, need.amount.div(top.makes[0].amount), id))).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });
});
