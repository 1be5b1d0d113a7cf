import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../../../src/engine/food/recipe.ts';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { line, step } from '../builders.ts';
import { clock, hot, planned } from './clocked.ts';

const onTheDay = (text: string, station: string, handsOn: number, facts: object = {}) =>
  step('on the day', text, { station, handsOn: minutes(handsOn), ...facts });

/** Boiled, then two hours until it is cold. */
const sauce: Recipe = hot(
  'sauce',
  [onTheDay('Boil', 'stove', 20, { cookTo: { amount: 165, scale: 'F' } as never })],
  { hold: 'cold', chill: minutes(120), pack: { chill: { container: 'pan', each: undefined } } },
);
const fish = (facts: object = {}) => ({
  ...hot('fish', [
    onTheDay('Trim', 'cold', 10),
    step('at serving', 'Sear', { station: 'stove', handsOn: minutes(10) }),
  ]),
  lines: [{ ...line(sauce, '1 pt'), steps: [0] }],
  ...facts,
});
const coldBy = (...dishes: Recipe[]) => {
  const { steps, time } = clock([planned('lunch', dishes)]);
  const at = steps.find(({ batch }) => batch.recipe === sauce)?.coldBy;
  return at === undefined ? undefined : time(at);
};

describe('what is cooled', () => {
  test('is cold by the time it is packed where it leaves: as a dish, beside one, or for a step at the place', () => {
    // Packed by 10:15, a quarter of an hour before loading.
    expect(coldBy(fish(), sauce)).toBe('10:15');
    expect(coldBy(fish({ beside: ['sauce'] }))).toBe('10:15');
    expect(coldBy(fish({ lines: [{ ...line(sauce, '1 pt'), steps: [1] }] }))).toBe('10:15');
    expect(coldBy(fish({ lines: [{ ...line(sauce, '1 pt'), steps: [0, 1] }] }))).toBe('10:15');
  });

  test('need not be cold where the kitchen uses it up', () => {
    expect(coldBy(fish())).toBeUndefined();
    expect(coldBy(fish({ beside: ['butter'] }))).toBeUndefined();
  });

  test('and is taken by the first step where none is named has to be cold only if that is at the place', () => {
    const bare = { lines: [line(sauce, '1 pt')] };
    expect(coldBy(fish(bare))).toBeUndefined();
    const seared = hot('fish', [step('at serving', 'Sear', { station: 'stove', handsOn: minutes(10) })]);
    expect(coldBy({ ...seared, ...bare })).toBe('10:15');
  });
});

test('a part that the kitchen uses up waits for what takes it, and not for packing', () => {
  const roux = hot('roux', [onTheDay('Stir', 'stove', 5)], { hold: 'room' });
  const soup = {
    ...hot('soup', [onTheDay('Bind', 'stove', 10)]),
    lines: [{ ...line(roux, '1 pt'), steps: [0] }],
  };
  const { steps, time } = clock([planned('lunch', [soup])]);
  const ends = (of: Recipe) => time(steps.find(({ batch }) => batch.recipe === of)?.ends ?? 0);
  // The soup is hot at loading, 10:30; packing, for which cold food and bread come by 10:15, has no part in the roux.
  expect([ends(roux), ends(soup)]).toEqual(['10:20', '10:30']);
});
