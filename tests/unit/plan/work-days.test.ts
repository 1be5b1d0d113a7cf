import { describe, expect, test } from 'vitest';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { planWork, type WorkKitchen } from '../../../src/engine/plan/days/work-days.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { dish, event, food, kitchen, line, prices, recipe, step } from './builders.ts';

const onions = recipe('pickled-onions', '1 gal', [line(food('onion'), '8 lb')], {
  keepsDays: 5,
  steps: [step('the day before', 'Slice', { handsOn: minutes(120) })],
});
const leaves = recipe('leaves', '10 servings', [line(food('lettuce'), '1 lb')], {
  steps: [step('the day before', 'Wash', { handsOn: minutes(150) })],
});
const fish = recipe('fish', '10 servings', [line(food('hake'), '1 lb')], {
  keepsDays: 1,
  steps: [step('the day before', 'Cut', { handsOn: minutes(90) })],
});

function work(people: number, hours: number) {
  const place: WorkKitchen = {
    ...kitchen(),
    equipment: new Map(),
    crew: { people, each: minutes(hours * 60), from: '7:00' },
    day: { pack: 60, load: 30, clear: 75 },
  };
  const input = event([
    dish(onions, '1 fl oz per guest'),
    dish(leaves, '1 serving per guest'),
    dish(fish, '1 serving per guest'),
  ]);
  return planWork(planEvent(input, kitchen(), prices()), place);
}

describe('days held to the crew', () => {
  test('a day with more work than hands says what would keep a day longer, and nothing that would not', () => {
    // 120 + 150 + 90 = 360 min = 6 h, and 1 × 5 h. The onions keep 5 days; the leaves do not say; fish of two days
    // before would be past its one day, being made on day 1.
    expect(work(1, 5).findings).toEqual([
      {
        about: '1 day before',
        what: 'the work does not fit: 6 h hands-on, but the crew has 1 × 5 h = 5 h',
        wayOut: 'pickled-onions (2 h) would keep if done 2 days before; or bring in more people',
      },
    ]);
  });

  test('work at one station longer than the shift does not fit, however many people there are', () => {
    expect(work(4, 5).findings[0]?.what).toBe(
      'the work does not fit: it takes 6 h from the first task to the last, but the shift is 5 h',
    );
  });

  test('a day that fits says nothing', () => {
    expect(work(1, 6).findings).toEqual([]);
  });
});
