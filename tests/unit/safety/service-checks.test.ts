import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { parseHeldTemperature } from '../../../src/engine/measure/temperature.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import { endChecks, serviceChecks } from '../../../src/engine/safety/service-checks.ts';
import { allInWords, inWords } from '../../in-words.ts';
import { food, line, must, recipe, step } from '../plan/builders.ts';

const cookedThere = step('at serving', 'Heat it', { cookTo: must(parseHeldTemperature('165 °F')) });

const dishOf = (steps: Recipe['steps'], facts: Parameters<typeof recipe>[3] = {}): Recipe =>
  recipe('dish', '10 lb', [line(food('beans'), '5 lb')], { hold: 'hot', steps, ...facts });

describe('what is measured of a dish at the event', () => {
  const served = (of: Recipe, service?: number) =>
    serviceChecks(
      { name: 'Dish', recipe: of },
      service === undefined ? undefined : minutes(service),
      FOOD_CODE_2022,
      'F',
    ).map(({ stage, limit, blanks, section }) => [
      stage,
      inWords(limit),
      allInWords(blanks.slice(0, -1)),
      section,
    ]);
  const HOLDING = ['3-501.16(A)(1)', '3-501.16(A)(2)', '3-501.11'];

  test('is its heat or cold when it leaves and arrives, and on the line', () => {
    const [hot, cold, frozen] = HOLDING;
    expect(served(dishOf([], { hold: 'hot' }), 60)).toEqual([
      ['transport', '135 °F or above', ['leaving', 'arriving'], hot],
      ['service', '135 °F or above', ['at the start'], hot],
    ]);
    expect(served(dishOf([cookedThere], { hold: 'hot' }), 60).map(([, limit]) => limit)).toEqual([
      '41 °F or below',
      '135 °F or above',
    ]);
    expect(served(dishOf([], { hold: 'cold' }), 60).map((each) => each.at(-1))).toEqual([cold, cold]);
    expect(
      served(dishOf([], { hold: 'frozen' }), 60).map(([, limit, , section]) => [limit, section]),
    ).toEqual([
      ['frozen solid', frozen],
      ['frozen solid', frozen],
    ]);
    expect(served(dishOf([], { hold: 'hot', temperatureControl: false }))).toEqual([]);
  });

  test('is read every two hours, for four where nobody says how long is served', () => {
    const readings = (service?: number) => served(dishOf([], { hold: 'hot' }), service)[1]?.[2];
    expect([readings(119), readings(120), readings()]).toEqual([
      ['at the start'],
      ['at the start', 'after 2 h'],
      ['at the start', 'after 2 h', 'after 4 h'],
    ]);
  });

  test('without heat or cold is the time when it is thrown away', () => {
    const time = [
      'service',
      'thrown away 4 h after it left hot or cold holding',
      ['left hot or cold holding at', 'throw away at'],
      '3-501.19(B)',
    ];
    expect(served(dishOf([], { hold: 'room' }))).toEqual([time]);
  });

  test('ends with what is thrown away and what may be kept, by when', () => {
    const [thrown, kept] = endChecks(FOOD_CODE_2022, 'F');
    expect(inWords(thrown?.limit ?? '')).toBe('thrown away');
    expect(inWords(kept?.limit ?? '')).toBe(
      'hot food cooled to 70 °F within 2 h and 41 °F within 6 h; dated, and used within 7 days, counting the day it was made',
    );
    expect([thrown?.when, kept?.when]).toEqual([
      { daysBefore: 0, atServing: true },
      { daysBefore: 0, atServing: true },
    ]);
    expect(kept?.section).toBe('3-501.14(A), 3-501.17');
    expect([allInWords(thrown?.blanks), allInWords(kept?.blanks)]).toEqual([
      ['what', 'time', 'initials'],
      ['what', 'reading', 'time', 'initials'],
    ]);
    const [leaving] = serviceChecks({ name: 'Dish', recipe: dishOf([]) }, undefined, FOOD_CODE_2022, 'F');
    expect([leaving?.recipe, leaving?.what]).toEqual(['dish', 'Dish']);
  });
});
