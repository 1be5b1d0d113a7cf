import { expect, test } from 'vitest';
import { addDays } from '../../../../src/engine/calendar/day.ts';
import type { Equipment } from '../../../../src/engine/kitchen/kitchen.ts';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { hasRoom } from '../../../../src/engine/plan/clock/has-room.ts';
import { planEvent } from '../../../../src/engine/plan/plan-event.ts';
import { dish, event, food, kitchen, line, prices, recipe, step } from '../builders.ts';
import { DATE } from './clocked.ts';

const DAY_BEFORE = addDays(DATE, -1);
/** Sixteen guests of half a pint: a gallon, in four tubs of a quart, an hour of work the day before. */
const jelly = recipe('beet jelly', '1 gal', [line(food('beet'), '1 lb')], {
  pack: { chill: 'tub' },
  steps: [step('the day before', 'Set', { handsOn: minutes(60) }), step('at serving', 'Turn out')],
});
const guests = { adults: 16, children: 0, vendors: 0, staff: 0 };
const plan = planEvent(
  event([dish(jelly, '8 fl oz per guest')], { guests, date: DATE }),
  kitchen([['tub', '1 qt', '1']]),
  prices(),
);

const room = (tubs: number) => {
  const cold: Equipment = {
    id: 'cold-room',
    name: 'Walk-in',
    count: 1,
    holds: [{ container: 'tub', count: tubs }],
    station: 'cold',
  };
  return { crew: undefined, equipment: new Map([['cold-room', cold]]) };
};
const cooks = (people: number, each: number) => ({
  crew: { people, each: minutes(each), from: '8:00' },
  equipment: new Map(),
});

test('what stands in the cold has to go into the cold room', () => {
  expect(hasRoom([plan], DAY_BEFORE, room(4))).toBe(true);
  expect(hasRoom([plan], DAY_BEFORE, room(3))).toBe(false);
});

test('hands-on work has to be within the hours of all that cook, what is done at the place left out', () => {
  expect(hasRoom([plan], DAY_BEFORE, cooks(2, 30))).toBe(true);
  expect(hasRoom([plan], DAY_BEFORE, cooks(2, 29))).toBe(false);
  expect(hasRoom([plan], DATE, cooks(0, 0))).toBe(true);
});

test('of what is not stated there is enough', () => {
  expect(hasRoom([plan], DAY_BEFORE, { crew: undefined, equipment: new Map() })).toBe(true);
});
