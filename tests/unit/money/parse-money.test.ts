import { describe, expect, it } from 'vitest';
import { exactMoneyText } from '../../../src/engine/money/money.ts';
import { type MoneyOptions, parseMoney } from '../../../src/engine/money/parse-money.ts';

function read(text: string, currency = 'USD', options: MoneyOptions = {}): string {
  const result = parseMoney(text, currency, options);
  return result.ok ? exactMoneyText(result.value) : `${result.what} — ${result.wayOut}`;
}

describe('a sum as people write it', () => {
  it('is read with or without its currency', () => {
    for (const text of ['12.50', '$12.50', '$ 12.50', '12.50 USD', 'USD 12.50', ' 12.5 ']) {
      expect([text, read(text)]).toEqual([text, '12.50']);
    }
    expect(read('1250')).toBe('1250.00');
    expect(read('12.50 €', 'EUR')).toBe('12.50');
    expect(read('$12.50', 'CAD')).toBe('12.50');
    expect(read('CA$12.50', 'CAD')).toBe('12.50');
    expect(read('1200', 'JPY')).toBe('1200');
    expect(read('0')).toBe('0.00');
  });

  it('says how to write it without separators, with a point, without an exponent', () => {
    expect(read('1,234.50')).toBe(
      '"1,234.50" is not an amount in USD — leave out the thousands separators: write 1234.50',
    );
    expect(read('12,50')).toBe('"12,50" is not an amount in USD — use a decimal point: write 12.50');
    expect(read('1e3')).toBe('"1e3" is not an amount in USD — write all the digits out, without an exponent');
    expect(read('twelve')).toBe('"twelve" is not an amount in USD — write an amount such as "1250.00"');
  });

  it('keeps to the minor unit unless it is the price of one unit', () => {
    expect(read('0.125')).toBe(
      '"0.125" has too many decimals — USD takes at most 2 digits after the decimal point here',
    );
    expect(read('12.5', 'JPY')).toBe(
      '"12.5" has too many decimals — JPY takes no digits after the decimal point here',
    );
    expect(read('0.125', 'USD', { unitPrice: true })).toBe('0.125');
    expect(read('0.1234567', 'USD', { unitPrice: true })).toContain('too many decimals');
  });

  it('is refused when negative, unless that was asked for', () => {
    expect(read('-5.00')).toBe('"-5.00" is negative — write an amount of 0 or more');
    expect(read('-$5.00', 'USD', { negative: true })).toBe('-5.00');
    expect(read('−5.00', 'USD', { negative: true })).toContain('5.00');
  });

  it('is refused with another currency, as code tricks, and beyond 12 digits', () => {
    for (const text of [
      '12.50 EUR',
      '€12.50',
      '1_000',
      '0x10',
      '.5',
      '5.',
      'NaN',
      'Infinity',
      '',
      '$',
      '١٢',
      '+5',
    ]) {
      expect([text, parseMoney(text, 'USD').ok]).toEqual([text, false]);
    }
    expect(read('12345678901.00')).toBe(
      '"12345678901.00" has more than 12 digits — write an amount such as "1250.00"',
    );
    expect(parseMoney('9'.repeat(5000), 'USD').ok).toBe(false);
  });

  it('has up to 12 digits and 40 characters, and a longer text is shown cut off', () => {
    expect(read('1234567890.12')).toBe('1234567890.12');
    expect(read('9'.repeat(41))).toBe('the amount is too long — write an amount such as "1250.00"');
    expect(read(`5${' '.repeat(38)}x`)).toMatch(/^"5 +x" is not an amount in USD/);
  });

  it('has its sign in front or nowhere', () => {
    for (const text of ['5-3', '5-', '5.00-', '--5'])
      expect([text, parseMoney(text, 'USD', { negative: true }).ok]).toEqual([text, false]);
    expect(read('- 5.00', 'USD', { negative: true })).toBe('-5.00');
    expect(read('USD 5.00', 'USD', { negative: true })).toBe('5.00');
    expect(read('-USD 5.00', 'USD', { negative: true })).toBe('-5.00');
  });

  it('is told how to write it only where that is plainly what was meant', () => {
    const way = (text: string) => read(text).split(' — ')[1];
    expect(way('12,345,678.90')).toBe('leave out the thousands separators: write 12345678.90');
    expect(way('12 345')).toBe('leave out the thousands separators: write 12345');
    for (const text of ['1,23,456', 'x1,234', '1,234x', '1234,567.00', '1,2,3', 'a12,50', '12,50a', 'x1e3'])
      expect([text, way(text)]).toEqual([text, 'write an amount such as "1250.00"']);
    expect(way('1.5e3')).toBe('write all the digits out, without an exponent');
    expect(way('1e3')).toBe('write all the digits out, without an exponent');
  });
});
