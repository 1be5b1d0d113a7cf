import { describe, expect, test } from 'vitest';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { acceptedOffer } from '../../../src/offers/event/accepted-offer.ts';
import { eventInputOf } from '../../../src/offers/event/input-of.ts';
import { accepted, EVENING, issued, must, planOf, secondKitchen } from './second-kitchen.ts';

const dishesOf = (book: Parameters<typeof eventInputOf>[0]) => must(eventInputOf(book, EVENING)).dishes;

describe('the dishes of an event', () => {
  test('are those the client chose where so many are chosen, and all of a course without a choice', async () => {
    const book = accepted(await secondKitchen(), { courses: { Bowls: ['bean-and-leek-stew'] } });
    expect(dishesOf(book).map(({ course, recipe }) => [course, recipe.id])).toEqual([
      ['Bowls', 'bean-and-leek-stew'],
      ['Sweet', 'apple-oat-crumble'],
    ]);
  });

  test('count each main for those who take it, and leave out what nobody takes', async () => {
    const supper = {
      package: 'storm-supper',
      courses: {},
      mains: { Main: { 'haddock-chowder': 38, 'bean-and-leek-stew': 0 } },
    };
    const dishes = dishesOf(accepted(await secondKitchen(), supper));
    expect(dishes.map(({ recipe, chosenBy }) => [recipe.id, chosenBy])).toEqual([
      ['haddock-chowder', 38],
      ['apple-oat-crumble', undefined],
    ]);
    // 38 × 1 serving × 1.02 = 38.76, and a serving cannot be split.
    const plan = await planOf(accepted(await secondKitchen(), supper));
    expect(plan.dishes[0]?.need.exact).toBe('39 serving');
  });

  test('have the accepted amount and name, the recipe and the overage as they are now', async () => {
    const frozen = accepted(await secondKitchen()).offers;
    const now = await secondKitchen(
      [
        'packages/chowder-lunch.mdx',
        'haddock-chowder: 350 ml per guest',
        'haddock-chowder: { amount: 500 ml per guest, overage: 20 % }',
      ],
      ['recipes/haddock-chowder.mdx', 'name: Smoked haddock chowder', 'name: Chowder'],
      ['recipes/haddock-chowder.mdx', 'milk: 3 l', 'milk: 2 l'],
    );
    const book = { ...now, offers: frozen, events: accepted(await secondKitchen()).events };
    const [chowder] = dishesOf(book);
    expect(chowder?.name).toBe('Smoked haddock chowder');
    expect(exactText(chowder!.perGuest.amount)).toBe('350 ml');
    expect(chowder?.overage.toFraction()).toBe('1/5');
    const milk = chowder?.recipe.lines.find(
      ({ item }) => item.kind === 'ingredient' && item.ingredient.id === 'milk',
    );
    expect(exactText(milk!.amount)).toBe('2 l');
  });

  test('have the food of an add-on taken, at the style’s overage, and none of one not taken', async () => {
    const kitchen = await secondKitchen([
      'kitchen.yaml',
      '    class: drink\n',
      '    class: food\n    dishes: { apple-oat-crumble: 1 piece per 2 guests }\n',
    ]);
    const taken = dishesOf(accepted(kitchen, { addOns: { 'tea-table': 1 } }));
    expect(taken.map(({ course, recipe }) => [course, recipe.id])).toContainEqual([
      'Tea table',
      'apple-oat-crumble',
    ]);
    expect(taken.at(-1)?.overage.toFraction()).toBe('3/50');
    const none: Record<string, number>[] = [{}, { 'tea-table': 0 }];
    for (const addOns of none)
      expect(dishesOf(accepted(kitchen, { addOns })).map(({ course }) => course)).toEqual(['Bowls', 'Sweet']);
    const plan = await planOf(accepted(kitchen, { addOns: { 'tea-table': 1 } }));
    // 38 × 1.06 → 41 pieces and 37 ÷ 2 × 1.06 = 19.61 → 20 pieces: 61 in all, so three trays of 24, not four.
    expect(plan.recipes.find(({ id }) => id === 'apple-oat-crumble')).toMatchObject({
      batches: '3',
      need: { exact: '61 piece' },
    });
  });

  test('cannot be told while a recipe is gone or held back, and the reason says which', async () => {
    const book = accepted(await secondKitchen());
    const without = new Map(book.recipes);
    without.delete('haddock-chowder');
    const gone = eventInputOf({ ...book, recipes: without }, EVENING);
    expect(gone).toMatchObject({
      ok: false,
      what: 'the recipe haddock-chowder of the accepted dish “Smoked haddock chowder” is gone',
    });
    const held = new Map([['recipe/haddock-chowder', 'its yield is unclear']]);
    expect(eventInputOf({ ...book, recipes: without, held }, EVENING)).toMatchObject({
      ok: false,
      what: expect.stringContaining('can’t be used: its yield is unclear'),
    });
  });
});

test('an event whose records cannot be read is held back, not unknown', async () => {
  const book = issued(await secondKitchen());
  expect(acceptedOffer(book, EVENING)).toMatchObject({ ok: false, what: `there is no event ${EVENING}` });
  const held = new Map([[`event/${EVENING}`, 'a fact is missing']]);
  expect(acceptedOffer({ ...book, held }, EVENING)).toMatchObject({
    what: `the event ${EVENING} can’t be used: a fact is missing`,
  });
});
