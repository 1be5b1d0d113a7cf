import { join } from 'node:path';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { DISH_ROLES } from '../../src/engine/course/dish-role.ts';
import { parseNeed } from '../../src/engine/food/need.ts';
import type { Recipe } from '../../src/engine/food/recipe.ts';
import { recipeSuits } from '../../src/engine/food/variant.ts';
import { guestNeeds } from '../../src/engine/menu/guest-needs.ts';
import type { EventDish, EventInput } from '../../src/engine/plan/event-input.ts';
import type { EventPlan } from '../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../src/engine/plan/plan-event.ts';
import { coverageOf, servedCourses } from '../../src/engine/plan/servings/coverage.ts';
import { partDishes } from '../../src/engine/plan/servings/portions.ts';
import { planLabels } from '../../src/exports/plan/labels.ts';
import { eventInputOf } from '../../src/offers/event/input-of.ts';
import { recipeFacts } from '../../src/offers/issue/dish-terms.ts';
import { coverageWords } from '../../src/views/coverage-words.ts';
import { scriptWordsIn } from '../../src/words/script-words.ts';
import { dish, event, food, kitchen, line, must, prices, recipe, step } from '../unit/plan/builders.ts';

const HERE = import.meta.dirname;
const LABELING = { containers: new Map(), measures: 'us', allergenLaws: ['us'], locale: 'en-US' } as const;

/** Whoever is counted as fed has a dish of the plan, and that a recipe, a task and a label; it suits the need. */
function holdsTogether(plan: EventPlan): void {
  const labels = new Set(planLabels(plan, LABELING, []).map((label) => label.dish));
  const cooked = new Set(plan.recipes.map(({ recipe: { id } }) => id));
  const worked = new Set(plan.days.flatMap(({ tasks }) => tasks.map(({ recipe: { id } }) => id)));
  for (const { need, courses } of plan.coverage)
    for (const { course, suits, onRequest, roles, fed } of courses) {
      const named = roles.flatMap(({ dishes }) => dishes);
      const listed = [...suits, ...onRequest.map(({ name }) => name)];
      for (const name of named) expect(listed).toContain(name);
      for (const name of listed)
        expect(plan.dishes.map((each) => `${each.dish.course}: ${each.dish.name}`)).toContain(
          `${course}: ${name}`,
        );
      if (fed) expect(named.length).toBeGreaterThan(0);
      for (const name of named) {
        const planned = plan.dishes.find(
          (each) => each.dish.course === course && each.dish.name === name && each.need.amount.n > 0n,
        );
        expect(planned?.dish.portions?.needs.map((each) => each.need)).toContain(need.text);
        const { recipe: of } = planned!.dish;
        expect(recipeSuits(of, must(parseNeed(need.text)))).toBe('yes');
        expect(cooked).toContain(of.id);
        if (of.steps.length > 0) expect(worked).toContain(of.id);
        expect(labels).toContain(name);
      }
    }
}

const say = scriptWordsIn('en-US');

describe('what is counted as fed is what is planned', () => {
  test.each([
    ['the demo', join(HERE, '../../content')],
    ['a metric kitchen', join(HERE, '../fixtures/version-1/content')],
  ])('at every event of %s, with the needs stated and with none', async (_, dir) => {
    const { book } = await readBook(dir);
    const inputs = [...book!.events.keys()].flatMap((id): EventInput[] => {
      const input = eventInputOf(book!, id);
      return input.ok ? [input.value] : [];
    });
    expect(inputs.length).toBeGreaterThan(0);
    for (const input of inputs)
      for (const needs of [input.needs, new Map<string, number>()])
        holdsTogether(planEvent({ ...input, needs }, book!.kitchen, book!.prices));
  });

  const FOODS = [
    food('beans'),
    food('flour', { allergens: ['wheat'] }),
    food('cream', { from: ['milk'], allergens: ['milk'] }),
    food('rennet-cheese', { from: ['milk', 'animal rennet'], allergens: ['milk'] }),
    food('lamb', { from: ['lamb'] }),
    food('relish', { contains: undefined }),
  ];
  const anyRecipe = fc
    .record({
      foods: fc.subarray(FOODS, { minLength: 1, maxLength: 3 }),
      changes: fc.subarray(['vegan', 'vegetarian', 'no gluten', 'milk']),
    })
    .map(({ foods, changes }) => (id: string): Recipe => {
      const lines = foods.map((each) => line(each, '1 lb'));
      return recipe(id, '10 pieces', lines, {
        changes: foods.map((each) => ({ item: each.id, instead: undefined, needs: changes })),
        steps: [step('on the day', 'Cook.')],
      });
    });
  const anyDish = fc.record({
    make: anyRecipe,
    role: fc.constantFrom(undefined, ...DISH_ROLES),
    others: fc.constantFrom(undefined, undefined, '0', '1/5'),
    chosenBy: fc.nat(30),
    instead: fc.boolean(),
    onlyForEaters: fc.boolean(),
  });
  const menus = fc.array(
    fc.record({ oneEach: fc.boolean(), dishes: fc.array(anyDish, { minLength: 1, maxLength: 4 }) }),
    { minLength: 1, maxLength: 3 },
  );
  const needs = fc
    .dictionary(fc.constantFrom('vegan', 'vegetarian', 'no gluten', 'milk', 'vegan + no gluten'), fc.nat(6), {
      maxKeys: 4,
    })
    .map((named) => new Map(Object.entries(named)));

  function placeOf(others: string | undefined, original: string | undefined): Partial<EventDish> {
    const share = others ?? (original && '0');
    return {
      ...(share === undefined ? {} : { others: new Fraction(share) }),
      ...(original && { insteadOf: { recipe: original } }),
    };
  }

  function dishesOf(drawn: typeof menus extends fc.Arbitrary<infer T> ? T : never): EventDish[] {
    return drawn.flatMap(({ oneEach, dishes }, at) =>
      dishes.map(({ make, role, others, chosenBy, instead, onlyForEaters }, index) => ({
        ...dish(make(`dish-${at}-${index}`), '1 piece per guest', oneEach ? { chosenBy } : {}),
        course: `Course ${at}`,
        role,
        onlyForEaters,
        ...(oneEach ? {} : placeOf(others, instead && index > 0 ? `dish-${at}-0` : undefined)),
      })),
    );
  }
  const styles = fc.constantFrom('buffet', 'stations' as const);
  const NO_MEAT = new Fraction('1/10');

  test('in any menu, for needs stated and assumed', () => {
    fc.assert(
      fc.property(menus, needs, fc.boolean(), (drawn, named, assumes) => {
        const facts = assumes ? { noMeat: NO_MEAT } : {};
        const input = event(dishesOf(drawn), { needs: named, ...facts });
        holdsTogether(planEvent(input, kitchen(), prices()));
      }),
      { numRuns: 150 },
    );
  });

  test('and a proposal’s page says of a menu that everybody gets what its plan would do for one such guest', () => {
    fc.assert(
      fc.property(
        menus,
        fc.constantFrom('vegan', 'vegetarian', 'no gluten', 'milk'),
        styles,
        (drawn, text, style) => {
          const dishes = dishesOf(drawn.map((each) => ({ ...each, oneEach: false }))).map(
            ({ others: _, insteadOf: __, ...regular }) => regular,
          );
          const guests = { adults: 100, children: 0, vendors: 0, staff: 0 };
          const asked = guestNeeds(new Map([[text, 1]]), guests, undefined);
          const [planned] = coverageOf(servedCourses(style, partDishes(dishes, guests, asked).dishes), asked);
          const need = must(parseNeed(text));
          const courses = [...Map.groupBy(dishes, ({ course }) => course)].map(([name, served]) => ({
            name,
            eachGuest: false,
            dishes: served.map((each) => ({
              name: each.name,
              role: each.role,
              feeds:
                recipeSuits(each.recipe, need) === 'yes' ||
                recipeFacts(each.recipe).onRequest?.includes(text) === true,
              mayFeed: false,
            })),
          }));
          expect(coverageWords(say, style, courses).whole).toBe(planned?.whole === 'every course');
        },
      ),
      { numRuns: 150 },
    );
  });
});
