import { beforeEach, describe, expect, test } from 'vitest';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { done, EVENT, supperKitchen } from '../../unit/events/supper-kitchen.ts';
import { PARK_CONTENT } from './park-kitchen.ts';

/*
 * A lunch for 120 in a park without water, power or a roof, drinks for four hours at 30 °C, worked by hand. Nothing of the
 * engine is used: figures stand as sums of their own.
 *
 * From published definitions: 1 lb = 453.59237 g (NIST Handbook 44, Appendix C), 1 gal = 231 in³ = 3.785411784 l, so
 * 1 fl oz = 29.5735295625 ml. From memory: water takes 4.186 kJ for a kilogram and a degree Celsius; a kilogram of ice takes
 * up 333.55 kJ as it melts (CRC Handbook of Chemistry and Physics), for boxes rounded to 334 kJ; a liter of water weighs 1 kg.
 * Common practice without a source: drinks by the hour, a quarter more on a hot day, 4 oz of ice to a glass, half of all ice
 * melts unused, 1 W and degree through a box's walls, food at 0.8 of water's heat brought down by 2 °C, a quarter to spare,
 * and the usual kit's rules.
 */
const LB = 0.45359237;
const FL_OZ = 0.0295735295625;
const inPounds = (fluidOunces: number) => (fluidOunces * FL_OZ) / LB;

let made: PrepPlanDocument | undefined;
let plan: PrepPlanDocument;
// Planned once: the folder goes with the first test, the plan stays.
beforeEach(async () => {
  if (!made) {
    const dir = await supperKitchen(PARK_CONTENT);
    made = JSON.parse(await done(dir, '2027-05-10', 'plan', EVENT, '--json')) as PrepPlanDocument;
  }
  plan = made;
});

const line = (item: string) => {
  const found = plan.packOut.filter((each) => each.item.startsWith(item));
  expect(found, item).toHaveLength(1);
  return found[0]!;
};

describe('drinks for four hours at 30 °C', () => {
  test('are so many of each kind', () => {
    // An adult takes 2 + 3 × 1 = 5 drinks, a child 4 × 1 = 4; on a hot day 1¼ times as many, of coffee as many.
    expect(plan.drinks?.kinds.map(({ name, drinks }) => [name, drinks])).toEqual([
      // 100 × 5 × 30 % + 20 × 4 × 37.5 % = 150 + 30 = 180; × 1¼ = 225.
      ['Pear cup', 225],
      // 100 × 5 × 20 % + 20 × 4 × 37.5 % = 100 + 30 = 130; × 1¼ = 162½.
      ['Pear soda', 163],
      // 100 × 5 × 20 % = 100, none for children; × 1¼ = 125.
      ['Pale ale', 125],
      // 100 × 5 × 10 % = 50, hot as on any day.
      ['Coffee', 50],
      // 100 × 5 × 20 % + 20 × 4 × 25 % = 100 + 20 = 120; × 1¼ = 150.
      ['Plain water', 150],
    ]);
    // 225 + 162½ + 125 + 50 + 150.
    expect(plan.drinks?.total).toBe(713);
  });

  test('are carried with a tenth more, in whole bottles', () => {
    expect(plan.drinks?.kinds.map(({ amount }) => amount.exact)).toEqual([
      '1980 fl oz', // 225 × 8 = 1,800; × 1.1
      '179 bottle', // 162½ × 1.1 = 178.75
      '138 bottle', // 125 × 1.1 = 137.5
      '440 fl oz', // 50 × 8 = 400; × 1.1
      '1320 fl oz', // 150 × 8 = 1,200; × 1.1
    ]);
    // 1,980 fl oz = 15 gal 60 fl oz; 1,320 fl oz = 10 gal 40 fl oz.
    expect(plan.drinks?.kinds[0]?.amount.printed).toBe('15 gal 1 qt 3½ cups');
    expect(plan.drinks?.kinds[4]?.amount.printed).toBe('10 gal 1 qt 1 cup');
  });

  test('are bought in whole cases, jugs and bags', () => {
    const packs = (id: string) =>
      plan.shopping
        .find(({ ingredient }) => ingredient === id)
        ?.packs.map(({ count, pack }) => `${count} × ${pack}`);
    expect(packs('pear-soda')).toEqual(['8 × 24 bottles']); // 179 ÷ 24 = 7.46
    expect(packs('pale-ale')).toEqual(['6 × 24 bottles']); // 138 ÷ 24 = 5.75
    expect(packs('pear-juice')).toEqual(['8 × 1 gal']); // half of 15.47 gal is 7.73
    expect(packs('coffee')).toEqual(['2 × 1 lb']); // 30 oz, see below
    expect(packs('milk')).toEqual(['1 × 1 gal']); // 50 × ½ fl oz × 1.1 = 27½ fl oz
  });

  test('take so much ice', () => {
    // 225 + 150 glasses × 4 oz = 1,500 oz.
    const glasses = 1500 / 16;
    // 179 + 138 bottles of 12 fl oz, from 30 °C to 40 °F = 4.444 °C.
    const kilograms = (317 * 12 * FL_OZ * 4.186 * (30 - 40 / 9)) / 333.55;
    const tubs = kilograms / LB;
    expect(tubs).toBeCloseTo(79.54, 2);
    const all = (glasses + tubs) * 1.5;
    expect(all).toBeCloseTo(259.94, 2);
    const exact = (text = '') => {
      const [n = '0', d = '1'] = (text.split(' ')[0] ?? '').split('/');
      return Number(n) / Number(d);
    };
    expect(exact(plan.drinks?.ice?.inGlasses.exact)).toBe(glasses);
    expect(exact(plan.drinks?.ice?.inTubs.exact)).toBeCloseTo(tubs, 6);
    expect(exact(plan.drinks?.ice?.total.exact)).toBeCloseTo(all, 6);
    // 259.94 ÷ 20 = 12.997.
    const bought = plan.shopping.find(({ ingredient }) => ingredient === 'bagged-ice');
    expect(bought?.packs.map(({ count, pack }) => `${count} × ${pack}`)).toEqual(['13 × 20 lb bag']);
  });

  test('stand in so many cups', () => {
    expect(line('Tumblers').count).toBe(413); // 225 + 150 = 375; × 1.1 = 412.5
    expect(line('Mugs').count).toBe(55); // 50 × 1.1
    expect(line('Plates').count).toBe(126); // 120 × 1.05
  });
});

test('all water comes from home: 29 gallons of it', () => {
  // Coffee: 440 fl oz = 3.4375 gal, 2.29 batches of 1½ gal, cooked as 2½: 30 oz of coffee and 3.75 gal of water.
  expect(plan.recipes.find(({ id }) => id === 'field-coffee')?.batches).toBe('2½');
  expect(line('Coffee').note).toBe('1 lb 14 oz, for Coffee');
  const water = plan.packOut.find(({ item }) => item === 'Water');
  expect(water?.note).toBe('3 gal 3 qt, for Coffee');
  // Two cooks for 120 ÷ 60, four servers for 120 ÷ 30. To wash hands 5 gal for 10 of them, to clean 10 gal, to drink 1 gal for 4.
  expect(
    [line('Water for washing hands'), line('Water for cleaning'), line('Drinking water')].map(
      ({ count }) => count,
    ),
  ).toEqual([3, 10, 2]);
  expect(line('Plain water').item).toContain('10 gal 1 qt 1 cup');
  expect(line('Plain water').note).toBe('filled at home: the place has no water');
  // 3.75 + 3 + 10 + 2 + 10.3125.
  expect(3.75 + 3 + 10 + 2 + 1320 / 128).toBe(29.0625);
});

test('two flames burn less than a pound and a half of gas, and take a cylinder each', () => {
  // One load of eleven pans, 30 min before 13:00, lit 15 min earlier; water boils 12:20–12:50, lit 5 min earlier.
  expect(line('Field grill').note).toBe('lit from 12:15 PM to 1:00 PM');
  expect(line('Field burner').note).toBe('lit from 12:15 PM to 12:50 PM');
  // ¾ h × 16 oz + 7/12 h × 8 oz = 16⅔ oz; × 1¼ = 20.8 oz.
  expect(line('Fuel: propane').note).toContain('burns 1 lb ⅔ oz');
  expect(line('Fuel: propane').count).toBe(2);
});

test('kit goes by its rules', () => {
  const counts = (items: readonly string[]) => items.map((item) => line(item).count);
  // Two flames, two cooks.
  expect(counts(['Fire extinguishers', 'Long lighters', 'Pairs of heat-proof gloves', 'Tongs'])).toEqual([
    2, 2, 2, 4,
  ]);
  // 1 and one for each cook; 4 for each cook; 1 for 2 cooks.
  expect(counts(['Probe thermometers', 'Kitchen towels', 'Sanitizer buckets'])).toEqual([3, 8, 1]);
  // 1½ h of set-up, 4 h of service, 1¼ h to clear = 6¾ h ÷ 2 = 3.4 rolls.
  expect(counts(['Paper towels'])).toEqual([4]);
  // 120 ÷ 50, ÷ 15, ÷ 25.
  expect(counts(['Trash bins', 'Trash bags', 'Bus tubs'])).toEqual([3, 8, 5]);
  // No water: a station for 10 staff. No cover: one for the line and one for each flame. No power: one for each cook and one.
  expect(counts(['Hand-washing stations', 'Canopies', 'Battery lamps'])).toEqual([1, 3, 3]);
});

/*
 * Lamb: 120 × 2 × 1.1 = 264 pieces, 11 pans of 24, at 12 lb ÷ 60 = 0.2 lb each. Bean salad: 120 × 3 oz × 1.1 = 396 oz =
 * 24.75 lb, at 288 fl oz ÷ 16 lb = 445.5 fl oz. A tub takes 384 × 85 % = 326.4 fl oz: 2 of salad, and 1,980 ÷ 326.4 = 6.07,
 * so 7, of pear cup.
 */
describe('food in its boxes', () => {
  test('fills five cold boxes and a crate, raw food by itself', () => {
    const food = (item: string) => plan.packOut.find((each) => each.group === 'food' && each.item === item);
    expect(food('Lamb skewers')).toMatchObject({ count: 11, raw: { mark: 'RAW' } });
    expect([food('Bean salad')?.count, food('Pear cup')?.count]).toEqual([2, 7]);
    // 11 pans at 10 to a box are 2 boxes; 2 + 7 tubs at 4 to a box are 3; coffee and its water share a crate.
    expect([line('Cold box').count, line('Crate').count]).toEqual([5, 1]);
    const raw = plan.carriers?.filter((each) => each.raw) ?? [];
    expect(raw.map(({ foods }) => foods.map(({ item, count }) => [item, count]))).toEqual([
      [['Lamb skewers', 10]],
      [['Lamb skewers', 1]],
    ]);
  });

  test('is kept cold by so much ice in each', () => {
    // Loading begins at 10:30: 13:00 less 1½ h set-up, ½ h road, ½ h loading. Lamb is needed at 12:30, the rest at 13:00.
    const ice = (hours: number, pounds: number) => {
      const walls = (1 * 30 * hours * 3600) / 334;
      const fromFood = (pounds * LB * 1000 * 0.8 * 2 * 4.186) / 334;
      return ((walls + fromFood) * 1.25) / 1000 / LB;
    };
    const cup = (tubs: number) => tubs * inPounds(326.4);
    const hands = [
      ice(2, 240 * 0.2),
      ice(2, 24 * 0.2),
      ice(2.5, 24.75 + cup(2) + inPounds(27.5)),
      ice(2.5, cup(4)),
      ice(2.5, inPounds(1980 - 6 * 326.4)),
    ];
    const cold = plan.carriers?.filter(({ hold }) => hold === 'cold') ?? [];
    expect(cold.map((each) => each.ice?.packs)).toEqual(hands.map((pounds) => Math.ceil(pounds / 3)));
    expect(hands.map((pounds) => Math.ceil(pounds / 3))).toEqual([1, 1, 2, 2, 1]);
    expect(line('Ice packs, 3 lb each').count).toBe(7);
  });
});

test('the van carries it in one run', () => {
  const boxes = 5 * 31 + 6; // cold boxes, crate
  const pans = 11 * 2 + 9 * 2; // half sheets, tubs
  const food = 264 * 0.2 + 24.75 + inPounds(1980) + inPounds(27.5);
  const packs = 7 * 3;
  // 30 oz of coffee and its 480 fl oz of water.
  const coffee = 30 / 16 + inPounds(480);
  const bottles = inPounds((179 + 138) * 12);
  const ice = 259.94;
  const water = inPounds(1320 + 15 * 128);
  const rentals = 413 * (6 / 16) + 55 * (12 / 16) + 126 * 1;
  const gear = 70 + 24 + 2 * 20;
  const all = boxes + pans + food + packs + coffee + bottles + ice + water + rentals + gear;
  expect(plan.van?.weight).toBe(`${Math.ceil(all)} lb`);
  expect(plan.van).toMatchObject({ runs: 1, payload: '2600 lb', unweighed: ['kit'] });
  expect(plan.findings).toEqual([]);
});
