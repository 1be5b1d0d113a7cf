import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Drink } from '../../../src/engine/drinks/drink.ts';
import { USUAL_HABITS, warmthOf } from '../../../src/engine/drinks/drinks-habits.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { parseTemperature, temperatureText } from '../../../src/engine/measure/temperature.ts';
import { drinkDemand } from '../../../src/engine/plan/demand/drink-demand.ts';
import { drinkCounts, plannedIce } from '../../../src/engine/plan/drinks/drinks-plan.ts';
import type { EventDrinks, EventWater } from '../../../src/engine/plan/drinks/event-drinks.ts';
import { plannedDrinks } from '../../../src/engine/plan/drinks/planned-drinks.ts';
import { withDrinkSupplies } from '../../../src/engine/plan/drinks/supplies.ts';
import type { EventDish } from '../../../src/engine/plan/event-input.ts';
import { allInWords, foundInWords } from '../../in-words.ts';
import { dish, food, line, must, q, recipe } from '../plan/builders.ts';

const GUESTS = { adults: 40, children: 10, vendors: 0, staff: 0 };
const heat = (text: string) => must(parseTemperature(text));
const mild: EventDrinks = { habits: USUAL_HABITS, waters: [] };
const hot: EventDrinks = {
  ...mild,
  high: heat('95 °F'),
  hotDay: { high: heat('95 °F'), more: new Fraction(1n, 4n) },
};

const cordial = recipe('cordial', '1 gal', [line(food('quince syrup', { sold: ['1 qt = 2 lb'] }), '1 qt')]);
const cider = recipe('cider', ['1 bottle', '12 fl oz'], [line(food('still cider'), '1 bottle')]);

const taken = (adult: string, child: string) => ({ adult: new Fraction(adult), child: new Fraction(child) });

function poured(
  of: Recipe,
  perGuest: string,
  facts: Partial<Drink> & { counts?: string; overage?: string } = {},
): EventDish & { readonly drink: Drink } {
  const { counts = 'adults', overage, ...drink } = facts;
  return {
    ...dish(of, perGuest, { counts, ...(overage && { overage }) }),
    drink: {
      glass: q('8 fl oz'),
      iceInGlass: false,
      iceInTub: false,
      alcohol: false,
      taken: taken('2', '1'),
      ...drink,
    },
  };
}

/** As it is on a hot day, when guests drink more of it. */
const onHotDay = (of: EventDish): EventDish => ({ ...of, hotDay: hot.hotDay! });

const water: EventWater = {
  glass: q('8 fl oz'),
  iceInGlass: true,
  iceInTub: false,
  servedIn: 'tumbler',
  perGuest: dish(cordial, '16 fl oz per guest').perGuest,
  counts: { adults: '1', children: '1/2' },
  overage: new Fraction(1n, 10n),
};

const figures = (dishes: readonly EventDish[], setting: EventDrinks) =>
  plannedDrinks(dishes, GUESTS, setting).drinks.map((each) => [
    each.dish?.recipe.id,
    each.drinks.toFraction(),
    each.carried.amount.toFraction(),
    each.carried.unit,
  ]);

describe('the drinks of an event', () => {
  test('are none where it has none, and no other dish is one', () => {
    expect(plannedDrinks([poured(cordial, '16 fl oz per guest')], GUESTS, undefined)).toEqual({
      drinks: [],
      findings: [],
    });
    expect(figures([dish(cordial, '16 fl oz per guest')], mild)).toEqual([]);
  });

  // 40 adults × 16 fl oz ÷ 8 fl oz = 80 glasses; a tenth more is carried, and on a hot day a quarter more is drunk and carried.
  test('are what guests take, without what is carried over it', () => {
    const of = poured(cordial, '16 fl oz per guest', { overage: '1/10' });
    expect(figures([of], mild)).toEqual([['cordial', '80', '704', 'fl oz']]);
    expect(figures([onHotDay(of)], hot)).toEqual([['cordial', '100', '880', 'fl oz']]);
  });

  // 40 + 10 × ½ = 45 guests × 16 fl oz = 720 fl oz, 90 glasses.
  test('have plain water with them, more of it on a hot day', () => {
    expect(figures([], { ...mild, waters: [water] })).toEqual([[undefined, '90', '792', 'fl oz']]);
    expect(figures([], { ...hot, waters: [water] })).toEqual([[undefined, '225/2', '990', 'fl oz']]);
  });

  test('are told where glasses or ice can’t be counted, with the way out', () => {
    const inCans = recipe('perry', '1 can', [line(food('still perry'), '1 can')]);
    const told = (drink: EventDish) => {
      const { drinks, findings } = plannedDrinks([drink], GUESTS, mild);
      expect(drinks).toEqual([]);
      return foundInWords(findings);
    };
    const unknown = (unit: string) => [
      {
        about: 'perry',
        what: `perry: what is planned of it can’t be turned into ${unit}, so its glasses and its ice are not counted`,
        wayOut: `add to the recipe’s “makes” what a batch is in ${unit}`,
      },
    ];
    expect(told(poured(inCans, '1 can per guest'))).toEqual(unknown('fl oz'));
    const iced = { glass: q('1 can'), iceInTub: true };
    expect(told(poured(inCans, '1 can per guest', iced))).toEqual(unknown('l'));
    // Water by weight has no glasses, and is left out.
    const weighed = { ...water, perGuest: dish(cordial, '1 lb per guest').perGuest };
    expect(figures([], { ...mild, waters: [weighed] })).toEqual([]);
    // Without a tub its liters are not asked for.
    expect(figures([poured(inCans, '1 can per guest', { glass: q('1 can') })], mild)).toEqual([
      ['perry', '40', '40', 'can'],
    ]);
  });
});

describe('the ice of an event', () => {
  const inGlasses = poured(cordial, '16 fl oz per guest', { iceInGlass: true });
  const inTub = poured(cider, '1 bottle per guest', {
    glass: q('1 bottle'),
    iceInTub: true,
    overage: '1/10',
  });

  // 80 glasses × 4 oz = 320 oz = 20 lb, and a quarter melts: 25 lb.
  test('in glasses is by the glass', () => {
    const { drinks } = plannedDrinks([inGlasses], GUESTS, mild);
    const ice = plannedIce(drinks, mild);
    expect([ice?.inGlasses, ice?.inTubs, ice?.total].map((each) => each?.amount.toFraction())).toEqual([
      '20',
      '0',
      '25',
    ]);
    expect(ice?.total.unit).toBe('lb');
    expect(ice?.melt.toFraction()).toBe('1/4');
  });

  /*
   * What is carried is cooled: 44 bottles × 12 fl oz = 528 fl oz = 15.615 l, from 72 °F to 40 °F (17.78 °C). A kilogram of ice
   * takes 79.7 kcal (CRC Handbook; from memory): 3.483 kg = 7.68 lb. From 95 °F (30.56 °C) 5.987 kg = 13.20 lb.
   */
  test('in tubs cools all that is carried, from the day’s warmth where that is more than how it is stored', () => {
    const tub = (setting: EventDrinks) =>
      plannedDrinks([inTub], GUESTS, setting).drinks[0]?.iceInTubs.valueOf();
    expect(tub(mild)).toBeCloseTo(7.68, 1);
    expect(tub(hot)).toBeCloseTo(13.2, 1);
    expect(tub({ ...mild, high: heat('50 °F') })).toBe(tub(mild));
    expect(temperatureText(warmthOf(heat('72 °F'), USUAL_HABITS))).toBe('72 °F');
  });

  test('is both together, half as much again on a hot day, and none where no drink takes any', () => {
    const { drinks } = plannedDrinks([inGlasses, inTub], GUESTS, hot);
    const ice = plannedIce(drinks, hot);
    const both = 20 + (drinks[1]?.iceInTubs.valueOf() ?? 0);
    expect(ice?.total.amount.valueOf()).toBeCloseTo(both * 1.5, 9);
    expect(
      plannedIce(plannedDrinks([poured(cordial, '16 fl oz per guest')], GUESTS, mild).drinks, mild),
    ).toBe(undefined);
  });

  test('says how it comes about, of each drink and of all', () => {
    const { drinks } = plannedDrinks([inGlasses, inTub], GUESTS, mild);
    const said = drinks.map(({ why }) => allInWords(why));
    expect(said.map((lines) => lines.length)).toEqual([2, 2]);
    expect(said[0]?.join(' ')).toContain('20 lb');
    expect(said[1]?.join(' ')).toContain('44 bottles');
    const [plain] = plannedDrinks([poured(cordial, '16 fl oz per guest')], GUESTS, mild).drinks;
    expect(plain?.why).toHaveLength(1);
    const [onHot] = plannedDrinks([onHotDay(inGlasses)], GUESTS, hot).drinks;
    expect(allInWords(onHot?.why ?? [])[0]).not.toBe(said[0]?.[0]);
    expect(allInWords(plannedIce(drinks, mild)?.why ?? []).join(' ')).toContain('25 %');
  });

  test('is bought for the drinks that take it, with what melts, beside what recipes need', () => {
    const ice = food('bagged ice');
    const spring = food('spring water');
    const syrup = food('quince syrup');
    const known = new Map([[syrup.id, { ingredient: syrup, uses: [] }]]);
    const setting = { ...mild, waters: [water], ice, water: spring };
    const { drinks } = plannedDrinks([inGlasses, poured(cider, '12 fl oz per guest')], GUESTS, setting);
    const all = withDrinkSupplies(known, drinks, setting);
    const uses = (id: string) =>
      all
        .get(id)
        ?.uses.map(({ recipe: { id: by }, asPurchased }) => [
          by,
          asPurchased.amount.toFraction(),
          asPurchased.unit,
        ]);
    // Water: 90 glasses × 4 oz = 22½ lb, and a quarter more.
    expect(uses('bagged ice')).toEqual([
      ['cordial', '25', 'lb'],
      ['spring water', '225/8', 'lb'],
    ]);
    expect(uses('spring water')).toEqual([['spring water', '792', 'fl oz']]);
    expect([...all.keys()]).toEqual(['quince syrup', 'bagged ice', 'spring water']);
    expect(all.get('bagged ice')?.uses[0]?.line).toMatchObject({ asPurchased: true, preparation: null });
    expect(all.get('bagged ice')?.uses[0]?.yield.share.toFraction()).toBe('1');

    const tap = withDrinkSupplies(known, drinks, { ...mild, waters: [water], ice });
    expect(tap.get('bagged ice')?.uses.map(({ recipe: { id } }) => id)).toEqual(['cordial', 'bagged ice']);
    expect([...tap.keys()]).toEqual(['quince syrup', 'bagged ice']);
    expect(withDrinkSupplies(known, drinks, undefined)).toBe(known);
    expect(withDrinkSupplies(known, [], setting)).toBe(known);
  });
});

describe('how many drinks are served', () => {
  test('is counted in all, and in each rental', () => {
    const { drinks } = plannedDrinks(
      [
        poured(cordial, '16 fl oz per guest', { servedIn: 'tumbler' }),
        poured(cider, '24 fl oz per guest', { servedIn: 'flute' }),
        poured(cider, '8 fl oz per guest'),
      ],
      GUESTS,
      { ...mild, waters: [water] },
    );
    const { all, servedIn } = drinkCounts(drinks);
    expect(all.toFraction()).toBe('330');
    expect([...servedIn].map(([id, count]) => [id, count.toFraction()])).toEqual([
      ['tumbler', '170'],
      ['flute', '120'],
    ]);
  });
});

describe('what guests want of a drink', () => {
  const meanOf = (chances: Float64Array | undefined) =>
    chances?.reduce((sum, chance, count) => sum + chance * count, 0);

  // 40 adults take 2 drinks, half of them this one; 10 children take 1, half of it this one: 40 + 5 glasses of 8 fl oz.
  test('comes to what is planned, each group by what it takes', () => {
    const of = poured(cordial, '8 fl oz per guest', { counts: 'adults, children at 1/2' });
    const demand = drinkDemand(of, of.drink, GUESTS, undefined);
    expect(meanOf(demand?.chances)).toBeCloseTo(45, 9);
    expect(demand?.eaters).toEqual({ sure: 0, free: 50, cannot: 0 });
    expect(demand?.helpings).toBe(undefined);
    expect(allInWords(demand?.why ?? [])).toHaveLength(2);
    const onHot = drinkDemand(onHotDay(of), of.drink, GUESTS, undefined);
    expect(meanOf(onHot?.chances)).toBeCloseTo(56.25, 9);
  });

  test('counts nobody who takes none, and of nobody more than all that he or she drinks', () => {
    const of = poured(cordial, '24 fl oz per guest', { counts: 'adults, children', taken: taken('2', '0') });
    const demand = drinkDemand(of, of.drink, GUESTS, undefined);
    expect(demand?.eaters.free).toBe(40);
    expect(meanOf(demand?.chances)).toBeCloseTo(80, 9);
  });

  /*
   * Two adults take one drink each, half of them this one: 1 in 4 events want both. With a risk of 1 in 4 one glass is enough,
   * with 1 in 5 it takes two.
   */
  test('decides what is carried where a risk is chosen', () => {
    const risky = (shortOneIn: number) => {
      const of = poured(cordial, '4 fl oz per guest', { taken: taken('1', '0') });
      const takeRate = { appetite: undefined, firstChoice: undefined, helping: undefined, costs: undefined };
      const guests = { ...GUESTS, adults: 2, children: 0 };
      return drinkDemand({ ...of, takeRate: { ...takeRate, shortOneIn } }, of.drink, guests, undefined);
    };
    expect([risky(4)?.helpings, risky(5)?.helpings]).toEqual([1, 2]);
    expect(allInWords(risky(5)?.why)).toEqual([
      '2 adults: 1 drink each, 50 % of them this one',
      'short at most 1 in 5: 2 helpings, the fewest that keep to it',
    ]);
  });

  test('falls with who fails to come', () => {
    const of = poured(cordial, '8 fl oz per guest');
    const demand = drinkDemand(of, of.drink, GUESTS, { failToCome: new Fraction(1n, 10n), partyOf: 2 });
    expect(meanOf(demand?.chances)).toBeCloseTo(36, 9);
    expect(demand?.why.length).toBeGreaterThan(1);
  });

  test('is not known where its glasses can’t be counted, or some of its guests get another drink', () => {
    const of = poured(cordial, '1 lb per guest');
    expect(drinkDemand(of, of.drink, GUESTS, undefined)).toBe(undefined);
    const part = (guests: bigint) => {
      const drink = poured(cordial, '8 fl oz per guest');
      const portions = { guests: new Fraction(guests), needs: [], apart: undefined, why: [] };
      return drinkDemand({ ...drink, portions }, drink.drink, GUESTS, undefined);
    };
    expect(part(39n)).toBe(undefined);
    expect(part(40n)?.eaters.free).toBe(40);
  });
});
