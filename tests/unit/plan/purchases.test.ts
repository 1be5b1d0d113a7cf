import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { roundBatches } from '../../../src/engine/food/batches.ts';
import { explode } from '../../../src/engine/food/explode.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { RecipeLine } from '../../../src/engine/food/recipe.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { moneyText } from '../../../src/engine/money/money.ts';
import { buyingUnit, planPurchases } from '../../../src/engine/plan/purchases/purchases.ts';
import { usesIn } from '../../../src/engine/plan/purchases/uses.ts';
import { packsOn } from '../../../src/engine/purchase/packs-on.ts';
import type { PriceList } from '../../../src/engine/purchase/price-list.ts';
import { allInWords, foundInWords } from '../../in-words.ts';
import { day, food, line, pack, prices, q, recipe } from './builders.ts';

const ON = day('2027-05-12');
const KITCHEN = { currency: 'USD', locale: 'en-US' } as Parameters<typeof planPurchases>[3];
const usesOf = (...lines: RecipeLine[]) => {
  const of = recipe('soup', '1 serving', lines, { name: 'Leek soup' });
  return explode([{ recipe: of, need: q('1 serving'), by: 'Soup' }], roundBatches).ingredients;
};
const bought = (list: PriceList, ...lines: RecipeLine[]) =>
  planPurchases(usesOf(...lines), list, ON, KITCHEN);

describe('the unit that a food is bought in', () => {
  const leek = food('leek', { sold: ['1 bunch = 2 lb'] });
  const unitOf = (of: Ingredient, list: PriceList, amount: string) =>
    buyingUnit(of, packsOn(list.get(of.id) ?? [], ON), usesOf(line(of, amount)).get(of.id)!.uses);
  const list = prices(
    pack('leek', '10 each', '4.00'),
    pack('leek', '5 bunches', '9.00'),
    pack('leek', '5 lb', '7.00'),
  );

  test('is that of the first pack that its first use leads to', () => {
    expect(unitOf(leek, list, '3 lb')).toBe('bunch');
    expect(unitOf(leek, list, '3 each')).toBe('each');
  });

  test('is that of the pack to buy where one is named, and its own where no pack is in reach', () => {
    const pinned = { ...leek, pinned: { supplier: 'quay', pack: '5 lb' } };
    expect(unitOf(pinned, list, '3 bunches')).toBe('lb');
    expect(unitOf(pinned, list, '3 each')).toBe('each');
    expect(unitOf(leek, prices(), '3 oz')).toBe('oz');
    expect(unitOf(food('leek'), prices(pack('leek', '1 tray', '4.00')), '3 oz')).toBe('oz');
    expect(() => buyingUnit(leek, [], [])).toThrow('nothing uses leek');
  });
});

describe('what is bought for all recipes', () => {
  const onion = food('onion', { name: 'Onions', yield: new Fraction('4/5') });
  const zest = food('apple', { name: 'Zesty apples' });
  const water = food('water', { name: 'Water', from: ['water'] });
  const list = prices(
    pack('onion', '1 lb', '1.00'),
    pack('onion', '5 lb', '4.00'),
    pack('apple', '1 lb', '2.00'),
  );

  test('is each food once, summed as purchased, in the cheapest whole packs, by name', () => {
    const { purchases, findings, complete } = bought(
      list,
      line(zest, '1/2 lb'),
      line(onion, '4 lb', 'peeled'),
      line(water, '1 gal'),
      line(onion, '16 oz', 'as purchased'),
    );
    expect([findings, complete]).toEqual([[], true]);
    expect(
      purchases.map(({ ingredient, need, packs, cost, left }) => [
        ingredient.name,
        exactText(need),
        packs.map(({ pack: { packText }, count }) => `${count} × ${packText}`),
        cost && moneyText(cost),
        left && exactText(left),
      ]),
    ).toEqual([
      // 4 ÷ 80 % = 5 lb, and one as bought.
      ['Onions', '6 lb', ['1 × 1 lb', '1 × 5 lb'], '5.00', '0 lb'],
      ['Zesty apples', '1/2 lb', ['1 × 1 lb'], '2.00', '1/2 lb'],
    ]);
  });

  test('has tap water only where a list offers it, and foods of one name by their ids', () => {
    const offered = bought(prices(pack('water', '1 gal', '1.00')), line(water, '1 gal'));
    expect(offered.purchases.map(({ ingredient: { id } }) => id)).toEqual(['water']);
    expect(bought(list, line(water, '1 gal'))).toEqual({ purchases: [], findings: [], complete: true });
    const twins = bought(
      list,
      line(food('salt-b', { name: 'Salt' }), '1 lb'),
      line(food('salt-a', { name: 'Salt' }), '1 lb'),
    );
    expect(twins.purchases.map(({ ingredient: { id } }) => id)).toEqual(['salt-a', 'salt-b']);
  });

  test('is not complete while a use of it leads nowhere', () => {
    const stray = bought(list, line(onion, '1 lb', 'as purchased'), line(onion, '2 each'));
    expect(stray.complete).toBe(false);
    expect(exactText(stray.purchases[0]!.need)).toBe('1 lb');
    expect(foundInWords(stray.findings).map(({ about, what, wayOut }) => [about, what, wayOut])).toEqual([
      [
        'onion',
        'Leek soup needs 2 each of Onions, but there is no conversion to lb, so the shopping list leaves it out',
        'add a conversion to onion, such as 1 each = … lb',
      ],
    ]);
  });

  test('says why these packs', () => {
    const why = (of: Ingredient, offer: PriceList) =>
      allInWords(bought(offer, line(of, '1/2 lb')).purchases[0]?.why);
    expect(why(zest, list)).toContain('the only pack available');
    const plain = { ...onion, yield: undefined };
    expect(why(plain, list)).toContain('the cheapest whole packs that cover it, from 2 available');
    expect(why({ ...plain, pinned: { supplier: 'quay', pack: '5 lb' } }, list)).toContain(
      'the ingredient requires this pack',
    );
  });
});

describe('why a recipe line needs so much of a food as bought', () => {
  const onion = food('onion', { name: 'Onions', yield: new Fraction('4/5'), sold: ['1 each = 1/2 lb'] });
  const why = (amount: string, preparation: string | null, unit: string) => {
    const { uses } = usesOf(line(onion, amount, preparation)).get('onion')!;
    return allInWords(usesIn(unit, onion, uses).usedBy[0]?.why);
  };

  test('tells the line, what is lost, and the way to the unit, and no step that does nothing', () => {
    expect(why('4 lb', 'peeled', 'lb')).toEqual([
      '4 lb in Leek soup',
      '4 lb ÷ 80 % left when peeled = 5 lb as purchased',
    ]);
    expect(why('4 lb', null, 'each')).toEqual([
      '4 lb in Leek soup',
      '4 lb ÷ 80 % left when prepped = 5 lb as purchased',
      '5 lb = 10 each',
    ]);
    expect(why('4 lb', 'as purchased', 'lb')).toEqual(['4 lb in Leek soup']);
    expect(why('8 each', 'peeled', 'lb')).toEqual(['8 each in Leek soup', '8 each = 4 lb']);
  });
});
