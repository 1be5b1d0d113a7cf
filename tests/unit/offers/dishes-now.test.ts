import { describe, expect, test } from 'vitest';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { Recipe, RecipeChange } from '../../../src/engine/food/recipe.ts';
import type { DishTerms } from '../../../src/engine/quote/terms.ts';
import { correctionsTo, type DishCorrection } from '../../../src/offers/corrections/corrections.ts';
import { dishAsItStands, dishesNow, termsAsTheyStand } from '../../../src/offers/corrections/dishes-now.ts';
import { knownSince } from '../../../src/offers/corrections/known-since.ts';
import { recipeFacts } from '../../../src/offers/issue/dish-terms.ts';
import type { SubstitutionFact } from '../../../src/schema/event-fact.ts';
import { day, food, line, must, recipe } from '../plan/builders.ts';
import { sampleAddOn, sampleCourse, sampleDish, samplePackage, sampleTerms } from '../quote/sample-terms.ts';

const allergens = (...words: string[]) => words.map((word) => must(parseAllergen(word)));
const leek = food('leek');
const oil = food('oil', { name: 'Oil' });
const butter = food('butter', { name: 'Butter', from: ['milk'], allergens: ['milk'] });
const tahini = food('tahini', { name: 'Tahini', allergens: ['sesame'], mayContain: allergens('almond') });
const without = (item: string, ...needs: string[]): RecipeChange => ({ item, instead: undefined, needs });

const made = (foods: readonly Ingredient[], changes: readonly RecipeChange[] = [], id = 'tart'): Recipe =>
  recipe(
    id,
    '8 pieces',
    foods.map((each) => line(each, '1 lb')),
    {
      name: id === 'tart' ? 'Leek tart' : 'Bean stew',
      changes,
    },
  );
const offeredAs = (of: Recipe): DishTerms => sampleDish({ recipe: of.id, name: of.name, ...recipeFacts(of) });

const swap = (from: string, to: string, facts: Partial<SubstitutionFact> = {}): SubstitutionFact => ({
  version: 1,
  kind: 'substitution',
  on: day('2027-04-20'),
  what: 'ingredient',
  from,
  to,
  contains: [],
  mayContain: [],
  without: [],
  dietsLost: [],
  tell: [],
  ...facts,
});
const replace = (to: string, facts: Partial<SubstitutionFact> = {}) =>
  swap('tart', to, { what: 'dish', ...facts });

type Sources = Parameters<typeof knownSince>[1];
function bookOf(
  recipes: readonly Recipe[],
  foods: readonly Ingredient[] = [],
  change: Partial<Sources> = {},
): Sources {
  return {
    recipes: new Map(recipes.map((each) => [each.id, each])),
    ingredients: new Map(foods.map((each) => [each.id, each])),
    corrections: new Map(),
    kitchen: { locale: 'en-US' },
    told: new Map(),
    held: new Map(),
    ...change,
  } as Sources;
}
/** What the page of the offer has published of its dishes. */
function publishedOf(dishes: readonly DishCorrection[]): Sources['corrections'] {
  return new Map([['gale', [{ revision: 1, dishes }]]]) as unknown as Sources['corrections'];
}
function offerOf(...dishes: readonly DishTerms[]) {
  const packages = [samplePackage({ courses: [sampleCourse({ dishes })] })];
  return { proposal: 'gale', revision: 1, terms: sampleTerms({ packages }) };
}
const correction = (facts: Partial<DishCorrection>): DishCorrection => ({
  recipe: 'tart',
  dish: 'Leek tart',
  contains: [],
  mayContain: [],
  lostMarks: [],
  ...facts,
});

const PLAIN = made([oil, leek]);
const BUTTERED = made([butter, leek], [without('butter', 'vegan', 'milk')]);
const ALL = ['vegetarian', 'vegan', 'pescatarian', 'no gluten', 'no pork', 'no alcohol'];
const LESS = (...lost: string[]) => ALL.filter((each) => !lost.includes(each));

describe('a dish with an ingredient swapped', () => {
  const now = (
    of: Recipe,
    swaps: readonly SubstitutionFact[],
    foods: readonly Ingredient[],
    { offered = offeredAs(of), corrections = [] as readonly DishCorrection[] } = {},
  ) => dishesNow(offerOf(offered), bookOf([of], foods), swaps, corrections);

  test('has what comes with it, and loses the diets that go', () => {
    expect(now(PLAIN, [swap('oil', 'tahini')], [tahini])).toEqual([
      {
        recipe: 'tart',
        name: 'Leek tart',
        food: { marks: ALL, contains: ['sesame'], mayContain: ['almond'] },
      },
    ]);
    expect(now(PLAIN, [swap('oil', 'butter')], [butter])[0]?.food).toEqual({
      marks: LESS('vegan'),
      contains: ['milk'],
      mayContain: [],
    });
  });

  test('loses what went with the old, and is claimed for whoever it suits now, on request no longer', () => {
    const offered = offeredAs(BUTTERED);
    expect([offered.onRequest, offered.marks]).toEqual([['vegan', 'milk'], LESS('vegan')]);
    const [dish] = now(BUTTERED, [swap('butter', 'oil')], [oil]);
    expect(dish?.food).toEqual({
      marks: [...LESS('vegan'), 'vegan'],
      contains: [],
      mayContain: [],
      // An allergy is asked for all the same: nobody reads of it among the diets.
      onRequest: ['milk'],
    });
  });

  test('loses what it could be made for where the swap stands against it', () => {
    const [dish] = now(
      BUTTERED,
      [swap('leek', 'cream')],
      [food('cream', { from: ['milk'], allergens: ['milk'] })],
    );
    expect(dish?.food).toEqual({ marks: LESS('vegan'), contains: ['milk'], mayContain: [] });
  });

  test('is untouched where it does not call for it, or nothing was swapped', () => {
    expect(now(PLAIN, [swap('butter', 'oil')], [oil])).toEqual([]);
    expect(now(PLAIN, [], [oil])).toEqual([]);
  });

  test('keeps an allergen that only the offer states, and then claims nothing new', () => {
    const offered = { ...offeredAs(BUTTERED), contains: ['egg', 'milk'], mayContain: ['celery'] };
    expect(now(BUTTERED, [swap('butter', 'oil')], [oil], { offered })[0]?.food).toEqual({
      marks: LESS('vegan'),
      contains: ['egg'],
      mayContain: ['celery'],
      onRequest: ['vegan', 'milk'],
    });
  });

  test('keeps what was corrected since, except what the swap takes out', () => {
    const found = [correction({ contains: ['egg', 'milk'], lostMarks: ['vegan', 'vegetarian'] })];
    const offered = offeredAs(PLAIN);
    // The recipe has butter now, which the offer did not say; the swap takes it out again.
    const [dish] = dishesNow(offerOf(offered), bookOf([BUTTERED], [oil]), [swap('butter', 'oil')], found);
    expect(dish?.food.contains).toEqual(['egg']);
    expect(dish?.food.marks).not.toContain('vegan');
    expect(dish?.food.marks).not.toContain('vegetarian');
  });

  test('is unknown where what comes is, or the offer left it so, and a warning made certain is contained', () => {
    const relish = food('relish', { contains: undefined });
    expect(now(PLAIN, [swap('oil', 'relish')], [relish])[0]?.food).toMatchObject({
      marks: ['no pork', 'no alcohol'],
      unsaid: true,
    });
    const unsaid = { ...offeredAs(PLAIN), unsaid: true as const };
    expect(now(PLAIN, [swap('oil', 'tahini')], [tahini], { offered: unsaid })[0]?.food.unsaid).toBe(true);
    expect(now(PLAIN, [swap('oil', 'tahini')], [tahini])[0]?.food).not.toHaveProperty('unsaid');
    const warned = made([food('crumbs', { mayContain: allergens('sesame') }), oil]);
    expect(now(warned, [swap('oil', 'tahini')], [tahini])[0]?.food).toMatchObject({
      contains: ['sesame'],
      mayContain: ['almond'],
    });
  });

  test('lists no allergen as a warning that is contained since, though the offer alone warned of it', () => {
    const offered = { ...offeredAs(PLAIN), mayContain: ['sesame', 'celery'] };
    expect(now(PLAIN, [swap('oil', 'tahini')], [tahini], { offered })[0]?.food).toMatchObject({
      contains: ['sesame'],
      mayContain: ['celery', 'almond'],
    });
  });

  test('is claimed for a diet it gains beside allergens that the recipe itself states', () => {
    const rye = food('rye', { allergens: ['rye'] });
    const [dish] = now(made([butter, rye]), [swap('butter', 'oil')], [oil]);
    expect(dish?.food).toMatchObject({ contains: ['rye'], marks: [...LESS('vegan', 'no gluten'), 'vegan'] });
  });

  test('stays on request for a guest who has an allergy beside the diet that it suits now', () => {
    const of = made([butter, leek], [without('butter', 'vegan + milk', 'vegan')]);
    const [dish] = now(of, [swap('butter', 'oil')], [oil]);
    expect(dish?.food.onRequest).toEqual(['vegan + milk']);
  });

  test('follows swaps in the order decided', () => {
    const swaps = [swap('oil', 'butter'), swap('butter', 'tahini')];
    expect(now(PLAIN, swaps, [butter, tahini])[0]?.food.contains).toEqual(['sesame']);
    expect(now(PLAIN, swaps.toReversed(), [butter, tahini])[0]?.food.contains).toEqual(['milk']);
  });
});

describe('a dish that another is served for', () => {
  const stew = made([tahini, leek], [], 'stew');

  test('says what its own recipe says, under the place it was offered at', () => {
    const found = [correction({ contains: ['egg'] })];
    const substitutions = [replace('stew', { perGuest: '6 oz per guest' })];
    expect(dishesNow(offerOf(offeredAs(PLAIN)), bookOf([PLAIN, stew]), substitutions, found)).toEqual([
      {
        recipe: 'tart',
        instead: 'stew',
        perGuest: '6 oz per guest',
        name: 'Bean stew',
        food: { marks: ALL, contains: ['sesame'], mayContain: ['almond'] },
      },
    ]);
    expect(
      dishesNow(offerOf(offeredAs(PLAIN)), bookOf([PLAIN, stew]), [replace('stew')], [])[0],
    ).not.toHaveProperty('perGuest');
  });

  test('is named by its recipe, else as it was called then, else by its id, where it cannot be read', () => {
    const brought = { contains: ['sesame'], mayContain: ['almond', 'rye'] };
    const offered = { ...offeredAs(BUTTERED), mayContain: ['rye'] };
    const of = (facts: Partial<SubstitutionFact>, recipes: readonly Recipe[] = []) =>
      dishesNow(offerOf(offered), bookOf(recipes), [replace('bean-stew', facts)], [])[0];
    expect(of({ ...brought, name: 'Butter bean stew' })).toEqual({
      recipe: 'tart',
      instead: 'bean-stew',
      name: 'Butter bean stew',
      food: { marks: [], contains: ['milk', 'sesame'], mayContain: ['rye', 'almond'], unsaid: true },
      unreadable: true,
    });
    expect(of(brought)?.name).toBe('Bean stew');
  });
});

test('a dish whose recipe is gone claims nothing, and what swaps brought counts as a warning at least', () => {
  const swaps = [swap('oil', 'tahini', { contains: ['sesame'], mayContain: ['milk'] })];
  const offered = offeredAs(BUTTERED);
  expect(dishesNow(offerOf(offered), bookOf([]), swaps, [])).toEqual([
    {
      recipe: 'tart',
      name: 'Leek tart',
      food: { marks: [], contains: ['milk'], mayContain: ['sesame'], unsaid: true },
      unreadable: true,
    },
  ]);
  // The same where what is taken instead is gone.
  expect(dishesNow(offerOf(offered), bookOf([BUTTERED]), swaps, [])[0]?.unreadable).toBe(true);
});

describe('the terms as they stand', () => {
  const dish = { ...offeredAs(BUTTERED), perGuest: '1 piece per guest' };
  const now = {
    recipe: 'tart',
    name: 'Bean stew',
    perGuest: '6 oz per guest',
    food: { marks: ['vegan'], contains: ['sesame'], mayContain: [] },
  };

  test('have the dish served, with nothing left of the old one’s requests', () => {
    const { onRequest: _, ...rest } = dish;
    expect(dishAsItStands({ ...dish, unsaid: true }, { dishesNow: [now], corrections: [] })).toEqual({
      ...rest,
      name: 'Bean stew',
      perGuest: '6 oz per guest',
      ...now.food,
    });
    const { perGuest: __, ...same } = now;
    expect(dishAsItStands(dish, { dishesNow: [same], corrections: [] }).perGuest).toBe('1 piece per guest');
  });

  test('have corrections where nothing is served instead, in menus and add-ons alike', () => {
    const corrections = [correction({ contains: ['egg'] })];
    expect(dishAsItStands(dish, { dishesNow: [], corrections }).contains).toEqual(['milk', 'egg']);
    const terms = sampleTerms({
      packages: [samplePackage({ courses: [sampleCourse({ dishes: [dish] })] })],
      addOns: [sampleAddOn({ dishes: [dish] }), sampleAddOn({ id: 'arch' })],
    });
    const stand = termsAsTheyStand(terms, { dishesNow: [now], corrections });
    expect(stand.packages[0]!.courses[0]!.dishes[0]?.name).toBe('Bean stew');
    expect(stand.addOns[0]!.dishes![0]?.contains).toEqual(['sesame']);
    expect(stand.addOns[1]).toBe(terms.addOns[1]);
    const second = { ...now, recipe: 'slaw', name: 'Slaw' };
    const known = { dishesNow: [second, now], corrections };
    expect(dishAsItStands(dish, known).name).toBe('Bean stew');
  });
});

describe('what is known since of an event’s dishes', () => {
  const known = (
    of: readonly Recipe[],
    foods: readonly Ingredient[],
    substitutions: readonly SubstitutionFact[],
    offered = offeredAs(BUTTERED),
  ) => knownSince(offerOf(offered), bookOf(of, foods), substitutions).corrections;

  test('are corrections of dishes that no swap touches, as they are', () => {
    const other = offeredAs(made([oil, leek], [], 'stew'));
    const offer = offerOf(offeredAs(PLAIN), other);
    const book = bookOf([PLAIN, made([butter, leek], [], 'stew')], [tahini]);
    expect(
      knownSince(offer, book, [
        swap('oil', 'tahini', {
          tell: ['Leek tart contains sesame.'],
          contains: ['sesame'],
          mayContain: ['almond'],
        }),
      ]).corrections,
    ).toEqual(correctionsTo(offer, book));
    expect(correctionsTo(offer, book)).toMatchObject([{ recipe: 'stew', contains: ['milk'] }]);
  });

  test('are none where the swap itself told of all it brought', () => {
    const told = swap('leek', 'tahini', {
      contains: ['sesame'],
      mayContain: ['almond'],
      tell: ['Leek tart contains sesame since the change. Leek tart may contain almond.'],
    });
    expect(known([BUTTERED], [tahini], [told])).toEqual([]);
  });

  test('are what the swap did not tell of: allergens, warnings, diets, requests', () => {
    expect(known([BUTTERED], [tahini], [swap('leek', 'tahini')])).toEqual([
      correction({ contains: ['sesame'], mayContain: ['almond'] }),
    ]);
    const lamb = food('lamb', { from: ['lamb', 'milk'], allergens: ['milk'] });
    expect(
      known([BUTTERED], [lamb], [swap('leek', 'lamb', { dietsLost: ['vegetarian'], tell: ['Leek tart'] })]),
    ).toEqual([correction({ lostMarks: ['pescatarian', 'vegan on request', 'milk on request'] })]);
    // What another dish was told of is not told of this one.
    const elsewhere = swap('leek', 'tahini', { contains: ['sesame'], tell: ['Bean stew contains sesame.'] });
    expect(known([BUTTERED], [tahini], [elsewhere])[0]?.contains).toEqual(['sesame']);
    const warned = swap('leek', 'tahini', {
      mayContain: ['sesame', 'almond'],
      tell: ['Leek tart may contain sesame.'],
    });
    // A warning told is not the allergen told.
    expect(known([BUTTERED], [tahini], [warned])).toEqual([correction({ contains: ['sesame'] })]);
  });

  test('are of a dish what was told of another alone, whose longer name has its own in it', () => {
    const slaw = recipe('slaw', '1 lb', [line(oil, '1 lb')], { name: 'Slaw' });
    const other = recipe('other', '1 lb', [line(leek, '1 lb')], { name: 'Slaw with leeks' });
    const offer = offerOf(offeredAs(slaw), offeredAs(other));
    const swaps = [
      swap('leek', 'tahini', {
        contains: ['sesame'],
        mayContain: ['almond'],
        tell: ['Slaw with leeks contains sesame since the change. Slaw with leeks may contain almond.'],
      }),
      swap('oil', 'dressing'),
    ];
    // The dressing turned out to have sesame in it after it was taken instead.
    const dressing = food('dressing', { name: 'Dressing', allergens: ['sesame'] });
    expect(knownSince(offer, bookOf([slaw, other], [tahini, dressing]), swaps).corrections).toEqual([
      correction({ recipe: 'slaw', dish: 'Slaw', contains: ['sesame'] }),
    ]);
  });

  test('are of the dish served instead, which is no vegan by the offer’s word', () => {
    const stew = made([butter, leek], [], 'stew');
    expect(known([PLAIN, stew], [], [replace('stew')], offeredAs(PLAIN))).toEqual([
      correction({ instead: 'stew', dish: 'Bean stew', contains: ['milk'], lostMarks: ['vegan'] }),
    ]);
    expect(known([PLAIN, made([oil], [], 'stew')], [], [replace('stew')], offeredAs(PLAIN))).toEqual([]);
  });

  test('say where allergens are unknown since, and no longer where the offer left them so', () => {
    const relish = food('relish', { contains: undefined });
    const [found] = known([PLAIN], [relish], [swap('oil', 'relish')], offeredAs(PLAIN));
    expect(found?.unsaid).toBe(true);
    const unsaid = { ...offeredAs(PLAIN), marks: [], unsaid: true as const };
    expect(known([PLAIN], [relish], [swap('oil', 'relish')], unsaid)).toEqual([]);
  });

  test('of one that cannot be read are what was found out of it before, and nothing of what replaced it', () => {
    const found = [correction({ contains: ['egg'], mayContain: ['rye'], lostMarks: ['vegan'] })];
    const offer = offerOf(offeredAs(PLAIN));
    const since = (swaps: readonly SubstitutionFact[], dishes = found) =>
      knownSince(offer, bookOf([], [], { corrections: publishedOf(dishes) }), swaps).corrections;
    expect(since([swap('oil', 'tahini')])).toEqual([{ ...found[0], unreadable: true }]);
    const others = [correction({ recipe: 'stew', contains: ['milk'] }), ...found];
    expect(since([swap('oil', 'tahini')], others)).toContainEqual({
      ...found[0],
      unreadable: true,
    });
    expect(since([replace('stew')])).toEqual([
      correction({ instead: 'stew', dish: 'Stew', unreadable: true }),
    ]);
    expect(since([swap('oil', 'tahini')], [])).toEqual([correction({ unreadable: true })]);
  });
});
