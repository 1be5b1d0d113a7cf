import { describe, expect, it } from 'vitest';
import { guestCount, parseGuestCount } from '../../../src/engine/measure/guest-count.ts';
import { refusal, understood } from './understood.ts';

describe('a guest count', () => {
  it('reads whole numbers up to a hundred thousand, zero included', () => {
    for (const [text, count] of [
      ['0', 0],
      ['100', 100],
      [' 1 guest ', 1],
      ['12 guests', 12],
      ['100000', 100_000],
    ] as const) {
      expect(understood(parseGuestCount(text))).toBe(count);
    }
  });

  it('refuses everything else, in text and in code', () => {
    for (const text of [
      '',
      '-1',
      '+1',
      '1.5',
      '1,000',
      '1e3',
      '0x10',
      '½',
      '100001',
      '9'.repeat(99),
      'ten',
      '100 adults',
      'for 100 guests',
      '100 guests or more',
      '00100000000',
    ]) {
      refusal(parseGuestCount(text));
    }
    for (const wrong of [-1, 1.5, 100_001, Number.NaN]) expect(() => guestCount(wrong)).toThrow(RangeError);
  });
});
