import { describe, expect, it } from 'vitest';
import { countGuests, countsText, DEFAULT_COUNTS, parseCounts } from '../../../src/engine/quote/counts.ts';
import { ratioText } from '../../../src/engine/quote/ratio.ts';

const guests = { adults: 84, children: 7, vendors: 4, staff: 9 };

describe('which guests count', () => {
  it('is read from words, with weights', () => {
    const counts = { adults: '1', children: '1/2', vendors: '1' };
    expect(parseCounts('adults, children at 1/2, vendors')).toEqual({ ok: true, value: counts });
    expect(parseCounts('Adults,children at 0.5 , vendors')).toEqual({ ok: true, value: counts });
    expect(parseCounts('children at ⅓')).toEqual({ ok: true, value: { children: '1/3' } });
    expect(parseCounts('adults at 1 1/2')).toEqual({ ok: true, value: { adults: '1 1/2' } });
    expect(countsText(counts)).toBe('adults, children at 1/2, vendors');
  });

  it('is refused with the words there are', () => {
    for (const text of [
      '',
      'guests',
      'adults and children',
      'children at 0',
      'adults at 3',
      'adults at 1/0',
      'adults at x',
    ]) {
      expect([text, parseCounts(text).ok]).toEqual([text, false]);
    }
    expect(parseCounts('adults, adults')).toMatchObject({ what: 'adults are counted twice' });
    expect(parseCounts('kids')).toMatchObject({ what: '"kids" is none of adults, children, vendors, staff' });
  });

  it('is by default everybody at the table', () => {
    expect(ratioText(countGuests(guests, DEFAULT_COUNTS))).toBe('91');
  });

  it('is exact for weights that decimals cannot hold', () => {
    expect(
      ratioText(countGuests(guests, { adults: '1', children: '1/3', vendors: '2/3', staff: '0.25' })),
    ).toBe('91 1/4');
  });
});
