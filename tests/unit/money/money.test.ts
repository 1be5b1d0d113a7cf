import { describe, expect, it } from 'vitest';
import { allocate } from '../../../src/engine/money/allocate.ts';
import { Decimal } from '../../../src/engine/money/decimal.ts';
import { displayMoney } from '../../../src/engine/money/display-money.ts';
import {
  add,
  compare,
  exactMoneyText,
  money,
  moneyText,
  negate,
  roundToMinor,
  subtract,
  sum,
  times,
} from '../../../src/engine/money/money.ts';
import { parseRate, rateOf, rateText } from '../../../src/engine/money/rate.ts';
import { taxOn } from '../../../src/engine/money/tax.ts';

const usd = (amount: string) => money(amount, 'USD');

describe('money', () => {
  it('rounds half-up, away from zero at the tie, to the currency’s minor unit', () => {
    const rounded = { '2.055': '2.06', '2.045': '2.05', '-2.045': '-2.05', '2.0549': '2.05', '1e-9': '0.00' };
    for (const [exact, cents] of Object.entries(rounded)) {
      expect(moneyText(usd(exact)), exact).toBe(cents);
      expect(roundToMinor(usd(exact)).amount.toFixed(2), exact).toBe(cents);
    }
    expect(moneyText(money('1234.5', 'JPY'))).toBe('1235');
    expect(moneyText(money('1.0005', 'KWD'))).toBe('1.001');
  });

  it('never prints a minus in front of nothing', () => {
    expect(moneyText(negate(usd('0')))).toBe('0.00');
    expect(moneyText(usd('-0.001'))).toBe('0.00');
    expect(exactMoneyText(usd('-0.001'))).toBe('-0.001');
  });

  it('refuses to reckon two currencies together', () => {
    for (const reckon of [add, subtract, compare]) {
      expect(() => reckon(usd('1'), money('1', 'EUR'))).toThrow('USD and EUR can’t be added together');
    }
    expect(() => sum([money('1', 'EUR')], 'USD')).toThrow('USD and EUR');
  });
});

describe('a sum shown to people', () => {
  it('follows the locale, with spaces that do not break', () => {
    expect(displayMoney(usd('1234.5'), 'en-US')).toBe('$1,234.50');
    expect(displayMoney(money('1234567.89', 'GBP'), 'en-GB')).toBe('£1,234,567.89');
    expect(displayMoney(money('1234.5', 'EUR'), 'de-DE')).toBe('1.234,50\u00a0€');
    expect(displayMoney(money('1234.5', 'EUR'), 'fr-FR')).toBe('1\u202f234,50\u00a0€');
    expect(displayMoney(money('1234', 'JPY'), 'en-US')).toBe('¥1,234');
    expect(displayMoney(usd('-12'), 'en-US')).toBe('−$12.00');
  });

  it('shows the code where there is no symbol, and English form where the locale is not known', () => {
    expect(displayMoney(money('1234.5', 'CHF'), 'en-US')).toBe('CHF\u00a01,234.50');
    expect(displayMoney(money('12.5', 'SEK'), 'xx')).toBe('SEK\u00a012.50');
    expect(displayMoney(money('12.5', 'CAD'), 'en-CA')).toBe('$12.50');
    expect(displayMoney(money('12.5', 'CAD'), 'en-US')).toBe('CA$12.50');
  });

  it('agrees with the platform’s own formatting for common locales', () => {
    const cases = [
      ['en-US', 'USD'],
      ['en-GB', 'GBP'],
      ['de-DE', 'EUR'],
      ['fr-FR', 'EUR'],
      ['it-IT', 'EUR'],
      ['es-ES', 'EUR'],
      ['en-CA', 'CAD'],
    ] as const;
    for (const [locale, currency] of cases) {
      for (const amount of ['0.05', '12.5', '999.99', '12345.6', '1234567.89']) {
        const platform = new Intl.NumberFormat(locale, { style: 'currency', currency }).format(
          Number(amount),
        );
        expect([locale, displayMoney(money(amount, currency), locale)]).toEqual([locale, platform]);
      }
    }
  });
});

describe('a rate', () => {
  it('is the exact share that a percentage says', () => {
    const share = (text: string) => {
      const rate = parseRate(text);
      return rate.ok ? rate.value.toFixed() : rate.what;
    };
    expect(['18 %', '18%', '8.25 %', '0 %', '1000 %'].map(share)).toEqual([
      '0.18',
      '0.18',
      '0.0825',
      '0',
      '10',
    ]);
    for (const text of ['18', '-1 %', '1,5 %', '1e2 %', '%', '1001 %', '50 percent']) {
      expect([text, parseRate(text).ok]).toEqual([text, false]);
    }
    expect(rateText(new Decimal('0.0825'))).toBe('8.25 %');
  });
});

describe('a sum split in proportion', () => {
  it('gives parts at the minor unit that make the sum', () => {
    const parts = allocate(
      usd('100.00'),
      ['1', '1', '1'].map((weight) => new Decimal(weight)),
    );
    expect(parts.map(moneyText)).toEqual(['33.33', '33.34', '33.33']);
    expect(allocate(usd('0.01'), [new Decimal(0), new Decimal(5)]).map(moneyText)).toEqual(['0.00', '0.01']);
    // 0.05 in halves: 2.5 cents are 3, and 2 are left. To the even cent they would be 2, and 3 left.
    expect(allocate(usd('0.05'), [new Decimal(1), new Decimal(1)]).map(moneyText)).toEqual(['0.03', '0.02']);
    expect(allocate(usd('5'), [new Decimal(0)]).map(moneyText)).toEqual(['0.00']);
  });
});

describe('tax within a price', () => {
  it('is what of the price is tax', () => {
    // 0.90 at 5 % is 0.045: the third digit is greater than four, so a whole cent more. To the even cent it were 0.04.
    expect(moneyText(taxOn([usd('0.90')], new Decimal('0.05'), 'USD', 'invoice', false))).toBe('0.05');
    expect(moneyText(taxOn([usd('107.00')], new Decimal('0.07'), 'USD', 'invoice', true))).toBe('7.00');
    expect(moneyText(taxOn([money('119', 'EUR')], new Decimal('0.19'), 'EUR', 'line', true))).toBe('19.00');
  });
});

describe('a percentage', () => {
  it('is read up to 1000 %, with spaces around, and thrown out of terms where it is none', () => {
    expect([' 8.25% ', '0 %', '1000 %'].map((text) => rateText(rateOf(text)))).toEqual([
      '8.25 %',
      '0 %',
      '1000 %',
    ]);
    for (const wrong of ['1000.1 %', '12', '% 12', '-5 %', 'x8 %', '8 %x'])
      expect(() => rateOf(wrong), wrong).toThrow(/is not a percentage|more than 1000/);
    expect(parseRate('x'.repeat(5000))).toMatchObject({ what: `"${'x'.repeat(40)}" is not a percentage` });
  });
});

describe('a sum times a factor', () => {
  it('is exact for a whole number beyond all floats and for a decimal', () => {
    expect(times(usd('0.01'), 9_007_199_254_740_993n).amount.toFixed()).toBe('90071992547409.93');
    expect(times(usd('2.05'), new Decimal('0.15')).amount.toFixed()).toBe('0.3075');
  });
});
