import { describe, expect, it } from 'vitest';
import { add, money, moneyText, times } from '../../../src/engine/money/money.ts';
import { rateOf } from '../../../src/engine/money/rate.ts';
import { taxOn } from '../../../src/engine/money/tax.ts';

/*
 * California Department of Tax and Fee Administration, Publication 115, "Tips, Gratuities, and Service Charges":
 * a guest check of $9.95 and $3.75 with 8.25 % tax and suggested amounts of 15, 18 and 20 %.
 */
const subtotal = add(money('9.95', 'USD'), money('3.75', 'USD'));

describe('the guest check of CDTFA Publication 115', () => {
  it('adds to 13.70 and bears 1.13 of tax at 8.25 %', () => {
    expect(moneyText(subtotal)).toBe('13.70');
    expect(moneyText(taxOn([subtotal], rateOf('8.25 %'), 'USD', 'invoice', false))).toBe('1.13');
  });

  it('suggests 2.06, 2.47 and 2.74 for 15, 18 and 20 %', () => {
    const suggested = ['15 %', '18 %', '20 %'].map((rate) => moneyText(times(subtotal, rateOf(rate))));
    expect(suggested).toEqual(['2.06', '2.47', '2.74']);
  });

  it('is a trap for binary floats, which make 2.05 of the 15 %', () => {
    expect((Math.round((9.95 + 3.75) * 0.15 * 100) / 100).toFixed(2)).toBe('2.05');
  });
});
