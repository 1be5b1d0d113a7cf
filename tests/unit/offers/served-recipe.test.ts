import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { callsFor } from '../../../src/engine/food/swap-item.ts';
import { parsePerGuest, perGuestText } from '../../../src/engine/measure/per-guest.ts';
import type { Dish } from '../../../src/engine/menu/package.ts';
import type { Parsed } from '../../../src/engine/parsed.ts';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import { parseCounts } from '../../../src/engine/quote/counts.ts';
import { eventDishes } from '../../../src/offers/event/dishes.ts';
import { itemCalled, replacementOf, servedRecipe, soundSwap } from '../../../src/offers/event/recipes.ts';
import type { SubstitutionFact } from '../../../src/schema/event-fact.ts';
import { day, food, line, must, recipe } from '../plan/builders.ts';
import {
  sampleChoice,
  sampleCourse,
  sampleDish,
  sampleGuests,
  samplePackage,
} from '../quote/sample-terms.ts';

const leek = food('leek');
const oil = food('oil', { name: 'Oil' });
const butter = food('butter', { name: 'Butter' });
const tahini = food('tahini', { name: 'Tahini' });
const tart = recipe('tart', '8 pieces', [line(butter, '1 lb'), line(leek, '1 lb')], { name: 'Leek tart' });
const stew = recipe('stew', '8 servings', [line(butter, '1 lb')], { name: 'Bean stew', role: 'main' });
const soup = recipe('soup', '8 servings', [line(leek, '1 lb')], { name: 'Leek soup' });
const ghee = recipe('ghee', '1 lb', [line(butter, '1 lb')], { name: 'Ghee' });

const swap = (
  from: string,
  to: string,
  what: 'dish' | 'ingredient' = 'ingredient',
  perGuest?: string,
): SubstitutionFact => ({
  version: 1,
  kind: 'substitution',
  on: day('2027-04-20'),
  what,
  from,
  to,
  ...(perGuest === undefined ? {} : { perGuest }),
  contains: [],
  mayContain: [],
  without: [],
  dietsLost: [],
  tell: [],
});
type Kitchen = Partial<Record<'recipes' | 'foods' | 'held', unknown>> & {
  readonly recipes?: readonly Recipe[];
  readonly foods?: readonly Ingredient[];
  readonly held?: ReadonlyMap<string, string>;
};
const bookOf = ({
  recipes = [tart, stew, soup, ghee],
  foods = [oil, butter, tahini],
  held = new Map(),
}: Kitchen = {}) => ({
  recipes: new Map(recipes.map((each) => [each.id, each])),
  ingredients: new Map(foods.map((each) => [each.id, each])),
  held,
  kitchen: { locale: 'en-US' },
});
const why = (read: Parsed<unknown>) => (read.ok ? 'fine' : `${read.what} — ${read.wayOut}`);

describe('the recipe that an event cooks', () => {
  const cooked = (accepted: string, swaps: readonly SubstitutionFact[], kitchen?: Kitchen) =>
    servedRecipe(bookOf(kitchen), accepted, 'Tart', swaps);

  test('is the one accepted, the same object, where nothing was swapped', () => {
    expect(must(cooked('tart', [])).recipe).toBe(tart);
    expect(must(cooked('soup', [swap('butter', 'oil')])).recipe).toBe(soup);
    expect(must(cooked('tart', [])).replacedBy).toBeUndefined();
  });

  test('is that of the dish that replaced it last, and no other dish’s', () => {
    const swaps = [swap('tart', 'stew', 'dish'), swap('stew', 'soup', 'dish')];
    expect(must(cooked('tart', swaps))).toEqual({ recipe: soup, replacedBy: swaps[1] });
    expect(must(cooked('tart', swaps.toReversed())).recipe.id).toBe('stew');
    expect(must(cooked('soup', swaps)).recipe).toBe(soup);
    expect(replacementOf('tart', [swap('tart', 'stew')])).toBeUndefined();
    expect(replacementOf('tart', [swap('soup', 'stew', 'dish')])).toBeUndefined();
  });

  test('has every ingredient swapped, in the order decided, whichever dish it is by then', () => {
    const both = must(cooked('tart', [swap('butter', 'oil'), swap('oil', 'tahini')])).recipe;
    expect(['butter', 'oil', 'tahini'].map((id) => callsFor(both, id))).toEqual([false, false, true]);
    const replaced = must(cooked('tart', [swap('butter', 'oil'), swap('tart', 'stew', 'dish')])).recipe;
    expect([replaced.id, callsFor(replaced, 'oil')]).toEqual(['stew', true]);
    expect(callsFor(must(cooked('stew', [swap('butter', 'ghee')])).recipe, 'ghee')).toBe(true);
  });

  test('cannot be told where it, or what is taken instead, is gone or held back', () => {
    expect(why(cooked('tart', [], { recipes: [] }))).toBe(
      'the recipe tart of the accepted dish “Tart” is gone — restore recipes/tart.mdx, or substitute the dish',
    );
    const held = new Map([
      ['recipe/tart', 'its yield is unclear'],
      ['ingredient/oil', 'it has no origin'],
    ]);
    expect(why(cooked('tart', [], { recipes: [], held }))).toContain('can’t be used: its yield is unclear');
    expect(why(cooked('tart', [swap('butter', 'oil')], { foods: [] }))).toBe(
      'the ingredient oil taken instead of butter is gone — restore oil, or substitute it again',
    );
    expect(why(cooked('tart', [swap('butter', 'oil')], { foods: [], held }))).toContain(
      'can’t be used: it has no origin',
    );
    expect(why(cooked('tart', [swap('tart', 'pie', 'dish')]))).toContain(
      'the recipe pie of the accepted dish',
    );
  });

  test('never contains itself', () => {
    expect(why(soundSwap(ghee, 'butter', { kind: 'recipe', recipe: ghee }))).toBe(
      'with the swap, a recipe ghee contains itself: ghee → ghee — use something that is not made with it',
    );
    expect(why(cooked('tart', [swap('butter', 'ghee')]))).toBe('fine');
    expect(itemCalled(bookOf(), 'ghee')).toEqual({ kind: 'recipe', recipe: ghee });
    expect(itemCalled(bookOf(), 'butter')).toEqual({ kind: 'ingredient', ingredient: butter });
    expect(itemCalled(bookOf(), 'lard')).toBeUndefined();
  });
});

describe('the dishes of an event', () => {
  const offered = (id: string, more: object = {}) =>
    sampleDish({ recipe: id, name: `Offered ${id}`, perGuest: '1 serving per guest', ...more });
  const menu = samplePackage({
    courses: [
      sampleCourse({ name: 'Starters', choose: 1, dishes: [offered('soup'), offered('tart')] }),
      sampleCourse({
        name: 'Mains',
        choose: null,
        eachGuest: true,
        dishes: [offered('stew'), offered('tart')],
      }),
      sampleCourse({
        name: 'Sides',
        choose: null,
        dishes: [offered('ghee', { counts: { adults: '1', children: '1/2' }, role: 'sauce' })],
      }),
    ],
  });
  const own = (of: Recipe, facts: Partial<Dish> = {}): Dish =>
    ({
      recipe: of,
      perGuest: must(parsePerGuest('2 oz per guest')),
      counts: must(parseCounts('adults')),
      overage: undefined,
      ...facts,
    }) as Dish;
  const live = (dishes: readonly Dish[], facts: object = {}) =>
    new Map([['harvest', { id: 'harvest', courses: [{ name: 'Sides', dishes }], ...facts }]]);
  const CHOICE = sampleChoice(sampleGuests(30), {
    courses: { Starters: ['tart'] },
    mains: { Mains: { stew: 30, tart: 0 } },
    addOns: { board: 1, arch: 0 },
  });
  interface Live {
    readonly packages?: ReadonlyMap<string, unknown>;
    readonly kitchen?: object;
    readonly held?: ReadonlyMap<string, string>;
  }
  const book = ({ packages = new Map(), kitchen = {}, held = new Map() }: Live = {}) =>
    ({
      ...bookOf({ held }),
      packages,
      kitchen: {
        locale: 'en-US',
        overage: new Map([['buffet', new Fraction('1/10')]]),
        addOns: new Map([
          [
            'board',
            {
              id: 'board',
              name: 'Cheese board',
              dishes: [own(soup, { overage: new Fraction('1/4') }), own(ghee)],
            },
          ],
          ['arch', { id: 'arch', name: 'Arch' }],
        ]),
        ...kitchen,
      },
    }) as unknown as Book;
  const dishes = (of = book(), swaps: readonly SubstitutionFact[] = [], choice: Choice = CHOICE) =>
    must(eventDishes(of, menu, choice, swaps));

  test('are those chosen, those somebody takes, all of a course without a choice, and an add-on’s taken', () => {
    expect(
      dishes().map((each) => [
        each.course,
        each.recipe.id,
        each.name,
        perGuestText(each.perGuest),
        each.overage.toFraction(),
        each.chosenBy,
      ]),
    ).toEqual([
      ['Starters', 'tart', 'Offered tart', '1 serving per guest', '1/10', undefined],
      ['Mains', 'stew', 'Offered stew', '1 serving per guest', '1/10', 30],
      ['Sides', 'ghee', 'Offered ghee', '1 serving per guest', '1/10', undefined],
      ['Cheese board', 'soup', 'Leek soup', '2 oz per guest', '1/4', undefined],
      ['Cheese board', 'ghee', 'Ghee', '2 oz per guest', '1/10', undefined],
    ]);
    const [, , side, extra] = dishes();
    expect([side?.counts, side?.role, side?.extra, extra?.extra]).toEqual([
      { adults: '1', children: '1/2' },
      'sauce',
      undefined,
      true,
    ]);
    const none = { ...CHOICE, courses: {}, mains: {}, addOns: {} };
    expect(dishes(book(), [], none).map(({ recipe: { id } }) => id)).toEqual(['ghee']);
  });

  test('have the kitchen’s own overage and count of eaters as they are now, and nothing over where it states none', () => {
    const packages = live([
      own(ghee, { overage: new Fraction('1/5'), onlyForEaters: true, others: new Fraction('1/3') }),
    ]);
    const side = (of: Book) => dishes(of).find(({ recipe: { id } }) => id === 'ghee')!;
    expect([side(book({ packages })).overage.toFraction(), side(book({ packages })).onlyForEaters]).toEqual([
      '1/5',
      true,
    ]);
    expect(side(book({ packages })).others?.toFraction()).toBe('1/3');
    expect(side(book()).onlyForEaters).toBe(false);
    expect(side(book({ packages: live([own(ghee)], { onlyForEaters: true }) })).onlyForEaters).toBe(true);
    expect(side(book({ kitchen: { onlyForEaters: true } })).onlyForEaters).toBe(true);
    expect(
      side(book({ packages: live([own(ghee)], { onlyForEaters: false }), kitchen: { onlyForEaters: true } }))
        .onlyForEaters,
    ).toBe(false);
    expect(side(book({ kitchen: { overage: new Map() } })).overage.toFraction()).toBe('0');
  });

  test('are served as swapped: by the name and amount of what replaces them, in their place of the course', () => {
    const swaps = [swap('tart', 'stew', 'dish', '6 oz per guest'), swap('butter', 'oil')];
    const [starter, main] = dishes(book(), swaps);
    expect([
      starter?.name,
      starter?.recipe.id,
      starter && perGuestText(starter.perGuest),
      starter?.role,
    ]).toEqual(['Bean stew (Oil instead of Butter)', 'stew', '6 oz per guest', 'main']);
    expect(main?.name).toBe('Offered stew');
    expect(callsFor(main!.recipe, 'oil')).toBe(true);
    const [same] = dishes(book(), [swap('tart', 'soup', 'dish')]);
    expect(same && perGuestText(same.perGuest)).toBe('1 serving per guest');
  });

  test('take the place of what is served where they take that of a dish that was replaced', () => {
    const instead = samplePackage({
      courses: [
        sampleCourse({
          choose: null,
          dishes: [offered('tart'), offered('soup', { insteadOf: { recipe: 'tart', needs: ['vegan'] } })],
        }),
      ],
    });
    const placed = (swaps: readonly SubstitutionFact[]) =>
      must(eventDishes(book(), instead, { ...CHOICE, addOns: {} }, swaps))[1];
    expect(placed([])?.insteadOf).toEqual({ recipe: 'tart', needs: ['vegan'] });
    expect(placed([])?.others?.toFraction()).toBe('0');
    expect(placed([swap('tart', 'stew', 'dish')])?.insteadOf).toEqual({ recipe: 'stew', needs: ['vegan'] });
  });

  test('cannot be told while an add-on taken is gone or held back', () => {
    const lost = { kitchen: { addOns: new Map() } };
    expect(why(eventDishes(book(lost), menu, CHOICE, []))).toBe(
      'the accepted add-on board no longer exists — put it back in kitchen.yaml until the event is over',
    );
    const held = new Map([['add-on/board', 'its price is none']]);
    expect(why(eventDishes(book({ held }), menu, CHOICE, []))).toContain(
      'add-on board can’t be used: its price is none',
    );
    expect(why(eventDishes(book(lost), menu, { ...CHOICE, addOns: { board: 0 } }, []))).toBe('fine');
  });
});
