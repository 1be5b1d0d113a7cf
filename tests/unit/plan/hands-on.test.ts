import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { planDays } from '../../../src/engine/plan/days/days.ts';
import { handsOnMinutes } from '../../../src/engine/plan/days/hands-on.ts';
import { prepMinutesOf } from '../../../src/engine/plan/money/costs.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { day, dish, event, food, kitchen, line, prices, recipe, step } from './builders.ts';

const shaping = { handsOn: minutes(90), handsOnPerBatch: true };

test.each([
  ['203/100', 183],
  ['2', 180],
  ['1', 90],
  ['1/2', 45],
  ['1/4', 23],
  ['1/100', 23],
  ['0', 0],
])('%s batches at 1 h 30 per batch are %i minutes at work', (batches, at) => {
  expect(handsOnMinutes(shaping, new Fraction(batches))).toBe(at);
});

test('time that is for all of it stays what it is', () => {
  expect(handsOnMinutes({ ...shaping, handsOnPerBatch: false }, new Fraction('203/100'))).toBe(90);
});

test('tasks and the cost of work follow the batches as the recipe rounds them', () => {
  const patties = (batches: 'exact' | 'half') =>
    recipe('patties', '100 pieces', [line(food('barley'), '10 lb')], {
      batches,
      steps: [step('on the day', 'Shape them.', shaping)],
    });
  const planned = (batches: 'exact' | 'half') =>
    planEvent(
      event([dish(patties(batches), '1 piece per guest')], { guests: guests(203) }),
      kitchen(),
      prices(),
    );
  const guests = (adults: number) => ({ adults, children: 0, vendors: 0, staff: 0 });
  const minutesOf = (batches: 'exact' | 'half') => {
    const { recipes } = planned(batches);
    const [first] = planDays(recipes, day('2027-06-19'));
    return [first?.tasks[0]?.handsOnMinutes, prepMinutesOf(recipes)];
  };
  expect(minutesOf('exact')).toEqual([183, 183]);
  expect(minutesOf('half')).toEqual([225, 225]);
});
