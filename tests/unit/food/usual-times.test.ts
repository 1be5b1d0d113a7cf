import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { usualChill } from '../../../src/engine/food/usual-chill.ts';
import { usualStands } from '../../../src/engine/food/usual-stands.ts';
import { q } from '../plan/builders.ts';

// Every figure here is common practice and has no source.

describe('how long a finished dish stands', () => {
  it('is 2 h 30 min hot, 4 h at room temperature, and cold as long as it keeps', () => {
    expect(usualStands('hot')).toBe(150);
    expect(usualStands('room')).toBe(240);
    expect(usualStands('cold')).toBeUndefined();
    expect(usualStands('frozen')).toBeUndefined();
  });
});

describe('how long food takes from cooking to cold', () => {
  const chilled = (inches: string | undefined, fill: string, each?: string, makes = ['10 qt', '20 lb']) => {
    const [batch = '', ...others] = makes;
    return usualChill(
      {
        makes: [q(batch), ...others.map(q)],
        pack: { chill: { container: 'pan', each: each === undefined ? undefined : q(each) } },
      },
      new Map([
        [
          'pan',
          {
            holds: q('8 qt'),
            fill: new Fraction(fill),
            depthInches: inches === undefined ? undefined : new Fraction(inches),
          },
        ],
      ]),
    );
  };

  it('goes by how deep it stands in what it is chilled in', () => {
    expect(chilled('2', '1')).toBe(120);
    expect(chilled('5/2', '3/4')).toBe(120);
    expect(chilled('5/2', '1')).toBe(180);
    expect(chilled('4', '3/4')).toBe(180);
    expect(chilled('4', '1')).toBe(240);
    expect(chilled('8', '1/2')).toBe(240);
    expect(chilled('8', '9/10')).toBe(360);
  });

  it('by what the recipe puts into each of them, where it says so', () => {
    // 4 of 8 quarts, or 8 lb of 16: half as deep.
    expect(chilled('8', '1', '4 qt')).toBe(240);
    expect(chilled('8', '1', '2 qt')).toBe(120);
    expect(chilled('8', '1', '8 lb')).toBe(240);
    // Pieces that the recipe does not turn into quarts: then as full as the container usually is.
    expect(chilled('4', '3/4', '24 pieces')).toBe(180);
  });

  it('by its weight where no depth is stated, and as long as codes allow where neither is', () => {
    // 8 qt are 16 lb here.
    expect(chilled(undefined, '1')).toBe(240);
    expect(chilled(undefined, '1/2')).toBe(180);
    expect(chilled(undefined, '1/4')).toBe(120);
    expect(chilled(undefined, '1', '21 lb')).toBe(360);
    expect(chilled(undefined, '1', undefined, ['10 qt'])).toBe(360);
  });

  it('is not known where it is chilled in nothing, or in what the kitchen does not have', () => {
    expect(usualChill({ makes: [q('10 qt')], pack: {} }, new Map())).toBeUndefined();
    const pack = { chill: { container: 'tub', each: undefined } };
    expect(usualChill({ makes: [q('10 qt')], pack }, new Map())).toBeUndefined();
  });
});
