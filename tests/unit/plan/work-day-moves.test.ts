import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { movesFrom, movesUnasked } from '../../../src/engine/plan/days/work-day-moves.ts';
import type { PlannedDay } from '../../../src/engine/plan/event-plan.ts';
import { day, food, line, recipe, step } from './builders.ts';

const DATE = day('2027-05-15');
const leek = line(food('leek'), '1 lb');
const toss = step('on the day', 'Toss');

/** What of these recipes, each worked for so many minutes on a day, could be done a day earlier. */
function moves(
  worked: readonly [Recipe, number][],
  { daysBefore = 0, served = worked.map(([each]) => each), mostDays = 7 } = {},
) {
  const tasks = worked.map(([of, handsOnMinutes]) => ({ recipe: of, handsOnMinutes }));
  const planned = { daysBefore, tasks } as unknown as PlannedDay;
  return movesFrom(planned, served, DATE, mostDays).map(({ recipe: { id }, handsOnMinutes }) => [
    id,
    handsOnMinutes,
  ]);
}

const salad = (facts: Partial<Recipe> = {}) =>
  recipe('salad', '1 gal', [leek], {
    keepsDays: 4,
    steps: [toss],
    ...(facts as object),
  });

describe('work that could be done a day earlier', () => {
  test('is told recipe by recipe with all its minutes, the most first, and none without any', () => {
    const [soup, dip] = [
      { ...salad(), id: 'soup' },
      { ...salad(), id: 'dip' },
    ];
    expect(
      moves([
        [salad(), 10],
        [soup, 30],
        [salad(), 5],
        [dip, 0],
      ]),
    ).toEqual([
      ['soup', 30],
      ['salad', 15],
    ]);
  });

  test('is none of what is not stated to keep, is for its day alone, or is done as guests are served', () => {
    expect(moves([[salad({ keepsDays: undefined }), 10]])).toEqual([]);
    const only = step('on the day', 'Toss');
    expect(moves([[salad({ steps: [{ ...only, when: { ...only.when, only: true } }] }), 10]])).toEqual([]);
    expect(moves([[salad({ steps: [toss, step('at serving', 'Dress')] }), 10]])).toEqual([]);
    expect(moves([[salad({ steps: [step('on the day', 'Toss', { at: 'place' })] }), 10]])).toEqual([]);
  });

  test('is none of what is hot and is not made to be reheated, but of its work before the last day', () => {
    const steps = [step('the day before', 'Soak'), step('on the day', 'Cook')];
    const hot = salad({ hold: 'hot', steps });
    expect(moves([[hot, 10]])).toEqual([]);
    expect(moves([[{ ...hot, reheat: true }, 10]])).toEqual([['salad', 10]]);
    expect(moves([[hot, 10]], { daysBefore: 1 })).toEqual([['salad', 10]]);
    expect(moves([[{ ...hot, hold: 'cold' }, 10]])).toEqual([['salad', 10]]);
  });

  test('is none of what is made with a part that is not ready a day earlier', () => {
    const made = (when: string) => {
      const relish = recipe('relish', '1 qt', [leek], { keepsDays: 4, steps: [step(when, 'Stir')] });
      return moves([[salad({ lines: [line(relish, '1 cup'), leek] }), 10]]);
    };
    expect(made('on the day')).toEqual([]);
    expect(made('the day before')).toEqual([['salad', 10]]);
  });

  // FDA Food Code 3-501.17: the day it is made is day 1, so what keeps 1 day may not be served the day after.
  test('is none of what would not keep until the event, in whatever dish it is served', () => {
    expect(moves([[salad({ keepsDays: 1 }), 10]])).toEqual([]);
    expect(moves([[salad({ keepsDays: 2 }), 10]])).toEqual([['salad', 10]]);
    expect(moves([[salad(), 10]], { mostDays: 1 })).toEqual([]);
    const platter = recipe('platter', '1 gal', [leek, line(salad({ keepsDays: 1 }), '1 qt')], {
      keepsDays: 1,
      steps: [toss],
    });
    expect(moves([[salad({ keepsDays: 1 }), 10]], { served: [platter] })).toEqual([]);
    // What is in no dish served holds nothing back.
    expect(moves([[salad({ keepsDays: 1 }), 10]], { served: [recipe('bread', '1 lb', [leek])] })).toEqual([
      ['salad', 10],
    ]);
  });

  test('is moved without asking only where a night’s wait costs nothing', () => {
    expect(movesUnasked(salad())).toBe(true);
    expect(movesUnasked(salad({ hold: 'hot' }))).toBe(false);
    expect(movesUnasked(salad({ stands: 60 as never }))).toBe(false);
    expect(movesUnasked(salad({ hold: 'room' }))).toBe(false);
    expect(movesUnasked(salad({ hold: 'room', temperatureControl: false }))).toBe(true);
  });
});
