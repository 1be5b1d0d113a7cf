import { describe, expect, test } from 'vitest';
import { minuteOn, taskStates } from '../../../src/client/now-next.ts';

// At the stove: a soup stirred from 9:00 to 9:20 that simmers until 10:00, a sauce from 9:10, rice from 10:30.
const tasks = [
  { begins: 540, handsOff: 560, ends: 600 },
  { begins: 550, handsOff: 570, ends: 570 },
  { begins: 630, handsOff: 640, ends: 640 },
];

describe('what a station does now and next', () => {
  test.each([
    ['before it begins, the first is next', 500, ['next', '', '']],
    ['from its very minute a task is done, and another that begins later is next', 540, ['now', 'next', '']],
    ['two at once are both done now', 555, ['now', 'now', 'next']],
    ['what needs no hands any more says so until it is done', 560, ['unattended', 'now', 'next']],
    ['what has ended is shown no more', 600, ['', '', 'next']],
    ['after the last there is nothing', 640, ['', '', '']],
  ])('%s', (_, minute, states) => {
    expect(taskStates(tasks, minute)).toEqual(states);
  });

  test('on another day it is what the day begins with', () => {
    expect(taskStates(tasks, null)).toEqual(['first', 'then', '']);
  });
});

describe('the minute of a date', () => {
  // 13:40 UTC is 9:40 in New York, four hours behind in May, and 14:40 in Dublin, an hour ahead in summer.
  test('goes by the kitchen’s clock', () => {
    const now = new Date('2027-05-15T13:40:30Z');
    expect(minuteOn('2027-05-15', now, 'America/New_York')).toBe(580);
    expect(minuteOn('2027-05-15', now, 'Europe/Dublin')).toBe(880);
  });

  test('runs on past midnight, and is below nothing the day before', () => {
    const night = new Date('2027-05-16T04:30:00Z');
    expect(minuteOn('2027-05-15', night, 'America/New_York')).toBe(1470);
    expect(minuteOn('2027-05-17', night, 'America/New_York')).toBe(-1410);
  });

  test('is that of the device where it knows no such zone', () => {
    const now = new Date(2027, 4, 15, 8, 5);
    expect(minuteOn('2027-05-15', now, 'Nowhere/Land')).toBe(485);
  });
});
