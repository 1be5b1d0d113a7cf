import { describe, expect, it } from 'vitest';
import { Decimal } from '../../../src/engine/money/decimal.ts';
import { money, moneyText } from '../../../src/engine/money/money.ts';
import { parseAddOnPrice } from '../../../src/engine/quote/add-on-price.ts';
import { perHeadFromFoodCost } from '../../../src/engine/quote/from-food-cost.ts';
import { mealPrice, parseGuestRate } from '../../../src/engine/quote/guest-rate.ts';
import { priceSteps } from '../../../src/engine/quote/price-steps.ts';
import { findTier, tierProblems } from '../../../src/engine/quote/tiers.ts';
import { sampleCourse, samplePackage, sampleStaff, sampleTerms } from './sample-terms.ts';

describe('the price of an add-on', () => {
  it('is read per guest, per hour, per so many guests, or flat', () => {
    const read = (text: string) => {
      const price = parseAddOnPrice(text, 'USD');
      return price.ok ? price.value : price.what;
    };
    expect(read('6.50 per guest')).toEqual({ price: '6.50', per: 'guest' });
    expect(read('$120 per hour')).toEqual({ price: '120.00', per: 'hour' });
    expect(read('85.00 per  40 guests')).toEqual({ price: '85.00', per: 'guests', guests: 40 });
    expect(read('350.00')).toEqual({ price: '350.00', per: 'flat' });
    expect(read('0.125 per guest')).toEqual({ price: '0.125', per: 'guest' });
    expect(read('0.125')).toContain('too many decimals');
    expect(read('6.50 per table')).toBe('nothing is priced per "table"');
    expect(read('6.50 per 0 guests')).toBe('a group of 0 guests can’t be priced');
    expect(read('6.50 per guest per hour')).toContain('"per" twice');
    expect(read('6,50 per guest')).toContain('"6,50" is not an amount');
  });
});

describe('a child’s or vendor’s meal', () => {
  it('costs a share of the adult’s price, rounded, or a sum, or the same', () => {
    expect(parseGuestRate('50 %', 'USD')).toEqual({ ok: true, value: { rate: '50 %' } });
    expect(parseGuestRate('18', 'USD')).toEqual({ ok: true, value: { price: '18.00' } });
    expect(parseGuestRate('half', 'USD')).toMatchObject({ ok: false });
    const adult = money('38.75', 'USD');
    expect(
      [{ rate: '50 %' }, { price: '18.00' }, {}].map((rate) => moneyText(mealPrice(rate, adult))),
    ).toEqual(['19.38', '18.00', '38.75']);
  });
});

describe('price tiers', () => {
  const tiers = samplePackage().tiers;

  it('hold each count once', () => {
    expect([1, 49, 50, 99, 100, 5000].map((count) => findTier(tiers, count).perHead)).toEqual([
      '46.00',
      '46.00',
      '42.50',
      '42.50',
      '39.00',
      '39.00',
    ]);
    expect(tierProblems(tiers, 1)).toEqual([]);
  });

  it('say where they overlap, leave a gap, run backwards or start too late', () => {
    const tier = (from: number, to: number | null) => ({ from, to, perHead: '40.00' });
    expect(tierProblems([tier(20, 50), tier(50, null)], 20)).toEqual([
      'The tiers overlap: 50 guests are priced twice. Start the later tier at 51.',
    ]);
    expect(tierProblems([tier(20, 49), tier(60, null)], 20)).toEqual([
      'No tier prices 50 guests. Start the tier from 60 there.',
    ]);
    expect(tierProblems([tier(20, null), tier(60, null)], 20)).toEqual([
      'The tier from 20 has no end, but another starts at 60. End it before that.',
    ]);
    expect(tierProblems([tier(30, 20)], 0)).toEqual([
      'The first tier starts at 30 guests; start it at 1 or below.',
      'The tier from 30 ends before it starts, at 20. Swap the two.',
    ]);
    expect(tierProblems([], 0)).toHaveLength(1);
  });
});

describe('the steps of a price', () => {
  it('are the counts at which one more guest makes the total smaller', () => {
    const chosen = samplePackage({ courses: [sampleCourse()] });
    // 49 × 46.00 and 50 × 42.50, 99 × 42.50 and 100 × 39.00, each with 7 % tax.
    expect(priceSteps(sampleTerms({ packages: [chosen] }), chosen)).toEqual([
      { guests: 49, total: '2411.78', totalOfOneMore: '2273.75' },
      { guests: 99, total: '4502.03', totalOfOneMore: '4173.00' },
    ]);
  });

  it('are gone where the package never costs less in all, or where one more server outweighs the step', () => {
    const floored = samplePackage({ neverLessInAll: true });
    expect(priceSteps(sampleTerms({ packages: [floored] }), floored)).toEqual([]);
    const terms = sampleTerms({ staff: [sampleStaff({ per: 49 })] });
    expect(priceSteps(terms, samplePackage()).map((step) => step.guests)).toEqual([49, 99]);
    const dear = sampleTerms({ staff: [sampleStaff({ per: 49, atLeast: 0, rate: '60.00' })] });
    expect(priceSteps(dear, samplePackage()).map((step) => step.guests)).toEqual([99]);
  });
});

describe('a price from the food cost', () => {
  it('is rounded up to the step, and stays where it is a whole number of steps', () => {
    const price = (cost: string, target: string, step: string) =>
      perHeadFromFoodCost(new Decimal(cost), new Decimal(target), new Decimal(step)).toFixed(2);
    expect(price('12.60', '0.30', '0.50')).toBe('42.00');
    expect(price('12.61', '0.30', '0.50')).toBe('42.50');
    expect(price('12.6000000000000000000000001', '0.30', '0.50')).toBe('42.50');
    expect(price('10', '0.3', '0.01')).toBe('33.34');
    expect(price('0', '0.3', '0.50')).toBe('0.00');
    expect(() => price('1', '0', '1')).toThrow('the food-cost target must be above 0 %');
  });
});

describe('what no price can be made of', () => {
  it('a food cost, target or step that is nothing or less is refused', () => {
    const price = (cost: string, target: string, step: string) => () =>
      perHeadFromFoodCost(new Decimal(cost), new Decimal(target), new Decimal(step));
    expect(price('1', '0.3', '0')).toThrow('the step to round up to must be above nothing');
    expect(price('-0.01', '0.3', '1')).toThrow('a food cost cannot be negative');
    expect(price('1', '-0.3', '1')).toThrow('the food-cost target must be above 0 %');
  });

  it('a menu without a tier has no price', () => {
    expect(() => findTier([], 1)).toThrow('a package needs at least one price tier');
  });

  it('an add-on’s group is of 1 to 100,000 guests, and nothing stands about its words', () => {
    const ok = (text: string) => parseAddOnPrice(text, 'USD').ok;
    expect(['5 per 1 guests', ' 5 per 100000 guests ', '5.00 per 40 guests'].map(ok)).toEqual([
      true,
      true,
      true,
    ]);
    expect(
      ['5 per 0 guests', '5 per 100001 guests', '5 per about 40 guests', '5 per 40 guests or so'].map(ok),
    ).toEqual([false, false, false, false]);
  });
});

describe('bounds of a tier', () => {
  const tier = (from: number, to: number | null) => ({ from, to, perHead: '40.00' });
  const WHOLE = 'Tier 2 must run between whole guest counts from 1 to 100000.';

  it('are whole counts from 1 to 100,000, both included', () => {
    expect(tierProblems([tier(1, 1), tier(2, 100_000)], 1)).toEqual([]);
    expect(tierProblems([tier(1, 9), tier(10, 100_001)], 1)).toEqual([WHOLE]);
    expect(tierProblems([tier(1, 9), tier(10, 20.5)], 1)).toEqual([WHOLE]);
    expect(tierProblems([tier(1, 9), tier(9.5, null)], 1)).toEqual([WHOLE]);
    expect(tierProblems([tier(0, 9)], 1)).toEqual([WHOLE.replace('2', '1')]);
    expect(tierProblems([tier(1, 9), tier(100_001, null)], 1)).toContain(WHOLE);
    expect(tierProblems([tier(1, 1), tier(1, null)], 1)).toEqual([
      'The tiers overlap: 1 guest is priced twice. Start the later tier at 2.',
    ]);
  });
});
