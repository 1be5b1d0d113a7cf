import { describe, expect, it } from 'vitest';
import { money, moneyText } from '../../../src/engine/money/money.ts';
import { rateOf } from '../../../src/engine/money/rate.ts';
import { taxOn } from '../../../src/engine/money/tax.ts';

/*
 * Streamlined Sales and Use Tax Agreement, sec. 324 (rounding rule): carry the tax to the third decimal place,
 * round up to a whole cent whenever that digit is greater than four; by item or by invoice, as the seller elects.
 */
const tax = (amounts: string[], rate: string, by: 'invoice' | 'line', currency = 'USD') =>
  moneyText(
    taxOn(
      amounts.map((amount) => money(amount, currency)),
      rateOf(rate),
      currency,
      by,
      false,
    ),
  );

describe('the rounding rule of the Streamlined Sales and Use Tax Agreement, sec. 324', () => {
  it('gives 0.21 by item and 0.22 by invoice for three items of 1.07 at 7 %', () => {
    expect(tax(['1.07', '1.07', '1.07'], '7 %', 'line')).toBe('0.21');
    expect(tax(['1.07', '1.07', '1.07'], '7 %', 'invoice')).toBe('0.22');
  });

  it('looks at the third decimal alone: a tax of 0.1749 becomes 0.17, one of 0.175 becomes 0.18', () => {
    expect(tax(['2.4985714'], '7 %', 'invoice')).toBe('0.17');
    expect(tax(['2.50'], '7 %', 'invoice')).toBe('0.18');
  });

  it('is carried to one digit past the minor unit in a currency of another kind', () => {
    expect(tax(['1995'], '10 %', 'invoice', 'JPY')).toBe('200');
    expect(tax(['1994'], '10 %', 'invoice', 'JPY')).toBe('199');
    expect(tax(['1.005'], '10 %', 'invoice', 'KWD')).toBe('0.101');
  });
});
