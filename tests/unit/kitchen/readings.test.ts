import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { fitsSheet, LABEL_SHEETS, type LabelSheet } from '../../../src/engine/kitchen/label-sheet.ts';
import { minutesOfClock, parseClock } from '../../../src/engine/kitchen/parse-clock.ts';
import { parseDepth } from '../../../src/engine/kitchen/parse-depth.ts';
import { parseHourly } from '../../../src/engine/kitchen/parse-hourly.ts';
import { parseKeeps } from '../../../src/engine/kitchen/parse-keeps.ts';
import { parsePart } from '../../../src/engine/kitchen/parse-part.ts';
import type { Parsed } from '../../../src/engine/parsed.ts';
import { refusal, understood } from '../measure/understood.ts';

/** Whether each is refused, with something to write instead. */
function refuses<T>(parse: (text: string) => Parsed<T>, texts: readonly string[]): void {
  for (const text of texts) expect(refusal(parse(text))).toMatch(/ — .*write /);
}

describe('a time of day', () => {
  test.each([
    ['18:00', '18:00', 1080],
    ['9:30', '09:30', 570],
    [' 00:00 ', '00:00', 0],
    ['23:59', '23:59', 1439],
  ])('%s is %s, %i minutes from midnight', (text, clock, minutes) => {
    expect([understood(parseClock(text)), minutesOfClock(clock)]).toEqual([clock, minutes]);
  });

  test('is none by twelve hours, past midnight, or with more than minutes', () => {
    refuses(parseClock, ['6 pm', '24:00', '12:60', '18.00', '18:0', '18:00:00', 'at 18:00', '118:00', '']);
  });
});

describe('how long something keeps', () => {
  test.each([
    ['1 day', 1],
    ['3 Days', 3],
    ['2  weeks', 14],
    ['1 week', 7],
    ['6 months', 180],
    ['1 year', 365],
    ['2 years', 730],
  ])('%s is %i days', (text, days) => {
    expect(understood(parseKeeps(text))).toBe(days);
  });

  test('is none without a whole number and a unit', () => {
    refuses(parseKeeps, [
      '0 days',
      '3',
      'days',
      '1.5 days',
      '2 hours',
      'about 3 days',
      '3 days or so',
      '-1 day',
    ]);
  });
});

describe('how deep a container is', () => {
  // An inch is 25.4 mm by definition.
  test.each([
    ['2½ in', '5/2'],
    ['4 inches', '4'],
    ['1 Inch', '1'],
    ['65 mm', '325/127'],
    ['25.4 cm', '10'],
    ['40 in', '40'],
  ])('%s is %s inches', (text, inches) => {
    expect(understood(parseDepth(text)).toFraction()).toBe(inches);
  });

  test('is none of nothing, of more than forty inches, or in another unit', () => {
    refuses(parseDepth, ['0 in', '40¼ in', '4', '4 lb', '2 m', 'deep', '-4 in']);
  });
});

test('an hour’s cost is a sum per hour, finer than a cent if need be', () => {
  expect(
    ['38.00 per hour', '18.255 an hour', '$20 Per Hour'].map((text) => understood(parseHourly(text, 'USD'))),
  ).toEqual(['38.00', '18.255', '20.00']);
  refuses((text) => parseHourly(text, 'USD'), ['38.00', '38.00 per day', 'per hour', '38 per hour each']);
});

test('a part of the whole is above nothing and at most all of it', () => {
  expect(['0.5 %', '75 %', '100 %'].map((text) => understood(parsePart(text)).toFraction())).toEqual([
    '1/200',
    '3/4',
    '1',
  ]);
  refuses(parsePart, ['0 %', '100.5 %', '3/4', 'half']);
});

describe('a sheet of stickers', () => {
  const mm = (text: string) => new Fraction(text);
  /* Two columns of 95 with 5 between them, beside 5: 200 wide; three rows of 90 below 10: 280 high. */
  const sheet: LabelSheet = {
    sheet: { width: mm('200'), height: mm('280') },
    label: { width: mm('95'), height: mm('90') },
    columns: 2,
    rows: 3,
    above: mm('10'),
    beside: mm('5'),
    between: mm('5'),
    nudge: { right: mm('0'), down: mm('0') },
  };

  test('holds its labels to the very edge, and not a hair beyond, whichever way it is nudged', () => {
    expect(fitsSheet(sheet)).toBe(true);
    const nudged = (right: string, down: string) =>
      fitsSheet({ ...sheet, nudge: { right: mm(right), down: mm(down) } });
    expect([nudged('1/10', '0'), nudged('0', '1/10')]).toEqual([false, false]);
    expect([nudged('-5', '-10'), nudged('-51/10', '0'), nudged('0', '-101/10')]).toEqual([
      true,
      false,
      false,
    ]);
    expect([fitsSheet({ ...sheet, columns: 3 }), fitsSheet({ ...sheet, rows: 4 })]).toEqual([false, false]);
    expect(fitsSheet({ ...sheet, between: mm('51/10') })).toBe(false);
  });

  test('of either common stock fits', () => {
    expect(Object.values(LABEL_SHEETS).map(fitsSheet)).toEqual([true, true]);
  });
});
