import { describe, expect, it } from 'vitest';
import { readVenueKit } from '../../../src/engine/menu/parse-venue-kit.ts';

const kit = (facts: Record<string, string>) => readVenueKit(new Map(Object.entries(facts)));

describe('what a venue has', () => {
  it('is nothing where no fact that counts is written, which is never a yes', () => {
    expect(kit({ name: 'The Barn', parking: 'yes' })).toEqual({ unclear: [] });
  });

  it.each([
    ['none', 0],
    ['no', 0],
    ['None we may use', 0],
    ['0', 0],
    ['2', 2],
    ['two', 2],
    ['2 convection', 2],
    ['one household oven', 1],
    ['Two household ovens in the clubroom', 2],
    ['3, all electric', 3],
  ])('of ovens “%s” is %d', (text, count) => {
    expect(kit({ ovens: text }).kit?.ovens).toBe(count);
  });

  it.each(['yes', 'in the clubroom', 'a few', '2½', '2-deck', 'noble range', 'onerous'])(
    'of ovens “%s” is not known',
    (text) => {
      const { kit: read, unclear } = kit({ ovens: text });
      expect(read).toBeUndefined();
      expect(unclear.map(({ fact }) => fact)).toEqual(['ovens']);
    },
  );

  it.each([
    ['none', []],
    ['no power on the pier', []],
    ['two 20 A circuits beside the loading door', [[2, 20]]],
    ['2 × 20 A', [[2, 20]]],
    ['2x16A', [[2, 16]]],
    ['2 circuits of 15 amps', [[2, 15]]],
    ['three circuits, 20 A each', [[3, 20]]],
    ['four 20 A circuits', [[4, 20]]],
    ['generator hired by the client, 60 A', [[1, 60]]],
    ['house sockets, one 15 A circuit for us', [[1, 15]]],
    [
      'two 20 A and one 30 amp',
      [
        [2, 20],
        [1, 30],
      ],
    ],
    ['230 V, 16 A', [[1, 16]]],
    ['12.5 A', [[1, 12.5]]],
    ['nothing but a 16 A socket', [[1, 16]]],
  ])('of power “%s” is so many circuits', (text, circuits) => {
    const expected = circuits.map(([count, amperes]) => ({ count, amperes }));
    expect(kit({ power: text }).kit?.circuits).toEqual(expected);
  });

  it.each(['plenty', 'from 7 a.m.', 'yes', '20 a day', '3000 W', '0 A'])(
    'of power “%s” is not known',
    (text) => {
      const { kit: read, unclear } = kit({ power: text });
      expect(read).toBeUndefined();
      expect(unclear).toHaveLength(1);
    },
  );

  it('reads a yes or a no before any other words', () => {
    const { kit: read, unclear } = kit({ water: 'yes, staff kitchen', 'cold space': 'none', Cover: 'No' });
    expect(read).toMatchObject({ water: true, coldSpace: false, cover: false, ovens: undefined });
    expect(unclear).toEqual([]);
    expect(kit({ water: 'standpipe, 200 ft away' }).unclear).toEqual([
      {
        fact: 'water',
        what: '“water: standpipe, 200 ft away” is neither a yes nor a no',
        wayOut: 'begin with yes or no, such as “yes, one cold tap”',
      },
    ]);
  });
});
