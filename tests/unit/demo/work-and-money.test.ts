/*
 * Batches, hours, the day's clock and the owner's money of the demo's events, worked by hand from its content files:
 * every sum stands in the comment above what it is compared with.
 */
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { brandView } from '../../../src/views/brand/brand-view-of.ts';
import type { OwnerMoneyView } from '../../../src/views/kitchen/owner-money.ts';
import { ownerMoneyView } from '../../../src/views/kitchen/owner-money-of.ts';
import { plannedEvents } from '../../../src/views/kitchen/planned-event.ts';
import { day, must } from '../offers/second-kitchen.ts';

const EVENTS = ['farrowick-wedding', 'brindlemoor-naming-day', 'weir-crew-supper'] as const;
const content = join(fileURLToPath(new URL('../../..', import.meta.url)), 'content');
const plans = new Map<string, PrepPlanDocument>();
const moneys = new Map<string, OwnerMoneyView>();

beforeAll(async () => {
  const { book } = await readBook(content);
  if (!book) throw new Error('the demo’s content cannot be read');
  const brand = brandView(book.kitchen, book.kitchen);
  for (const { id, offer, plan, side } of await plannedEvents(book, EVENTS, day('2027-04-26'))) {
    plans.set(id, must(plan));
    moneys.set(id, ownerMoneyView(book, side!, offer.terms, brand, null));
  }
});

const batches = (event: string, ...ids: string[]) =>
  ids.map((id) => {
    const { need, batches: cooked, makes } = plans.get(event)!.recipes.find((each) => each.id === id)!;
    return [id, need.exact, cooked, makes.exact];
  });
const workOn = (event: string, date: string) => {
  const { handsOn, tasks } = plans.get(event)!.days.find((each) => each.date === date)!;
  const minutes = new Map<string, number>();
  for (const { recipe, handsOnMinutes } of tasks)
    minutes.set(recipe, (minutes.get(recipe) ?? 0) + handsOnMinutes);
  return { handsOn, minutes: Object.fromEntries(minutes) };
};
const clock = (event: string) =>
  plans.get(event)!.timeline.map(({ part, begins, ends }) => `${part} ${begins}${ends && `–${ends}`}`);
/** What goes on the van besides food, by its group. */
const packed = (event: string, group: string) =>
  plans
    .get(event)!
    .packOut.filter((each) => each.group === group)
    .map(({ item, count }) => `${count} ${item}`);
/** Costs by label without those of food, which is whole packs of dozens of foods, and the sums at the end. */
const money = (event: string) => {
  const { costs, earned, spent, margin } = moneys.get(event)!;
  return {
    costs: costs.filter(({ label }) => !label.startsWith('Food')).map(({ label, amount }) => [label, amount]),
    food: costs.find(({ label }) => label.startsWith('Food'))?.amount,
    sums: [earned, spent, margin],
  };
};

describe('the wedding of 84 adults, 6 children and 4 vendors', () => {
  const event = 'farrowick-wedding';

  test('has its stock summed over what it goes into before it is rounded to half batches', () => {
    expect(
      batches(event, 'braised-lamb', 'slow-tomato-sauce', 'barley-with-mushrooms', 'vegetable-stock'),
    ).toEqual([
      // 46 lambs × 1.03 = 47.38, up to 48 servings; 40 in a batch: 48 ÷ 40 = 1.2, as it is.
      ['braised-lamb', '48 serving', '1.2', '48 serving'],
      // A gallon to a batch of lamb: 1.2 gal; a batch is 1 gal, in halves: 1½.
      ['slow-tomato-sauce', '6/5 gal', '1½', '3/2 gal'],
      // 17 barleys, 2 of them vegan and made apart: 15 × 1.03 = 15.45, up to 16; 32 in a batch: ½.
      ['barley-with-mushrooms', '16 serving', '½', '16 serving'],
      // 1½ batches of sauce × 1½ qt = 2¼ qt; ½ batch of barley × 6 qt = 3 qt; the vegans' 2 × 1.03 = 2.06, up to 3 of
      // 32 servings, × 6 qt = 9/16 qt. 2¼ + 3 + 9/16 = 93/16 qt; 6 qt in a batch: 0.97, in halves: 1.
      ['vegetable-stock', '93/16 qt', '1', '6 qt'],
    ]);
  });

  test('takes a quarter and an hour of hands three days before, and browns 1.2 batches of lamb', () => {
    // Stock 25 + 5 + 20, spice 15 + 10.
    expect(workOn(event, '2027-05-12')).toEqual({
      handsOn: '1 h 15 min',
      minutes: { 'vegetable-stock': 50, 'seed-and-smoke-spice': 25 },
    });
    // 55 min for a batch of lamb, × 1.2 = 66; then 40.
    expect(workOn(event, '2027-05-14').minutes['braised-lamb']).toBe(106);
  });

  test('is worked back from 18:00', () => {
    // Set up for 1 h 30, 20 min on the road, 30 to load, 60 to pack; served for 5 h, cleared in 1 h 15, unloaded in 30.
    expect(clock(event)).toEqual([
      expect.stringMatching(/^cook \d\d:\d\d–15:40$/),
      'pack 14:40–15:40',
      'load 15:40–16:10',
      'leave 16:10',
      'arrive 16:30',
      'set up 16:30–18:00',
      'finish 16:55–19:10',
      'serve 18:00–23:00',
      'course 18:00–18:30',
      // As the package states them: 30, 55 and 95 minutes after the first.
      'course 18:30–18:50',
      'course 18:55–19:25',
      'course 18:55–19:25',
      'course 19:35–20:00',
      'clear 23:00–00:15',
      'done 00:15',
      'back 00:35',
      'unload 00:35–01:05',
    ]);
  });

  test('has kit by the rules of the usual kit and its own', () => {
    const kit = packed(event, 'kit');
    // Two field ovens are brought and burn, and so does one burner: 2 + 1 extinguishers, 3 lighters. 3 cooks.
    expect(kit).toContain('3 Fire extinguishers');
    expect(kit).toContain('3 Long lighters');
    expect(kit).toContain('4 Probe thermometers'); // 1 + 3
    // From 16:30 until 00:15 are 7¾ h, ÷ 2 = 3.875; 90 at the table ÷ 15 = 6, ÷ 50 = 1.8.
    expect(kit).toContain('4 Paper towels');
    expect(kit).toContain('6 Trash bags');
    expect(kit).toContain('2 Trash bins');
    // 14 steps to the hall, which has water and a roof; two ovens are plugged in.
    expect(kit).toContain('2 Pairs of carrying straps');
    expect(kit).toContain('2 Outdoor extension cords, heavy gauge');
    expect(kit.filter((item) => /Canop|Water|Cutting boards/.test(item))).toEqual([]);
  });

  test('has plates, glasses and people by their ratios, with spares', () => {
    expect(packed(event, 'service ware').slice(-5)).toEqual([
      '99 Dinner plates', // 94 × 1 × 1.05 = 98.7
      '198 Side plates', // 94 × 2 × 1.05 = 197.4
      '99 Cutlery sets',
      '104 Cotton napkins', // 94 × 1.1 = 103.4
      '104 Water glasses',
    ]);
    // Of 90 at the table: 1 for 120, 1 for 35, 1 for 15. The proposal says 9 staff meals; 4 vendors are paid for.
    expect(packed(event, 'staff')).toEqual([
      '1 Event captain',
      '3 Cooks on site',
      '6 Servers',
      '9 Staff meals',
      '4 Vendor meals',
    ]);
  });

  test('leaves its owner what is earned less packs, fees, pay, the way and the cart', () => {
    expect(money(event)).toEqual({
      costs: [
        ['Delivery fees of suppliers', '$55.00'], // 25 + 0 + 30
        // 15:40 to 01:05 is 9 h 25; servers come when the truck is there, 16:30, and go at 00:15: 7 h 45.
        ['Event captain, pay', '$320.17'], // 1 × 9 h 25 × 34
        ['Cooks on site, pay', '$847.50'], // 3 × 9 h 25 × 30
        ['Servers, pay', '$1,116.00'], // 6 × 7 h 45 × 24
        // 1 h 15 + 4 h 20 + 8 h 16 + 13 h 36 = 27 h 27, of which 3 h 56 at serving: 23 h 31, and 1 h to pack: × 23
        ['Preparation and packing in the kitchen', '$563.88'],
        // By the cooks of its days, its share of Saturday with it: 36 h 19 there, 24 h 31 of it the above; 11 h 48 × 23.
        ['Kitchen crew between tasks', '$271.40'],
        ['Delivery to Maren Falls, cost', '$38.00'],
        ['Espresso cart with a barista, cost', '$369.00'], // 90 × 4.10
      ],
      food: '$1,582.95',
      // 7573.58 − 353.18 of tax; 55 + 320.17 + 847.50 + 1116 + 563.88 + 271.40 + 38 + 369 = 3580.95, + 1582.95 = 5163.90.
      sums: ['$7,220.40', '$5,163.90', '$2,056.50'],
    });
  });
});

describe('the naming day of 58 adults, 14 children and 2 vendors', () => {
  const event = 'brindlemoor-naming-day';

  test('has three pans of frittata, and patties as many as it needs', () => {
    expect(batches(event, 'leek-frittata', 'sage-pork-patties', 'potato-rolls')).toEqual([
      // 74 × 1.08 = 79.92, up to 80 pieces; 30 in a batch: 2.67, in halves: 3, which is 90.
      ['leek-frittata', '80 piece', '3', '90 piece'],
      // 160 pieces ÷ 120.
      ['sage-pork-patties', '160 piece', '1.33', '160 piece'],
      // 74 less 2 who get theirs without milk: 72 × 1.08 = 77.76, up to 78; 48 in a batch, whole: 2.
      ['potato-rolls', '78 piece', '2', '96 piece'],
    ]);
  });

  test('takes five hours and 13 minutes of hands the day before', () => {
    // Frittata 35; patties 30 and 40 × 1⅓ = 53⅓, up to 54; oat bake 45; yogurt 45; polenta 20 + ½ of 10; rolls 2 × (15 + 20), those
    // without milk a quarter of both, up to 4 + 5.
    expect(workOn(event, '2027-05-15')).toEqual({
      handsOn: '5 h 13 min',
      minutes: {
        'leek-frittata': 35,
        'sage-pork-patties': 84,
        'apple-oat-bake': 45,
        'yogurt-pots': 45,
        'polenta-squares': 25,
        'potato-rolls': 70,
        'potato-rolls--oat-drink-for-milk--olive-oil-for-butter': 9,
      },
    });
  });

  test('is worked back from 10:00', () => {
    // 15 min on the road; served for 3 h.
    expect(clock(event)).toEqual([
      expect.stringMatching(/^cook \d\d:\d\d–07:45$/),
      'pack 06:45–07:45',
      'load 07:45–08:15',
      'leave 08:15',
      'arrive 08:30',
      'set up 08:30–10:00',
      // 45 min hands-on within the 40 min that the longest of it takes.
      'finish 09:20–10:00',
      'serve 10:00–13:00',
      'clear 13:00–14:15',
      // The milk for the coffee leaves the cold when its pitchers are filled, at 09:55; the code gives it 4 h.
      'discard 13:55',
      'done 14:15',
      'back 14:30',
      'unload 14:30–15:00',
    ]);
  });

  test('has spoons by fifty guests and not by the head', () => {
    // 74 ÷ 50 × 6 = 8.88; plates 74 × 1.05 = 77.7.
    expect(packed(event, 'service ware')).toEqual(
      expect.arrayContaining(['9 Serving spoons', '78 Dinner plates']),
    );
  });

  test('leaves its owner what is earned less packs, fees, pay and the way', () => {
    expect(money(event)).toEqual({
      costs: [
        ['Delivery fees of suppliers', '$55.00'], // 25 + 0 + 30
        // 07:45 to 15:00 is 7 h 15; servers from 08:30 to 14:15, 5 h 45.
        ['Event captain, pay', '$246.50'], // 1 × 7 h 15 × 34
        ['Cooks on site, pay', '$435.00'], // 2 × 7 h 15 × 30
        ['Servers, pay', '$414.00'], // 3 × 5 h 45 × 24
        // 10 min + 5 h 13 + 3 h 20 = 8 h 43, of which 50 min at serving (15 + 15 + 10 + 5 + 5): 7 h 53, and 1 h to pack:
        // 8 h 53 × 23 = 204.317
        ['Preparation and packing in the kitchen', '$204.32'],
        // 14 h 32 there, 8 h 53 of it the above: 5 h 39 × 23 = 129.95
        ['Kitchen crew between tasks', '$129.95'],
        ['Delivery to Maren Falls, cost', '$38.00'],
      ],
      food: '$725.40',
      // 2767.67 − 124.87 of tax; 55 + 246.50 + 435 + 414 + 204.32 + 129.95 + 38 = 1522.77, + 725.40 = 2248.17.
      sums: ['$2,642.80', '$2,248.17', '$394.63'],
    });
  });
});

describe('the crew’s supper of 128 adults and 3 vendors', () => {
  const event = 'weir-crew-supper';

  test('has whole tortes, and duck as much as it needs', () => {
    expect(batches(event, 'chocolate-olive-oil-torte', 'duck-legs-cherries')).toEqual([
      // 131 × 1.06 = 138.86, up to 139 pieces; 12 in a batch: 11.58, whole: 12.
      ['chocolate-olive-oil-torte', '139 piece', '12', '144 piece'],
      // 93 ÷ 40 = 2.325.
      ['duck-legs-cherries', '93 piece', '2.33', '93 piece'],
    ]);
  });

  test('takes three hours and 50 minutes of hands two days before, and three for the tortes on the next', () => {
    // Onions 30 + 15; crispbread 12 and 8 for each of 5 batches; duck 30; pears 40 + 15.
    expect(workOn(event, '2027-06-03')).toEqual({
      handsOn: '3 h 50 min',
      minutes: {
        'pickled-red-onions': 45,
        'seeded-crispbread': 100,
        'duck-legs-cherries': 30,
        'pears-in-cider': 55,
      },
    });
    // 12 × 15 + 10.
    expect(workOn(event, '2027-06-04').minutes['chocolate-olive-oil-torte']).toBe(190);
  });

  test('is worked back from 19:00, into the night', () => {
    // 50 min on the road; served for 5 h; toasts at 35 min a batch, × 2.02 = 71 min, for the cooks that the offer sells;
    // the duck goes out in waves from 45 minutes after the first plate.
    expect(clock(event)).toEqual([
      expect.stringMatching(/^cook \d\d:\d\d–15:55$/),
      'pack 15:10–16:10',
      'load 16:10–16:40',
      'leave 16:40',
      'arrive 17:30',
      'set up 17:30–19:00',
      'finish 18:11–20:07',
      'serve 19:00–00:00',
      'clear 00:00–01:15',
      'done 01:15',
      'back 02:05',
      'unload 02:05–02:35',
    ]);
    expect(
      plans
        .get(event)!
        .timeline.slice(-4)
        .map(({ date }) => date),
    ).toEqual(['2027-06-06', '2027-06-06', '2027-06-06', '2027-06-06']);
  });

  test('has a set of bowls for every ten guests', () => {
    // 131 ÷ 10 × 1.05 = 13.755.
    expect(packed(event, 'service ware')).toContain('14 Sets of table bowls and spoons');
    expect(packed(event, 'add-ons')).toEqual(['1 Late fruit tables']);
  });

  test('leaves its owner what is earned less packs, fees, pay and the way', () => {
    expect(money(event)).toEqual({
      costs: [
        ['Delivery fees of suppliers', '$55.00'], // 25 + 0 + 30
        // 16:10 to 02:35 is 10 h 25; servers from 17:30 to 01:15, 7 h 45.
        ['Event captain, pay', '$708.33'], // 2 × 10 h 25 × 34
        ['Cooks on site, pay', '$937.50'], // 3 × 10 h 25 × 30
        ['Servers, pay', '$1,302.00'], // 7 × 7 h 45 × 24
        // 1 h 15 + 3 h 50 + 9 h 05 + 9 h 47 = 23 h 57, of which 2 h 5 at serving: 21 h 52, and 1 h to pack: × 23
        ['Preparation and packing in the kitchen', '$525.93'],
        // 27 h 32 there, 22 h 52 of it the above: 4 h 40 × 23 = 107.333
        ['Kitchen crew between tasks', '$107.33'],
        ['Delivery to Upper Lock, cost', '$72.00'],
      ],
      food: '$1,683.65',
      // 8281.98 − 337.76 of tax; 55 + 708.33 + 937.50 + 1302 + 525.93 + 107.33 + 72 = 3708.09, + 1683.65 = 5391.74.
      sums: ['$7,944.22', '$5,391.74', '$2,552.48'],
    });
  });
});
