import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseBegins } from '../../../src/engine/course/parse-begins.ts';
import { piecesOffCircuit } from '../../../src/engine/kitchen/circuits.ts';
import type { Equipment } from '../../../src/engine/kitchen/kitchen.ts';
import { parseAmperes } from '../../../src/engine/kitchen/parse-amperes.ts';
import { placeAnswer, placeStations } from '../../../src/engine/kitchen/place-gear.ts';
import type { VenueKit } from '../../../src/engine/menu/venue-kit.ts';
import type { Parsed } from '../../../src/engine/parsed.ts';
import { food, line, recipe, step } from '../plan/builders.ts';

const read = <T>(of: Parsed<T>) => (of.ok ? of.value : null);

const NOTHING: VenueKit = {
  ovens: undefined,
  burners: undefined,
  circuits: undefined,
  water: undefined,
  coldSpace: undefined,
  cover: undefined,
  stairs: undefined,
};

const gear = (id: string, station: string, travels = false): Equipment => ({
  id,
  name: id,
  count: 1,
  holds: [],
  station,
  ...(travels && { travels: true }),
});

describe('whether a station’s work can be done at a place', () => {
  const answer = (equipment: Equipment[], kit?: Partial<VenueKit>) =>
    placeAnswer('hot', equipment, kit && { ...NOTHING, ...kit });

  test('is yes where the kitchen keeps nothing at the station, or something of it travels', () => {
    expect(answer([])).toBe('yes');
    expect(answer([gear('oven', 'elsewhere')], { ovens: 0 })).toBe('yes');
    expect(answer([gear('oven', 'hot'), gear('field-oven', 'hot', true)], { ovens: 0 })).toBe('yes');
  });

  test('goes by the fact of the venue that counts its kind, and what is not stated is never a yes', () => {
    expect(answer([gear('oven', 'hot')])).toBe('not stated');
    expect(answer([gear('oven', 'hot')], { burners: 4 })).toBe('not stated');
    expect(answer([gear('oven', 'hot')], { ovens: 2 })).toBe('yes');
    expect(answer([gear('oven', 'hot')], { ovens: 0 })).toBe('no');
    expect(answer([gear('range', 'hot')], { burners: 0, ovens: 3 })).toBe('no');
    // One of two kinds is enough; a kind that no fact counts stays open.
    expect(answer([gear('oven', 'hot'), gear('range', 'hot')], { ovens: 0, burners: 1 })).toBe('yes');
    expect(answer([gear('oven', 'hot'), gear('fryer', 'hot')], { ovens: 0 })).toBe('not stated');
  });

  test('asks for the stations of steps at the place, of parts too', () => {
    const part = recipe('part', '1 lb', [line(food('flour'), '1 lb')], {
      steps: [
        step('on the day', 'Mix', { station: 'bench' }),
        step('at serving', 'Fry', { station: 'fryer' }),
      ],
    });
    const whole = recipe('whole', '1 each', [line(part, '1 lb')], {
      steps: [
        step('on the day', 'Boil', { station: 'stove', at: 'place' }),
        step('at serving', 'Plate', { station: 'line', at: 'kitchen' }),
      ],
    });
    expect([...placeStations([whole])].sort()).toEqual(['fryer', 'stove']);
  });
});

describe('pieces on circuits', () => {
  const off = (amperes: number[], circuits: [count: number, amperes: number][]) =>
    piecesOffCircuit(
      amperes.map((each, index) => ({ name: `p${index}`, amperes: each })),
      circuits.map(([count, each]) => ({ count, amperes: each })),
    ).map((piece) => piece.amperes);

  test('are each on one, the largest first', () => {
    expect(off([16, 12, 8, 4], [[2, 20]])).toEqual([]);
    expect(off([16, 12, 9], [[2, 20]])).toEqual([9]);
    expect(off([21], [[3, 20]])).toEqual([21]);
    expect(off([20, 20, 20], [[2, 20]])).toEqual([20]);
    expect(off([2], [])).toEqual([2]);
    expect(off([], [])).toEqual([]);
  });

  test('are tried the largest first, and named so; of two as large the first by name', () => {
    const pieces = [
      { name: 'warmer', amperes: 6 },
      { name: 'fryer', amperes: 12 },
      { name: 'kettle', amperes: 9 },
      { name: 'griddle', amperes: 9 },
    ];
    const names = (...circuits: [number, number][]) =>
      piecesOffCircuit(
        pieces,
        circuits.map(([count, amperes]) => ({ count, amperes })),
      ).map(({ name }) => name);
    // The fryer first, so that the warmer finds no room beside it; on 20 A it does.
    expect(names([1, 16])).toEqual(['griddle', 'kettle', 'warmer']);
    expect(names([1, 20])).toEqual(['griddle', 'kettle']);
    expect(names([1, 12], [1, 9])).toEqual(['kettle', 'warmer']);
    expect(names()).toEqual(['fryer', 'griddle', 'kettle', 'warmer']);
  });

  test('never load a circuit above what it carries: what fits adds up to no more than there is', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 30 }), { maxLength: 12 }),
        fc.integer({ min: 0, max: 5 }),
        (amperes, count) => {
          const left = off(amperes, count === 0 ? [] : [[count, 20]]);
          const sum = (all: number[]) => all.reduce((total, each) => total + each, 0);
          expect(sum(amperes) - sum(left)).toBeLessThanOrEqual(count * 20);
          // Whatever is left over would not have gone onto an empty circuit, or none is empty any more.
          if (left.some((each) => each <= 20))
            expect(amperes.length - left.length).toBeGreaterThanOrEqual(count);
        },
      ),
    );
  });
});

describe('what a piece draws', () => {
  test.each([
    ['16 A', 16],
    ['12.5 amps', 12.5],
    ['1 amp', 1],
    ['16A', 16],
    ['0 A', null],
    ['16', null],
    ['3 kW', null],
    ['16 A at 230 V', null],
    ['1001 A', null],
    ['', null],
  ])('%j is %s', (text, amperes) => {
    expect(read(parseAmperes(text))).toBe(amperes);
  });
});

describe('when a course begins', () => {
  test.each([
    ['45 min after', 45],
    ['45 min', 45],
    ['1 h 15 min after', 75],
    ['0 min', 0],
    ['0 min after', 0],
    ['at serving', 0],
    ['7:30 pm', null],
    ['after', null],
    ['45', null],
  ])('%j is %s', (text, after) => {
    expect(read(parseBegins(text))).toBe(after);
  });
});
