import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { moneyText } from '../../../src/engine/money/money.ts';
import type { EventPlan } from '../../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { boughtPurchase, type ToBuy } from '../../../src/engine/plan/purchases/bought.ts';
import { mergedNeeds, purchaseNeeds } from '../../../src/engine/plan/purchases/needs.ts';
import { buyingRounds } from '../../../src/engine/plan/purchases/rounds.ts';
import type { StockLot } from '../../../src/engine/purchase/stock.ts';
import { allInWords, foundInWords } from '../../in-words.ts';
import { day, dish, event, food, kitchen, line, pack, prices, q, recipe, step } from './builders.ts';

const leek = food('leek', { sold: ['1 bunch = 2 lb'] });
const soup = recipe('soup', '100 servings', [line(leek, '10 lb')], {
  steps: [step('2 days before', 'Simmer.'), step('1 day before', 'Cool.')],
});
const tart = recipe('tart', '100 servings', [line(leek, '6 lb')], { steps: [step('on the day', 'Bake.')] });
const list = prices(
  pack('leek', '1 lb', '3.00'),
  pack('leek', '5 lb bag', '10.00'),
  pack('leek', '5 lb bag', '11.00', { validFrom: day('2027-06-01') }),
);
const planOf = (dishes = [soup, tart], date = '2027-05-15') =>
  planEvent(
    event(
      dishes.map((each) => dish(each, '1 serving per guest')),
      { date: day(date) },
    ),
    kitchen(),
    list,
  );
const lot = (amount: string, useBy?: string): StockLot => ({
  ingredient: 'leek',
  amount: q(amount),
  useBy: useBy === undefined ? undefined : day(useBy),
});
const needsOf = (plan: EventPlan, ...lots: StockLot[]) =>
  purchaseNeeds(plan, list, new Map([['leek', lots]]));

describe('what a plan needs of a food', () => {
  test('is all its recipes use, from the first task with it, until the last recipe is begun', () => {
    const { needs, findings } = purchaseNeeds(planOf(), list, new Map());
    expect(needs).toHaveLength(1);
    expect(needs[0]).toMatchObject({
      neededOn: '2027-05-13',
      lastUse: '2027-05-15',
      buyingDay: '2027-05-12',
    });
    expect([exactText(needs[0]!.need), needs[0]!.stock.toFraction(), needs[0]!.packs.length]).toEqual([
      '16 lb',
      '0',
      2,
    ]);
    expect(needs[0]!.listed).toHaveLength(3);
    expect(findings).toEqual([]);
    const [alone] = purchaseNeeds(
      planOf([recipe('raw', '100 servings', [line(leek, '1 lb')])]),
      list,
      new Map(),
    ).needs;
    expect(alone).toMatchObject({ neededOn: '2027-05-15', lastUse: '2027-05-15' });
  });

  test('is there for the earliest of its recipes, whichever the plan lists first', () => {
    // The tart of the day itself comes first, the soup is begun two days before.
    const [need] = purchaseNeeds(planOf([tart, soup]), list, new Map()).needs;
    expect(need).toMatchObject({ neededOn: '2027-05-13', lastUse: '2027-05-15' });
  });

  test('comes from stock as far as it keeps until the last task of a recipe', () => {
    const drawn = (...lots: StockLot[]) => {
      const { needs, rest, findings } = needsOf(planOf(), ...lots);
      const left = rest.get('leek')!.map(({ amount }) => exactText(amount));
      return [needs[0]!.stock.toFraction(), left, foundInWords(findings).map(({ what }) => what)];
    };
    expect(drawn(lot('4 lb'))).toEqual(['4', [], []]);
    expect(drawn(lot('20 lb'))).toEqual(['16', ['4 lb'], []]);
    expect(drawn(lot('3 bunches'))).toEqual(['6', [], []]);
    // Until the 14th it serves the soup alone, until the 13th nothing: the soup is cooled on the 14th.
    expect(drawn(lot('12 lb', '2027-05-14'))).toEqual([
      '10',
      ['2 lb'],
      ['2 lb of leek in stock will be past its use-by when it is needed, so fresh is bought'],
    ]);
    expect(drawn(lot('12 lb', '2027-05-13'))).toEqual([
      '0',
      ['12 lb'],
      ['12 lb of leek in stock will be past its use-by when it is needed, so fresh is bought'],
    ]);
    expect(drawn(lot('12 lb', '2027-05-15'))).toEqual(['12', [], []]);
    expect(drawn(lot('3 each'))).toEqual([
      '0',
      ['3 each'],
      ['3 each of leek in stock is not counted; there is no conversion to lb'],
    ]);
  });

  test('leaves stock of other foods alone', () => {
    const { rest } = purchaseNeeds(planOf(), list, new Map([['salt', [lot('1 lb')]]]));
    expect([...rest.keys()]).toEqual(['salt']);
  });
});

describe('needs of several events', () => {
  const [first] = purchaseNeeds(planOf(), list, new Map([['leek', [lot('4 lb')]]])).needs;
  const [second] = purchaseNeeds(planOf([tart], '2027-05-20'), list, new Map()).needs;

  test('are added up in the unit of the first, from the first day to the last', () => {
    for (const both of [
      [first!, second!],
      [second!, first!],
    ]) {
      const [merged, ...others] = mergedNeeds(both);
      expect(others).toEqual([]);
      expect(merged).toMatchObject({ neededOn: '2027-05-13', lastUse: '2027-05-20' });
      expect([exactText(merged!.need), merged!.stock.toFraction(), merged!.usedBy.length]).toEqual([
        '22 lb',
        '4',
        3,
      ]);
    }
    const bunches = { ...second!, need: q('3 bunches'), stock: new Fraction(1) };
    const [inPounds] = mergedNeeds([first!, bunches]);
    expect([exactText(inPounds!.need), inPounds!.stock.toFraction()]).toEqual(['22 lb', '6']);
  });

  test('stay apart where they are of other foods, or in a unit that leads nowhere', () => {
    const salt = { ...second!, ingredient: food('salt') };
    expect(mergedNeeds([first!, salt])).toEqual([first, salt]);
    const pieces = { ...second!, need: q('3 each') };
    expect(mergedNeeds([first!, pieces])).toEqual([first, pieces]);
  });

  test('are bought together while the food keeps from the first use to the last, else in rounds', () => {
    const keeping = (keepsDays: number | undefined) =>
      buyingRounds(
        [second!, first!].map((each) => ({ ...each, ingredient: { ...each.ingredient, keepsDays } })),
      ).map((round) => round.map(({ neededOn }) => neededOn));
    // From the 13th, when the first is needed, to the 20th: seven days.
    expect(keeping(7)).toEqual([['2027-05-13', '2027-05-20']]);
    expect(keeping(6)).toEqual([['2027-05-13'], ['2027-05-20']]);
  });
});

describe('what is bought of a food', () => {
  const [small, bag] = list.get('leek')!;
  const toBuy = (facts: Partial<ToBuy> = {}): ToBuy => ({
    ingredient: leek,
    need: q('16 lb'),
    usedBy: [
      { recipe: 'soup', need: q('10 lb'), why: [] },
      { recipe: 'tart', need: q('6 lb'), why: [] },
    ],
    stock: new Fraction(0n),
    lines: [
      { pack: bag!, count: 3 },
      { pack: small!, count: 2 },
    ],
    reason: 'because',
    offered: [small!, bag!],
    ...facts,
  });
  const sums = (facts: Partial<ToBuy> = {}) => {
    const made = boughtPurchase(toBuy(facts), { currency: 'USD', locale: 'en-US' } as never);
    const text = (sum: typeof made.cost) => sum && moneyText(sum);
    return {
      bought: made.bought && exactText(made.bought),
      left: made.left && exactText(made.left),
      stock: made.stock && exactText(made.stock),
      cost: text(made.cost),
      used: made.used?.amount.toFixed(4) ?? null,
      leftWorth: text(made.leftWorth),
      why: allInWords(made.why),
    };
  };

  test('costs its packs, and what is used and left over goes by their rate', () => {
    // 3 × 10.00 + 2 × 3.00 = 36.00 for 17 lb.
    expect(sums()).toEqual({
      bought: '17 lb',
      left: '1 lb',
      stock: null,
      cost: '36.00',
      used: '33.8824',
      leftWorth: '2.12',
      why: [
        '10 lb + 6 lb = 16 lb',
        '3 × 5 lb bag from quay at $10.00 = $30.00',
        '2 × 1 lb from quay at $3.00 = $6.00',
        'because',
        '17 lb − 16 lb = 1 lb left over, worth $2.12 at pack prices',
      ],
    });
  });

  test('is less what is in stock', () => {
    const less = sums({ stock: new Fraction(2), lines: [{ pack: bag!, count: 3 }] });
    expect(less).toMatchObject({
      bought: '15 lb',
      left: '1 lb',
      stock: '2 lb',
      cost: '30.00',
      leftWorth: '2.00',
    });
    expect(less.used).toBe('32.0000');
    expect(less.why.slice(0, 2)).toEqual(['10 lb + 6 lb = 16 lb', '16 lb − 2 lb in stock = 14 lb to buy']);
  });

  test('is nothing where stock covers it, valued at the lowest rate on offer, and unknown where no pack is', () => {
    expect(sums({ stock: new Fraction(16), lines: [] })).toMatchObject({
      bought: '0 lb',
      left: null,
      cost: '0.00',
      used: '32.0000',
      leftWorth: null,
    });
    expect(sums({ stock: new Fraction(16), lines: [], offered: [] }).used).toBeNull();
    expect(sums({ lines: [] })).toMatchObject({ bought: null, cost: null, used: null });
    expect(sums({ stock: new Fraction(15), lines: [] })).toMatchObject({
      bought: null,
      cost: null,
      used: null,
    });
  });

  test('tells nothing of left over worth where nothing is left, nor of sums of one use', () => {
    const one = [{ recipe: 'soup', need: q('15 lb'), why: [] }];
    expect(sums({ need: q('15 lb'), usedBy: one, lines: [{ pack: bag!, count: 3 }] }).why).toEqual([
      '3 × 5 lb bag from quay at $10.00 = $30.00',
      'because',
      '15 lb − 15 lb = 0 lb left over',
    ]);
  });
});
