import { expect, test } from 'vitest';
import { allFoods, hundredths } from '../../unit/store-room/read-store-room.ts';

const foods = new Map(allFoods().map((food) => [food.id, food.fields]));

function yieldOf(id: string, preparation: string): bigint {
  const yields = foods.get(id)?.yields as Record<string, string> | undefined;
  return hundredths(yields?.[preparation]);
}

// US Armed Forces Recipe Service, A. General Information No. 6: factor from edible portion to as purchased.
test.each([
  ['potato', 'peeled', 123n],
  ['carrot', 'peeled', 122n],
  ['celery', 'trimmed', 137n],
  ['cabbage', 'trimmed', 116n],
  ['cucumber', 'peeled and seeded', 167n],
  ['cucumber', 'unpeeled', 105n],
  ['green-bean', 'trimmed', 114n],
  ['broccoli', 'florets', 220n],
  ['garlic', 'peeled', 106n],
  ['mushroom', 'sliced', 110n],
  ['green-onion', 'trimmed', 120n],
  ['green-pepper', 'trimmed', 122n],
  ['apple', 'cored', 118n],
  ['banana', 'peeled', 154n],
  ['grape', 'stemmed and seeded', 112n],
  ['lemon', 'juiced', 233n],
  ['mango', 'peeled', 145n],
  ['peach', 'peeled', 132n],
] as const)(
  '%s, %s, keeps the reciprocal of the Armed Forces factor, to a hundredth of a percent',
  (id, preparation, factor) => {
    const share = yieldOf(id, preparation);
    // share ÷ 10000 against 100 ÷ factor, apart by no more than half a hundredth of a percent
    const apart = 2n * (share * factor - 1_000_000n);
    expect(apart <= factor && -apart <= factor, `${share}`).toBe(true);
  },
);

// USDA National Nutrient Database for Standard Reference, refuse in percent, by NDB No.
test.each([
  ['romaine', 'cored', 6n], // 11251
  ['green-leaf-lettuce', 'trimmed', 36n], // 11253
  ['cucumber', 'peeled', 27n], // 11206
  ['cabbage', 'shredded', 20n], // 11109
  ['onion', 'peeled', 10n], // 11282
  ['celery', 'roots off', 11n], // 11143
  ['red-pepper', 'trimmed', 18n], // 11821
  ['cilantro', 'stemmed', 15n], // 11165
  ['lemon', 'peeled', 47n], // 09150
  ['strawberry', 'hulled', 6n], // 09316
  ['pineapple', 'peeled and cored', 49n], // 09266
  ['watermelon', 'peeled', 48n], // 09326
  ['broccoli', 'trimmed', 39n], // 11090
  ['spinach', 'stemmed', 28n], // 11457
  ['mushroom', 'trimmed', 3n], // 11260
  ['orange', 'peeled', 27n], // 09200
  ['whole-chicken', 'boned', 31n], // 05001
  ['whole-chicken', 'meat only', 52n], // 05011
  ['chicken-leg', 'boned', 27n], // 05075
  ['chicken-thigh', 'boned', 30n], // 05091
  ['whole-turkey', 'meat only', 41n], // 05167
] as const)('%s, %s, keeps what USDA does not count as refuse', (id, preparation, refuse) => {
  expect(yieldOf(id, preparation)).toBe((100n - refuse) * 100n);
});

// USDA recipe E-09, Potato Salad: 2 lb 4 oz of celery, chopped, from 2 lb 12 oz as purchased.
test('chopped celery keeps what the potato salad card prints, 36 oz of 44', () => {
  const apart = yieldOf('celery', 'chopped') * 44n - 10000n * 36n;
  expect(apart <= 22n && -apart <= 22n).toBe(true);
});

// Armed Forces Recipe Service M-009, Cole Slaw: 12 lb of shredded cabbage from 15 lb.
test('shredded cabbage keeps what the slaw card prints, 12 lb of 15', () => {
  expect(yieldOf('cabbage', 'shredded') * 15n).toBe(12n * 10000n);
});

// USDA FoodData Central, SR Legacy (2018): weights of household measures, by FDC id.
test.each([
  ['all-purpose-flour', '1 cup = 125 g'], // 168894
  ['honey', '1 cup = 339 g'], // 169640
  ['olive-oil', '1 cup = 216 g'], // 171413
  ['canola-oil', '1 cup = 218 g'], // 172336
  ['butter', '1 stick = 113 g'], // 173430
  ['cream', '1 fl oz = 29.8 g'], // 170859
  ['plain-yogurt', '1 cup = 245 g'], // 171284
  ['water', '1 ml = 1 g'], // 174158
  ['salt', '1 cup = 292 g'], // 173468
  ['black-pepper', '1 tbsp = 6.9 g'], // 170931
  ['cinnamon', '1 tbsp = 7.8 g'], // 171320
  ['egg', '1 each = 50 g'], // 171287
  ['parsley', '1 cup = 60 g'], // 170416
  ['basil', '2 tbsp = 5.3 g'], // 172232
  ['celery', '1 stalk = 40 g'], // 169988
  ['carrot', '1 cup = 128 g'], // 170393
  ['cucumber', '1/2 cup = 52 g'], // 168409
  ['tomato', '1 cup = 180 g'], // 170457
  ['potato', '1 each = 213 g'], // 170026
  ['garlic', '1 clove = 3 g'], // 169230
  ['lemon', '1 fl oz = 30.5 g'], // 167747
  ['strawberry', '1 cup = 152 g'], // 167762
  ['lentil', '1 cup = 192 g'], // 172420
  ['bulgur', '1 cup = 140 g'], // 170688
  ['maple-syrup', '1 cup = 315 g'], // 169661
  ['tahini', '1 tbsp = 15 g'], // 170189
  ['slivered-almond', '1 cup = 108 g'], // 170567
  ['almond', '1 each = 1.2 g'], // 170567
  ['salted-butter', '1 tbsp = 14.2 g'], // 173410
  ['egg', '1 cup = 243 g'], // 171287
  ['distilled-vinegar', '1 cup = 238 g'], // 172237
  ['cider-vinegar', '1 cup = 239 g'], // 173469
  ['red-wine-vinegar', '1 cup = 239 g'], // 172240
  ['balsamic-vinegar', '1 cup = 255 g'], // 172241
  ['cumin-seed', '1 tsp = 2.1 g'], // 170923
  ['paprika', '1 tbsp = 6.8 g'], // 171329
  ['dried-oregano', '1 tsp = 1 g'], // 171328
  ['cocoa', '1 cup = 86 g'], // 169593
  ['gelatin', '1 packet = 28 g'], // 169599
  ['rolled-oats', '1/3 cup = 27 g'], // 173904
  ['cilantro', '1/4 cup = 4 g'], // 169997
  ['green-onion', '1 cup = 100 g'], // 170005
  ['romaine', '1 cup = 47 g'], // 169247
  ['iceberg-lettuce', '1 cup = 57 g'], // 169248
  ['cabbage', '1 cup = 70 g'], // 169975
  ['red-pepper', '1 cup = 149 g'], // 170108
  ['jalapeno', '1 cup = 90 g'], // 168576
  ['ginger', '1/4 cup = 24 g'], // 169231
  ['mushroom', '1 cup = 96 g'], // 169251
  ['frozen-pea', '1 cup = 134 g'], // 170016
  ['lime', '1 fl oz = 30.8 g'], // 168156
  ['apple', '1 cup = 109 g'], // 171688
  ['pineapple', '1 cup = 165 g'], // 169124
] as const)('%s weighs as USDA prints it: %s', (id, conversion) => {
  expect(foods.get(id)?.conversions).toContain(conversion);
});

// The same entries print 2 1/4 large sweet peppers to the pound as bought, and 164 g edible in one: 18 % refuse
// lies between the two, which is how the piece weights of USDA are known to be without refuse.
test('a large sweet pepper weighs 4/9 lb as bought, and its edible part is the 164 g that USDA prints', () => {
  expect(foods.get('red-pepper')?.conversions).toContain('9 each = 4 lb');
  const edible = ((453.59237 * 4) / 9) * 0.82;
  expect(Math.abs(edible - 164)).toBeLessThan(2);
});

// Edible weight and refuse of one USDA entry each, by NDB No.; the store-room gives the piece as bought.
test.each([
  ['onion', 'each', 110, 10], // 11282, medium
  ['carrot', 'each', 72, 11], // 11124, large
  ['tomato', 'each', 182, 9], // 11529, large
  ['cabbage', 'head', 908, 20], // 11109, medium
  ['red-cabbage', 'head', 1134, 20], // 11112, large
  ['romaine', 'head', 626, 6], // 11251
  ['apple', 'each', 149, 10], // 09003, small
  ['watermelon', 'each', 4518, 48], // 09326
  ['pineapple', 'each', 905, 49], // 09266
] as const)(
  '%s as bought, 1 %s, leaves the %s g that USDA prints after %s %% refuse',
  (id, unit, edible, refuse) => {
    const conversions = foods.get(id)?.conversions as string[];
    const bought = conversions
      .map((text) => new RegExp(`^1 ${unit} = (\\d+) g$`).exec(text)?.[1])
      .find(Boolean);
    expect(Math.abs(Number(bought) - edible / (1 - refuse / 100))).toBeLessThanOrEqual(0.5);
  },
);

// USDA Food Buying Guide, Section 1: a pound of dry black beans is about 2 1/4 cups.
test('black beans agree with the Food Buying Guide within 5 %', () => {
  expect(foods.get('black-bean')?.conversions).toContain('1 cup = 194 g');
  expect(Math.abs(194 / (453.59237 / 2.25) - 1)).toBeLessThan(0.05);
});
