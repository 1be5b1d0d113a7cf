import { describe, expect, it } from 'vitest';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { hoursServed, timeAway } from '../../../src/engine/menu/time-away.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import { type TimeAway, timeOut } from '../../../src/engine/safety/time-without-control.ts';
import { inWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, recipe, step } from '../plan/builders.ts';

const sandwiches = recipe('sandwiches', '100 pieces', [line(food('bread'), '100 each')], {
  hold: 'room',
  steps: [step('on the day', 'Fill them')],
});
const bread = { ...sandwiches, id: 'bread-rolls', temperatureControl: false };

const away = (travel?: number, setUp?: number, service?: number): TimeAway => ({
  travel: travel === undefined ? undefined : minutes(travel),
  setUp: setUp === undefined ? undefined : minutes(setUp),
  service: service === undefined ? undefined : minutes(service),
});

const stands = (time: TimeAway, of = sandwiches) => {
  const found = timeOut(of, time, FOOD_CODE_2022, 'F', 'Sandwiches');
  return found && { ...found, what: inWords(found.what), wayOut: inWords(found.wayOut) };
};

describe('food that stands neither hot nor cold', () => {
  it('has four hours for travel, set-up and service together, and not a minute more', () => {
    expect(stands(away(30, 60, 150))).toBeUndefined();
    expect(stands(away(31, 60, 150))).toEqual({
      tooLong: true,
      what: 'Sandwiches is neither hot nor cold for travel 31 min + set-up 1 h + service 2 h 30 min = 4 h 1 min; FDA Food Code 2022, 3-501.19(B) allows 4 h, or 6 h where it never gets above 70 °F',
      wayOut:
        'carry it hot or cold, bring it out in batches, or mark each batch with its discard time; the local food code and a licensed food-safety manager decide',
    });
  });

  it('made at the place entirely stands from its making, whatever the way there takes', () => {
    const pitchers = recipe('pitchers', '1 gal', [line(food('cream'), '1 gal')], {
      hold: 'room',
      steps: [step('at serving', 'Fill', { handsOn: minutes(10), unattended: minutes(5) })],
    });
    expect(stands(away(300, 90, 225), pitchers)).toBeUndefined();
    expect(stands(away(300, 90, 226), pitchers)?.what).toContain(
      'making it 15 min + service 3 h 46 min = 4 h 1 min;',
    );
    // A step in the kitchen takes it out of the cold there.
    const half = { ...pitchers, steps: [step('on the day', 'Fill'), ...pitchers.steps] };
    expect(stands(away(60, 90, 100), half)?.what).toContain(
      'travel 1 h + set-up 1 h 30 min + service 1 h 40 min',
    );
  });

  it('is told of where a part of the time is not said, and never passes for short', () => {
    const unsaid = stands(away(30, undefined, 150));
    expect(unsaid?.tooLong).toBe(false);
    expect(unsaid?.what).toContain(
      'travel 30 min + service 2 h 30 min = 3 h, not counting set-up, whose time is not stated',
    );
    expect(stands(away())?.what).toContain('for a time that is not stated (travel, set-up, and service);');
    expect(stands(away(300))?.tooLong).toBe(true);
  });

  it('is not food held hot or cold, nor what is safe at room temperature', () => {
    expect(stands(away(300, 300, 300), bread)).toBeUndefined();
    expect(stands(away(300, 300, 300), { ...sandwiches, hold: 'cold' })).toBeUndefined();
  });

  it('is a finding of the plan, under the dish, as long as no clock can tell it', () => {
    const plan = (time?: TimeAway) =>
      planEvent(
        event([dish(sandwiches, '1 piece per guest'), dish(bread, '1 piece per guest')], { away: time }),
        kitchen(),
        new Map(),
      ).findings.filter(({ what }) => inWords(what).includes('3-501.19'));
    expect(plan(away(20, 40, 120))).toEqual([]);
    // All of it stated: the day's clock has it to the minute.
    expect(plan(away(20, 40, 300))).toEqual([]);
    expect(plan(away(undefined, 40, 300)).map(({ about }) => about)).toEqual(['sandwiches']);
    expect(plan().map(({ about }) => about)).toEqual(['sandwiches']);
  });
});

describe('how long food is away', () => {
  it('takes the hours the menu is served, else the proposal’s, and never longer than its crew works', () => {
    const proposal = { travel: '35 min', setUp: minutes(60), hours: '5.5' };
    expect(timeAway(proposal, '4 hours')).toEqual(away(35, 60, 240));
    expect(timeAway({ ...proposal, hours: '3' }, '4 hours')).toEqual(away(35, 60, 180));
    expect(hoursServed('5 hours', '3')).toBe('3 hours');
    expect(hoursServed('4 hours', '5.5')).toBe('4 hours');
    expect(timeAway(proposal, null)).toEqual(away(35, 60, 330));
    expect(timeAway({ travel: undefined, setUp: undefined, hours: null }, null)).toEqual(away());
  });
});
