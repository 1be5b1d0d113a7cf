import { expect, test } from 'vitest';
import type { ClockFinding } from '../../../../src/engine/plan/clock/clock-finding.ts';
import { isWorse } from '../../../../src/engine/plan/clock/worse.ts';
import { DATE } from './clocked.ts';

const late = (at: number): ClockFinding => ({ kind: 'after crew', date: DATE, at, crew: 900 });
const lacking = (skill: string): ClockFinding => ({
  kind: 'clash',
  date: DATE,
  clash: { of: { kind: 'skill', skill }, from: 600, until: 660, asked: 2, has: 1, what: [] },
  ways: [],
});
const short = (name: string): ClockFinding => ({ kind: 'sold short', date: DATE, event: name, roles: [] });

test('a day is worse with a finding that it had not', () => {
  expect(isWorse([], [late(910)])).toBe(true);
  expect(isWorse([lacking('pastry')], [lacking('grill')])).toBe(true);
  expect(isWorse([short('lunch')], [short('picnic')])).toBe(true);
  expect(isWorse([late(910)], [late(910), late(905)])).toBe(true);
});

test('a day is worse where its crew stays longer than it would have', () => {
  expect(isWorse([late(910)], [late(911)])).toBe(true);
  expect(isWorse([late(910)], [late(909)])).toBe(false);
});

test('a day is no worse with what it had, or with less', () => {
  const had = [late(910), lacking('pastry'), short('lunch')];
  expect(isWorse(had, had)).toBe(false);
  expect(isWorse(had, had.slice(1))).toBe(false);
  expect(isWorse([], [])).toBe(false);
});
