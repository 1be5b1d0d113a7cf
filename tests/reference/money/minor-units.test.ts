import { describe, expect, it } from 'vitest';
import { isCurrency, minorUnits } from '../../../src/engine/money/currency.ts';

/*
 * ISO 4217, table A.1 (list one), read in the open data set "currency-codes" (public domain), an edition of about
 * 2012. It gives UGX two digits; that it has none since 2013 is from memory, as is what is newer here.
 */
describe('the minor units of ISO 4217', () => {
  it('has no digits for these currencies', () => {
    for (const code of 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF VND VUV XAF XOF XPF'.split(' ')) {
      expect([code, minorUnits(code)]).toEqual([code, 0]);
    }
  });

  it('has three digits for these', () => {
    for (const code of 'BHD IQD JOD KWD LYD OMR TND'.split(' ')) {
      expect([code, minorUnits(code)]).toEqual([code, 3]);
    }
  });

  it('has two digits for the rest', () => {
    const two =
      'USD EUR GBP CAD AUD NZD CHF SEK NOK DKK PLN CZK HUF INR MXN BRL ZAR SGD HKD TWD THB IDR PHP TRY';
    for (const code of two.split(' ')) expect([code, minorUnits(code)]).toEqual([code, 2]);
  });

  it('wants the code in capitals and says so of any other text', () => {
    expect(isCurrency('usd')).toBe(false);
    expect(() => minorUnits('DOLLARS')).toThrow('"DOLLARS" is not a currency code, such as USD or EUR');
  });
});
