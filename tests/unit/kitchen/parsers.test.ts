import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { fitsSheet, LABEL_SHEETS, type LabelSheet } from '../../../src/engine/kitchen/label-sheet.ts';
import { minutesOfClock, parseClock } from '../../../src/engine/kitchen/parse-clock.ts';
import { parseDepth } from '../../../src/engine/kitchen/parse-depth.ts';
import { parseHourly } from '../../../src/engine/kitchen/parse-hourly.ts';
import { parseKeeps } from '../../../src/engine/kitchen/parse-keeps.ts';
import { parseLength } from '../../../src/engine/kitchen/parse-length.ts';
import { parsePart } from '../../../src/engine/kitchen/parse-part.ts';
import type { Parsed } from '../../../src/engine/parsed.ts';

const read = <T>(of: Parsed<T>) => (of.ok ? of.value : null);
const exact = (of: Parsed<Fraction>) => read(of)?.toFraction() ?? null;

describe('a time of day', () => {
  test.each([
    ['18:00', '18:00'],
    [' 9:30 ', '09:30'],
    ['0:00', '00:00'],
    ['23:59', '23:59'],
    ['24:00', null],
    ['12:60', null],
    ['1800', null],
    ['at 18:00', null],
    ['18:00 h', null],
    ['18:0', null],
    ['118:00', null],
    ['18:000', null],
    [`${' '.repeat(16)}18:00`, null],
    ['', null],
    ['5:30 pm', '17:30'],
    ['5 PM', '17:00'],
    ['5:05  a.m.', '05:05'],
    ['12 pm', '12:00'],
    ['12:59 am', '00:59'],
    ['1 am', '01:00'],
    ['0:30 pm', null],
    ['13 pm', null],
    ['5:60 pm', null],
  ])('%j is %s', (text, clock) => {
    expect(read(parseClock(text))).toBe(clock);
  });

  test('counts its minutes from midnight', () => {
    expect(['00:00', '00:59', '18:00', '23:59'].map(minutesOfClock)).toEqual([0, 59, 1080, 1439]);
  });
});

describe('how long something keeps', () => {
  test.each([
    ['1 day', 1],
    ['3 days', 3],
    [' 2  Weeks ', 14],
    ['6 months', 180],
    ['1 year', 365],
    ['9999 days', 9999],
    ['12 weeks', 84],
    ['0 days', null],
    ['10000 days', null],
    ['3 hours', null],
    ['days', null],
    ['about 3 days', null],
    ['3 days or so', null],
    [`3 days${' '.repeat(40)}`, 3],
    [`${' '.repeat(40)}3 days`, null],
  ])('%j is %s days', (text, days) => {
    expect(read(parseKeeps(text))).toBe(days);
  });
});

describe('a length', () => {
  const THING = { thing: 'a length', wayOut: 'write it' };

  // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
  test.each([
    ['2½ in', '127/2'],
    ['1 inch', '127/5'],
    ['2 inches', '254/5'],
    ['65 mm', '65'],
    ['10 CM', '100'],
    ['0 mm', '0'],
    ['2 ft', null],
    ['toString', null],
    ['2 constructor', null],
    ['', null],
    [`${' '.repeat(40)}2 in`, null],
  ])('%j is %s mm', (text, length) => {
    expect(exact(parseLength(text, THING))).toBe(length);
  });

  test('of a container’s depth is above nothing and at most 40 inches', () => {
    expect(['2½ in', '65 mm', '40 in', '1016 mm'].map((text) => exact(parseDepth(text)))).toEqual([
      '5/2',
      '325/127',
      '40',
      '40',
    ]);
    expect(['0 in', '41 in', '1017 mm', '10 lb', 'deep'].map((text) => parseDepth(text).ok)).toEqual(
      Array.from({ length: 5 }, () => false),
    );
    expect(parseDepth('41 in')).toMatchObject({
      what: '“41 in” is not the depth of a container',
      wayOut: 'write it as 2½ in, 65 mm or 10 cm',
    });
  });
});

test('what an hour costs is said by the hour', () => {
  expect(
    ['38.00 per hour', '38 an hour', ' $38.125 PER HOUR '].map((text) => read(parseHourly(text, 'USD'))),
  ).toEqual(['38.00', '38.00', '38.125']);
  for (const text of ['38.00', '38.00 per day', 'per hour', '38 per hour each', 'x per hour'])
    expect([text, parseHourly(text, 'USD').ok]).toEqual([text, false]);
});

test('a part of the whole is above nothing and at most all of it', () => {
  expect(['100 %', '85 %', '0.5 %'].map((text) => exact(parsePart(text)))).toEqual(['1', '17/20', '1/200']);
  expect(['0 %', '101 %', '100.1 %', 'half'].map((text) => parsePart(text).ok)).toEqual([
    false,
    false,
    false,
    false,
  ]);
  expect(parsePart(' 101 % ')).toMatchObject({ what: '“101 %” is not a part of the whole' });
});

describe('labels on their sheet', () => {
  test('lie whole on the two common stocks', () => {
    expect([fitsSheet(LABEL_SHEETS.letter), fitsSheet(LABEL_SHEETS.a4)]).toEqual([true, true]);
  });

  const mm = (of: number) => new Fraction(of);
  /** Two by three labels of 50 × 30 with a gap of 4, in the middle of 120 × 100. */
  const sheet = (right: number, down: number, change: Partial<LabelSheet> = {}): LabelSheet => ({
    sheet: { width: mm(120), height: mm(100) },
    label: { width: mm(50), height: mm(30) },
    columns: 2,
    rows: 3,
    above: mm(5),
    beside: mm(8),
    between: mm(4),
    nudge: { right: mm(right), down: mm(down) },
    ...change,
  });

  test.each([
    [0, 0, true],
    [8, 0, true],
    [9, 0, false],
    [-8, 0, true],
    [-9, 0, false],
    [0, 5, true],
    [0, 6, false],
    [0, -5, true],
    [0, -6, false],
  ])('nudged by %d to the right and %d down: %s', (right, down, fits) => {
    expect(fitsSheet(sheet(right, down))).toBe(fits);
  });

  test('count every column with its gap, and every row', () => {
    expect(fitsSheet(sheet(0, 0, { columns: 3, sheet: { width: mm(166), height: mm(100) } }))).toBe(true);
    expect(fitsSheet(sheet(0, 0, { columns: 3, sheet: { width: mm(165), height: mm(100) } }))).toBe(false);
    expect(fitsSheet(sheet(0, 0, { rows: 4 }))).toBe(false);
  });
});
