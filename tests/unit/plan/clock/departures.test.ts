import { expect, test } from 'vitest';
import { departuresOf } from '../../../../src/engine/plan/clock/departures.ts';

/** Tasks in the order in which they begin, each with what holds it. */
const departures = (...tasks: readonly [id: string, heldBy?: string][]) =>
  departuresOf({
    placed: tasks.map(([id, task]) => ({
      id,
      reason: task === undefined ? { kind: 'deadline' } : { kind: 'lag', task },
    })) as never,
  }).map(({ event, first }) => [event, first]);

test('a truck’s first task is the first of the chain that ends in it', () => {
  expect(
    departures(['soak', 'cook'], ['chop', 'pack tea'], ['cook', 'pack lunch'], ['pack lunch'], ['pack tea']),
  ).toEqual([
    ['lunch', 'soak'],
    ['tea', 'chop'],
  ]);
});

test('what begins a date is told whatever holds it, and later work that no truck holds is not', () => {
  expect(departures(['sweep', 'home'], ['load lunch'], ['wipe', 'home'])).toEqual([
    [undefined, 'sweep'],
    ['lunch', 'load lunch'],
  ]);
  expect(departures(['load lunch'], ['sweep', 'home'])).toEqual([['lunch', 'load lunch']]);
  expect(departures()).toEqual([]);
});

test('a chain that comes back to itself, or leads to what has no time, ends there', () => {
  expect(departures(['leave lunch', 'serve lunch'], ['serve lunch', 'leave lunch'])).toEqual([
    ['lunch', 'leave lunch'],
  ]);
  expect(departures(['out tea', 'gone'])).toEqual([['tea', 'out tea']]);
});
