import { describe, expect, test } from 'vitest';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import { Decimal, ZERO } from '../../../src/engine/money/decimal.ts';
import { moneyText } from '../../../src/engine/money/money.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { packFindings } from '../../../src/engine/plan/purchases/findings.ts';
import { purchaseNeeds } from '../../../src/engine/plan/purchases/needs.ts';
import { type OrderSetting, placedOrder } from '../../../src/engine/plan/purchases/ordered.ts';
import type { PricedPack, Supplier } from '../../../src/engine/purchase/price-list.ts';
import type { SettledOrder } from '../../../src/engine/purchase/settle-order.ts';
import { allInWords, foundInWords } from '../../in-words.ts';
import { day, dish, event, food, kitchen, line, pack, prices, q, recipe, step } from './builders.ts';

const dollars = { currency: 'USD', locale: 'en-US' };

const supplier = (id: string, facts: Partial<Supplier> = {}): [string, Supplier] => [
  id,
  {
    id,
    name: id.toUpperCase(),
    leadDays: 1,
    deliveryDays: [],
    minimumOrder: '0',
    deliveryFee: '0',
    ...facts,
  },
];

type Bought = readonly (readonly [pack: PricedPack, count: number])[];

/** The order for 100 guests who need 10 lb of a food, settled as said; the food is cooked on the day before. */
function placed(
  facts: Parameters<typeof food>[1],
  offered: readonly PricedPack[],
  bought: Bought,
  settled: Partial<SettledOrder & { toppedUp: boolean }> = {},
  setting: Partial<OrderSetting> = {},
) {
  const farro: Ingredient = food('farro', facts);
  const pot = recipe('pot', '100 servings', [line(farro, '10 lb')], {
    steps: [step('1 day before', 'Boil.')],
  });
  const list = prices(...offered);
  const { needs } = purchaseNeeds(
    planEvent(event([dish(pot, '1 serving per guest')]), kitchen(), list),
    list,
    new Map(),
  );
  const { toppedUp = false, ...rest } = settled;
  const lines = bought.map(([each, count]) => ({ pack: each, count }));
  return placedOrder(
    needs,
    {
      foods: [{ ingredient: 'farro', unit: 'lb', lines, toppedUp }],
      below: [],
      belowProven: true,
      gap: ZERO,
      ...rest,
    },
    {
      suppliers: new Map([supplier('quay'), supplier('hill')]),
      kitchen: dollars,
      today: day('2027-04-01'),
      ...setting,
    },
  );
}

const bag = pack('farro', '10 lb bag', '12.00');
const sack = pack('farro', '25 lb sack', '27.00', { supplier: 'hill' });
const told = ({ findings }: ReturnType<typeof placed>) =>
  foundInWords(findings).map(({ about, what }) => `${about}: ${what}`);

describe('what is told of an order', () => {
  test('is nothing where it is proven the best, in time, and enough for every minimum', () => {
    expect(told(placed({ storage: 'dry' }, [bag, sack], [[bag, 1]]))).toEqual([]);
  });

  test('is by how much a better one may undercut it, never less than that and never nothing', () => {
    const gap = (steps: string) =>
      told(placed({ storage: 'dry' }, [bag, sack], [[bag, 1]], { gap: new Decimal(steps) }));
    const most = (sum: string) => [
      `orders: there may be a cheaper order, by at most ${sum}; the search stopped at its limit`,
    ];
    expect(gap('0.37')).toEqual(most('$0.37'));
    expect(gap('0.001')).toEqual(most('$0.01'));
    expect(gap('1.2301')).toEqual(most('$1.24'));
    const choice = { lines: [{ pack: bag, count: 1 }], pinnedMissing: false, unreachable: [] };
    const mix = packFindings(
      food('farro'),
      q('10 lb'),
      [bag],
      { ...choice, gap: new Decimal('0.004') } as never,
      day('2027-05-12'),
      dollars,
    );
    expect(foundInWords(mix).map(({ what }) => what)).toEqual([
      'there may be a cheaper mix of packs, by at most $0.01',
    ]);
  });

  test('is which supplier falls short of its minimum, and whether any order could reach them all', () => {
    const setting = { suppliers: new Map([supplier('quay', { minimumOrder: '50' }), supplier('hill')]) };
    const short = (belowProven: boolean) =>
      told(placed({ storage: 'dry' }, [bag], [[bag, 1]], { below: ['quay'], belowProven }, setting));
    expect(short(true)).toEqual([
      'quay: the order from QUAY comes to 12.00, 38.00 below its minimum order of 50.00; no order of what is needed or will keep reaches all minimum orders',
    ]);
    expect(short(false)[0]).toMatch(/; no order was found that reaches all minimum orders$/);
  });

  test('is what was bought beyond the need to reach a minimum, and from whom', () => {
    const order = placed(
      { storage: 'dry' },
      [bag, sack],
      [
        [bag, 1],
        [sack, 1],
      ],
      { toppedUp: true },
    );
    expect(told(order)).toEqual([
      'farro: more is bought than needed so that the order from HILL and QUAY reaches its minimum',
    ]);
    expect(allInWords(order.purchases[0]?.why)).toContain(
      'more than needed, to reach a minimum order; it keeps',
    );
  });

  test('is that the last day to order is past, until the day on which the food is needed', () => {
    const on = (today: string) =>
      told(placed({ storage: 'dry' }, [bag], [[bag, 1]], {}, { today: day(today) }));
    // Needed on the 14th, delivered that day, ordered by the 13th.
    expect(on('2027-05-13')).toEqual([]);
    expect(on('2027-05-14')).toEqual([
      'quay: to arrive in time for Friday, May 14, 2027, the order from QUAY had to go out by Thursday, May 13, 2027 (delivery on Friday, May 14, 2027), and that date has passed',
    ]);
    expect(on('2027-05-15')).toEqual([]);
  });

  test('is that food would not keep from its delivery to its last use, in days as people count them', () => {
    // Delivered on Thursdays alone: the 13th, for the 14th.
    const thursdays = { suppliers: new Map([supplier('quay', { deliveryDays: [4] })]) };
    const keeping = (keepsDays: number) =>
      told(placed({ storage: 'chilled', keepsDays }, [bag], [[bag, 1]], {}, thursdays));
    expect(keeping(1)).toEqual([]);
    expect(keeping(0)).toEqual([
      'farro: farro, delivered on Thursday, May 13, 2027, keeps 0 days, but is still needed on Friday, May 14, 2027',
    ]);
    const fromHill = placed(
      { storage: 'chilled', keepsDays: 0 },
      [bag, sack],
      [[sack, 1]],
      {},
      {
        suppliers: new Map([supplier('quay', { deliveryDays: [4] }), supplier('hill')]),
      },
    );
    expect(told(fromHill)).toEqual([]);
  });
});

describe('why these packs', () => {
  const reason = (order: ReturnType<typeof placed>) => allInWords(order.purchases[0]?.why).at(-2);

  test('is that the ingredient requires them, that there is no other, or the whole order', () => {
    const pinned = { pinned: { supplier: 'quay', pack: '10 lb bag' }, storage: 'dry' } as const;
    expect(reason(placed(pinned, [bag, sack], [[bag, 1]]))).toBe('the ingredient requires this pack');
    expect(
      reason(
        placed(
          pinned,
          [bag, sack],
          [
            [bag, 1],
            [sack, 1],
          ],
        ),
      ),
    ).toMatch(/^chosen from 2 packs/);
    expect(reason(placed({ storage: 'dry' }, [bag], [[bag, 1]]))).toBe('the only pack available');
    const ofTwo = 'chosen from 2 packs as part of the cheapest total order, with fees and minimum orders';
    expect(reason(placed({ storage: 'dry' }, [bag, sack], [[bag, 1]]))).toBe(ofTwo);
    expect(reason(placed({ storage: 'chilled', keepsDays: 3 }, [bag, sack], [[bag, 1]]))).toBe(
      `${ofTwo}; leftovers would spoil, so the smallest pack that will do was chosen`,
    );
  });
});

describe('what an order costs', () => {
  test('is goods and fees apart, and nothing is known while a food has no pack', () => {
    const fees = {
      suppliers: new Map([supplier('quay', { deliveryFee: '7.50' }), supplier('hill', { deliveryFee: '9' })]),
    };
    const order = placed(
      { storage: 'dry' },
      [bag, sack],
      [
        [bag, 1],
        [sack, 1],
      ],
      {},
      fees,
    );
    expect([order.goods, order.fees].map((each) => each && moneyText(each))).toEqual(['39.00', '16.50']);
    // 39.00 for 35 lb, of which 10 lb are used: 11.142857…
    expect(order.used && moneyText(order.used)).toBe('11.14');
    const none = placed({ storage: 'dry' }, [], []);
    expect([none.goods, none.used]).toEqual([null, null]);
  });
});

describe('an order of two foods from two suppliers', () => {
  const leek = food('leek', { storage: 'chilled', keepsDays: 1 });
  const farro = food('farro', { storage: 'dry' });
  const leeks = pack('leek', '5 lb box', '9.00', { supplier: 'hill' });
  const pot = recipe('pot', '100 servings', [line(farro, '10 lb'), line(leek, '5 lb')], {
    steps: [step('on the day', 'Boil.')],
  });
  const list = prices(bag, leeks);
  const setting = {
    suppliers: new Map([supplier('quay'), supplier('hill', { deliveryDays: [4] })]),
    kitchen: dollars,
    today: day('2027-04-01'),
  };
  const order = () => {
    const plan = planEvent(event([dish(pot, '1 serving per guest')]), kitchen(), list);
    return placedOrder(
      purchaseNeeds(plan, list, new Map()).needs,
      {
        foods: [
          { ingredient: 'leek', unit: 'lb', lines: [{ pack: leeks, count: 1 }], toppedUp: false },
          { ingredient: 'farro', unit: 'lb', lines: [{ pack: bag, count: 61 }], toppedUp: true },
        ],
        below: [],
        belowProven: true,
        gap: ZERO,
      },
      setting,
    );
  };

  test('gives each food its own packs', () => {
    const packs = order().purchases.map(({ ingredient, packs: bought }) => [
      ingredient.id,
      ...bought.map(({ pack: each, count }) => `${count} × ${each.packText}`),
    ]);
    expect(packs).toEqual([
      ['farro', '61 × 10 lb bag'],
      ['leek', '1 × 5 lb box'],
    ]);
  });

  test('names the supplier whose minimum a food fills up, the food that does not keep, and the pack of a long line', () => {
    // The boxes come on Thursday the 13th and keep one day; they are cooked on the 15th.
    expect(foundInWords(order().findings)).toEqual([
      expect.objectContaining({ about: 'farro', what: expect.stringMatching(/^61 packs of one kind/) }),
      {
        about: 'farro',
        what: 'more is bought than needed so that the order from QUAY reaches its minimum',
        wayOut: 'add it to stock.csv when it arrives, or order something else you need instead',
      },
      {
        about: 'leek',
        what: 'leek, delivered on Thursday, May 13, 2027, keeps 1 day, but is still needed on Saturday, May 15, 2027',
        wayOut: 'have it delivered on Friday, May 14, 2027 or later',
      },
    ]);
  });
});
