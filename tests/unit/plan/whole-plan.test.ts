import Fraction from 'fraction.js';
import { beforeEach, describe, expect, test } from 'vitest';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { parseHeldTemperature } from '../../../src/engine/measure/temperature.ts';
import { moneyText } from '../../../src/engine/money/money.ts';
import type { EventPlan } from '../../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { allInWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, must, pack, prices, recipe, step } from './builders.ts';

/*
 * One buffet worked out by hand: 84 adults, 6 children, 4 vendors, 2 lines. The herb-oil is a dish and goes into
 * two others.
 */
const potato = food('potato', { yields: new Map([['peeled', new Fraction('81/100')]]) });
const celery = food('celery', {
  yield: new Fraction(18n, 22n),
  sold: ['1 head = 2 lb'],
  allergens: ['celery'],
});
const salt = food('salt', { sold: ['1 tbsp = 18 g'] });
const oil = food('oil');
const parsley = food('parsley');
const lettuce = food('lettuce', { yield: new Fraction('3/4') });
const pork = food('pork', { from: ['pork'] });

const herbOil = recipe('herb-oil', '1 gal', [line(oil, '3 qt'), line(parsley, '4 bunches')], {
  batches: 'whole',
  steps: [step('1 day before', 'Blend.', { handsOn: minutes(20), handsOnPerBatch: true, station: 'cold' })],
});
const celeryPotatoes = recipe(
  'celery-potatoes',
  ['50 servings', '12 qt'],
  [
    line(potato, '14 lb', 'peeled'),
    line(celery, '1 lb 2 oz', 'chopped'),
    line(herbOil, '2 qt'),
    line(salt, '2 tbsp'),
  ],
  {
    batches: 'half',
    pack: { serve: 'full-pan', carry: 'tub' },
    steps: [
      step('1 day before', 'Boil.', { handsOn: minutes(30) }),
      step('at serving', 'Set out.'),
      step('on the day', 'Dress.'),
    ],
  },
);
const dressedLeaves = recipe('dressed-leaves', '1 bowl', [line(lettuce, '3 lb'), line(herbOil, '1 qt')], {
  steps: [step('on the day', 'Toss.')],
});
const parcel = recipe('pork-parcel', '1 parcel', [line(pork, '3 lb', 'as purchased')], {
  hold: 'hot',
  pack: { carry: 'board', serve: 'board' },
  steps: [step('on the day', 'Bake.', { cookTo: must(parseHeldTemperature('145 °F for 15 s')) })],
});

/* Planned anew for each test, so that each stands for what it asks. */
let plan: EventPlan;
beforeEach(() => {
  plan = planEvent(
    event(
      [
        dish(celeryPotatoes, '1 serving per guest', {
          overage: '8/100',
          counts: 'adults, children at 1/2, vendors',
        }),
        dish(dressedLeaves, '1 bowl per 45 guests'),
        dish(herbOil, '¼ cup per guest', { counts: 'adults' }),
        dish(parcel, '1 parcel per 6 guests', { counts: 'adults, children at 1/2, vendors' }),
      ],
      { guests: { adults: 84, children: 6, vendors: 4, staff: 9 }, lines: 2 },
    ),
    kitchen([
      ['full-pan', '240 fl oz', '9/10'],
      ['tub', '40 servings', '1'],
      ['board', '20 parcels', '1'],
    ]),
    prices(
      pack('potato', '50 lb sack', '31.50'),
      pack('potato', '10 lb bag', '7.20'),
      pack('celery', '1 head', '1.80'),
      pack('oil', '1 gal jug', '22.00'),
      pack('oil', '6 x 1 qt', '30.00', { supplier: 'hill' }),
      pack('parsley', '1 bunch', '0.90'),
      pack('parsley', '12 bunch case', '9.60'),
      pack('parsley', '12 bunch case', '12.00', { validFrom: '2027-05-13' as never }),
      pack('lettuce', '5 lb', '11.00'),
      pack('pork', 'about 12 lb piece', '4.15 per lb'),
      pack('salt', '3 lb', '1.29'),
    ),
  );
});

const dishNamed = (name: string) => plan.dishes.find((each) => each.dish.name === name);
const recipeNamed = (id: string) => plan.recipes.find((each) => each.recipe.id === id);
const bought = (id: string) => plan.purchases.find((each) => each.ingredient.id === id);
const packsOf = (id: string) => bought(id)?.packs.map((each) => `${each.count} × ${each.pack.packText}`);

describe('a whole plan worked by hand', () => {
  test('counts guests by their weights, adds overage, and makes what cannot be split whole', () => {
    // 84 + 6 × ½ + 4 = 91; 91 servings + 8 % = 98.28, so 99.
    expect(allInWords(dishNamed('celery-potatoes')?.why)).toEqual([
      '84 adults + 6 children at ½ + 4 vendors = 91 guests',
      '91 guests × 1 serving = 91 servings',
      '91 servings + 8 % overage = 98.28 servings',
      '98.28 servings, rounded up: 99 servings',
    ]);
    expect(exactText(dishNamed('dressed-leaves')!.need)).toBe('2 bowl');
    expect(allInWords(dishNamed('pork-parcel')?.why).slice(1)).toEqual([
      '91 guests ÷ 6 × 1 parcel = 15⅙ parcels',
      '15⅙ parcels, rounded up: 16 parcels',
    ]);
    expect(allInWords(dishNamed('herb-oil')?.why)).toEqual([
      '84 guests × ¼ cup = 21 cups = 1 gal 1 qt 1 cup',
      '21 cups ≈ 1.31 gal',
    ]);
  });

  test('sums the needs of the herb-oil before it rounds to whole batches, parts first', () => {
    // 2 batches of celery potatoes × 2 qt + 2 bowls × 1 qt + 168 fl oz = 1 + ½ + 21/16 = 45/16 gal: 3 batches, not 4.
    expect(plan.recipes.map((each) => each.recipe.id)).toEqual([
      'herb-oil',
      'celery-potatoes',
      'dressed-leaves',
      'pork-parcel',
    ]);
    expect(exactText(recipeNamed('herb-oil')!.need)).toBe('45/16 gal');
    expect(recipeNamed('herb-oil')!.batches.toFraction()).toBe('3');
    expect(allInWords(recipeNamed('celery-potatoes')?.why)).toEqual([
      '99 servings for celery-potatoes',
      '99 servings ÷ 50 servings a batch = 1.98 batches',
      'rounded up to half batches: 2 batches',
      '2 batches × 50 servings = 100 servings',
    ]);
    expect(recipeNamed('herb-oil')!.lines.map(({ amount }) => exactText(amount))).toEqual([
      '9 qt',
      '12 bunch',
    ]);
  });

  test('buys whole packs as purchased, at the prices of the buying day', () => {
    // 28 lb ÷ 81 % = 2800/81 lb ≈ 34.57: four bags at 7.20 (28.80) beat the sack at 31.50.
    expect(exactText(bought('potato')!.need)).toBe('2800/81 lb');
    expect(allInWords(bought('potato')?.usedBy[0]?.why)).toEqual([
      '28 lb in celery-potatoes',
      '28 lb ÷ 81 % left when peeled ≈ 34.57 lb as purchased',
    ]);
    expect(packsOf('potato')).toEqual(['4 × 10 lb bag']);
    expect(exactText(bought('potato')!.left!)).toBe('440/81 lb');
    // 2 lb 4 oz ÷ (18/22) = 2 lb 12 oz = 1⅜ heads of 2 lb.
    expect(exactText(bought('celery')!.need)).toBe('11/8 head');
    expect(packsOf('celery')).toEqual(['2 × 1 head']);
    // 9 qt: 1 gal + 6 qt hold 10 qt for 52.00; 3 gal cost 66.00, twice 6 qt 60.00.
    expect(packsOf('oil')).toEqual(['1 × 6 x 1 qt', '1 × 1 gal jug']);
    expect(allInWords(bought('oil')?.why).at(-1)).toBe(
      '10 qt − 9 qt = 1 qt left over, worth $5.20 at pack prices',
    );
    // A case at 9.60 against twelve bunches at 0.90 = 10.80; the dearer case counts from the day after.
    expect(packsOf('parsley')).toEqual(['1 × 12 bunch case']);
    // 6 lb ÷ 75 % = 8 lb.
    expect(packsOf('lettuce')).toEqual(['2 × 5 lb']);
    // 16 parcels × 3 lb = 48 lb as purchased: four pieces of about 12 lb at 12 × 4.15 = 49.80.
    expect(packsOf('pork')).toEqual(['4 × about 12 lb piece']);
    expect(moneyText(bought('pork')!.cost!)).toBe('199.20');
    // 28.80 + 3.60 + 52.00 + 9.60 + 22.00 + 199.20 + 1.29
    expect(moneyText(plan.foodCost!)).toBe('316.49');
    expect(plan.findings).toEqual([]);
  });

  test('packs the finished amount at working fill, at least one container for each line', () => {
    // 100 servings made = 24 qt = 768 fl oz; a pan takes 216 fl oz: 3.56, so 4, the last 5/9 full.
    const [carry, serve] = dishNamed('celery-potatoes')!.containers;
    expect(carry).toMatchObject({ stage: 'carry', count: 3 });
    expect(exactText(carry!.last)).toBe('20 serving');
    expect(serve).toMatchObject({ stage: 'serve', count: 4 });
    expect(serve?.lastFull.toFraction()).toBe('5/9');
    expect(allInWords(serve?.why)).toEqual([
      'full-pan holds 240 fl oz × 90 % fill = 216 fl oz',
      '768 fl oz ÷ 216 fl oz in each ≈ 3.56',
      'rounded up: 4, the last 56 % full',
    ]);
    // 16 parcels lie on one board of 20 to be carried; on the table there are two lines.
    const [board, boards] = dishNamed('pork-parcel')!.containers;
    expect([board?.count, board?.lastFull.toFraction()]).toEqual([1, '4/5']);
    expect([boards?.count, boards?.lastFull.toFraction()]).toEqual([2, '2/5']);
    expect([exactText(boards!.each), exactText(boards!.last)]).toEqual(['8 parcel', '8 parcel']);
  });

  test('lists tasks by day, parts before what they go into, what is done at serving last', () => {
    expect(
      plan.days.map((each) => [each.date, ...each.tasks.map((task) => `${task.recipe.id} ${task.number}`)]),
    ).toEqual([
      ['2027-05-14', 'herb-oil 1', 'celery-potatoes 1'],
      ['2027-05-15', 'celery-potatoes 3', 'dressed-leaves 1', 'pork-parcel 1', 'celery-potatoes 2'],
    ]);
    expect(plan.days[0]?.tasks.map((task) => task.handsOnMinutes)).toEqual([60, 30]);
  });

  test('says which allergens come in by which way', () => {
    expect(dishNamed('celery-potatoes')?.contains).toEqual([
      { allergen: { group: 'celery', kind: null }, paths: [['celery-potatoes', 'celery']] },
    ]);
    expect(dishNamed('pork-parcel')?.diets.find((claim) => claim.diet === 'no pork')).toEqual({
      diet: 'no pork',
      suits: 'no',
      because: ['pork'],
    });
  });
});

test('a plan names each food whose allergens nobody has stated, also deep in a part', () => {
  const sauce = food('sauce', { contains: undefined });
  const glaze = recipe('glaze', '1 qt', [
    line(sauce, '1 cup'),
    line(food('stock', { contains: undefined }), '1 cup'),
  ]);
  const ribs = recipe('ribs', '20 servings', [line(pork, '10 lb'), line(glaze, '1 pt')]);
  const { dishes } = planEvent(event([dish(ribs, '1 serving per guest')]), kitchen(), prices());
  expect(dishes[0]?.unsaid.toSorted()).toEqual(['sauce', 'stock']);
});
