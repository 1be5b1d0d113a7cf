import { describe, expect, it } from 'vitest';
import {
  atTable,
  countGuests,
  countsText,
  DEFAULT_COUNTS,
  parseCounts,
  peopleCounted,
  weightOf,
} from '../../../src/engine/quote/counts.ts';
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
    expect(parseCounts('kids')).toMatchObject({ what: '"kids" is not adults, children, vendors or staff' });
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

describe('a weight', () => {
  const weight = (text: string) => {
    const read = parseCounts(`adults at ${text}`);
    return read.ok ? read.value.adults : undefined;
  };

  it('is above nothing and at most two, in any plain form', () => {
    expect(['2', '1/12', '12/24', '24/12', '0.0625', '1 1/2', '2.0', '10/5', '01'].map(weight)).toEqual([
      '2',
      '1/12',
      '1/2',
      '2',
      '1/16',
      '1 1/2',
      '2',
      '2',
      '1',
    ]);
    for (const text of [
      '0',
      '0.0',
      '2.0001',
      '25/12',
      '1 1.5',
      '1 2',
      'x1',
      '1x',
      '1/123',
      '0.12345',
      '100/99',
      '1/',
    ])
      expect([text, weight(text)]).toEqual([text, undefined]);
  });

  it('that terms hold in a form nobody can read is never passed over', () => {
    expect(() => weightOf({ adults: 'half' }, 'adults')).toThrow('adults can’t count as "half"');
    expect([weightOf({}, 'adults'), weightOf({ adults: '1/2' }, 'adults')]).toEqual([
      { over: 0n, under: 1n },
      { over: 1n, under: 2n },
    ]);
  });
});

describe('a list of guests', () => {
  it('may have spaces anywhere, and is refused where it is long, or a part of it says two things', () => {
    expect(parseCounts(' adults   at   1/2 ,  vendors ')).toEqual({
      ok: true,
      value: { adults: '1/2', vendors: '1' },
    });
    const long = `adults${' '.repeat(114)}`;
    expect([parseCounts(long).ok, parseCounts(`${long} `).ok]).toEqual([true, false]);
    expect(parseCounts('adults at 1 at 2')).toMatchObject({
      what: '"adults at 1 at 2" is not adults, children, vendors or staff',
    });
    expect(parseCounts('adults,  kids ')).toMatchObject({
      what: '"kids" is not adults, children, vendors or staff',
    });
  });
});

it('those at the table are adults and children, each as one', () => {
  expect([atTable(guests), atTable({ adults: 3, children: 0 })]).toEqual([91, 3]);
  expect(peopleCounted(guests, { children: '1/2', staff: '2' })).toBe(16);
});
