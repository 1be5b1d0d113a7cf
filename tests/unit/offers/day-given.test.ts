import { expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { giveDay } from '../../../src/offers/event/day-given.ts';

test.each([
  ['2027-04-20', '2027-04-26', 'give a day from 2027-04-20 to 2027-04-26'],
  ['2027-04-26', '2027-04-26', 'give 2027-04-26, the only day possible'],
  ['2027-04-26', '2027-04-20', 'the first day possible is 2027-04-26; record it then'],
])('the days from %s that are over by %s are told so that they can be given', (since, today, told) => {
  expect(giveDay(since as Day, today as Day)).toBe(told);
});
