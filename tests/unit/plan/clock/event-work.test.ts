import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { eventWork } from '../../../../src/engine/plan/clock/event-work.ts';
import { kitchenRota } from '../../../../src/engine/plan/clock/rota.ts';
import type { EventInput } from '../../../../src/engine/plan/event-input.ts';
import type { EventPlan } from '../../../../src/engine/plan/event-plan.ts';
import { step } from '../builders.ts';
import { bake, clock, hot, planned } from './clocked.ts';

const work = (plans: readonly EventPlan[], id: string) => {
  const own = plans.find(({ input }) => input.id === id);
  if (!own) throw new Error(`no event ${id}`);
  return eventWork(own, {
    on: (date) => {
      const found = clock(plans, {}, date);
      return { clock: found, rota: kitchenRota(found), findings: found.findings };
    },
  });
};
const timeline = (facts: Partial<EventInput>, of = [bake('pie')]) =>
  work([planned('lunch', of, facts)], 'lunch').timeline;
const parts = (entries: ReturnType<typeof timeline>) =>
  entries.map(({ part, begins, ends }) => [part, begins, ends]);
const there = (id: string, handsOn: number) =>
  hot(id, [step('at serving', 'Sear', { station: 'stove', handsOn: minutes(handsOn) })]);

describe('an event’s day', () => {
  test('goes from the first task to the truck unloaded, each part with its reason', () => {
    expect(timeline({})).toEqual([
      { part: 'cook', begins: 540, ends: 630, why: { kind: 'cook', dish: 'pie' } },
      { part: 'pack', begins: 570, ends: 630, why: { kind: 'takes', minutes: 60 } },
      { part: 'load', begins: 630, ends: 660, why: { kind: 'takes', minutes: 30 } },
      { part: 'leave', begins: 660, ends: 660, why: { kind: 'on the road', minutes: 30 } },
      { part: 'arrive', begins: 690, ends: 690, why: { kind: 'before serving', minutes: 60 } },
      { part: 'set up', begins: 690, ends: 750, why: { kind: 'takes', minutes: 60 } },
      { part: 'serve', begins: 750, ends: 870, why: { kind: 'takes', minutes: 120 } },
      { part: 'clear', begins: 870, ends: 945, why: { kind: 'takes', minutes: 75 } },
      { part: 'done', begins: 945, ends: 945, why: { kind: 'packed up' } },
      { part: 'back', begins: 975, ends: 975, why: { kind: 'way back' } },
      { part: 'unload', begins: 975, ends: 1005, why: { kind: 'takes', minutes: 30 } },
    ]);
  });

  test('says what is not stated, and guesses nothing after it', () => {
    const silent = timeline({ away: undefined });
    expect(silent.find(({ part }) => part === 'leave')?.why).toEqual({ kind: 'travel not stated' });
    expect(silent.find(({ part }) => part === 'set up')?.why).toEqual({ kind: 'usual set-up', minutes: 90 });
    expect(silent.at(-1)).toEqual({
      part: 'serve',
      begins: 750,
      ends: 750,
      why: { kind: 'service not stated' },
    });
  });

  test('has no way back where there is none, and is unloaded at once', () => {
    const here = timeline({ away: { travel: minutes(0), setUp: minutes(30), service: minutes(60) } });
    expect(parts(here).slice(3)).toEqual([
      ['leave', 720, 720],
      ['arrive', 720, 720],
      ['set up', 720, 750],
      ['serve', 750, 810],
      ['clear', 810, 885],
      ['done', 885, 885],
      ['unload', 885, 915],
    ]);
    expect(here[3]?.why).toEqual({ kind: 'on the road', minutes: 0 });
  });

  test('has each course of a plated meal, and none of a buffet', () => {
    const plated = timeline({ style: 'plated' });
    expect(plated.filter(({ part }) => part === 'course')).toEqual([
      { part: 'course', begins: 750, ends: 780, why: { kind: 'course', course: 'Table' } },
    ]);
    expect(timeline({}).some(({ part }) => part === 'course')).toBe(false);
    // No course goes on after service is over.
    const short = timeline({
      style: 'plated',
      away: { travel: minutes(30), setUp: minutes(60), service: minutes(20) },
    });
    expect(short.find(({ part }) => part === 'course')?.ends).toBe(770);
  });

  test('has what is finished at the place, with the work in all and the most who are at it at once', () => {
    const two = timeline({ placeCooks: 2 }, [there('fish', 40), there('soup', 30)]);
    expect(two.find(({ part }) => part === 'finish')).toEqual({
      part: 'finish',
      begins: 710,
      ends: 750,
      why: { kind: 'finish', handsOn: 70, people: 2 },
    });
    expect(two.some(({ part }) => part === 'cook')).toBe(false);
    const one = timeline({ placeCooks: 1 }, [there('fish', 20), there('soup', 30)]);
    expect(one.find(({ part }) => part === 'finish')).toMatchObject({
      begins: 700,
      ends: 750,
      why: { people: 1 },
    });
  });
});

describe('an event’s part of the schedule', () => {
  const roast = hot('roast', [
    step('the day before', 'Cure', { handsOn: minutes(30) }),
    step('on the day', 'Roast', { handsOn: minutes(20) }),
    step('at serving', 'Carve', { handsOn: minutes(15) }),
  ]);

  test('has each task with its hours, day by day, in the kitchen and at the place', () => {
    const { days, timeline: entries, waiting } = work([planned('lunch', [roast])], 'lunch');
    expect(
      days.map(({ day, kitchen, place }) => [
        day.date,
        kitchen.map(({ task, time }) => [task.number, time.begins]),
        place.map(({ task, time }) => [task.number, time.begins]),
      ]),
    ).toEqual([
      ['2027-05-14', [[1, 360]], []],
      ['2027-05-15', [[2, 610]], [[3, 735]]],
    ]);
    // Cooking is what is done on the event's own day.
    expect(entries.find(({ part }) => part === 'cook')).toMatchObject({ begins: 610, ends: 630 });
    // Carved as the first guest is served, it does not wait.
    expect(waiting).toMatchObject([{ as: 'hot', from: 750, until: 750 }]);
  });

  test('has its own findings and those of all, and none of another event', () => {
    const crisp = bake('crisp', { stands: minutes(60) });
    const plans = [planned('lunch', [bake('pie')]), planned('supper', [crisp], { serveAt: '15:00' })];
    expect(work(plans, 'lunch').findings).toEqual([]);
    expect(work(plans, 'supper').findings).toMatchObject([{ kind: 'waits', event: 'supper' }]);
    expect(work(plans, 'supper').days.map(({ kitchen }) => kitchen.map(({ time }) => time.begins))).toEqual([
      [690, 710],
    ]);
  });

  test('waits from its last step to its course, as long as it may where its recipe says nothing', () => {
    const { waiting } = work([planned('lunch', [bake('pie')])], 'lunch');
    expect(waiting).toMatchObject([{ as: 'hot', from: 630, until: 750, stands: 150 }]);
    const early = work([planned('lunch', [hot('jam', [step('the day before', 'Boil')])])], 'lunch');
    expect(early.waiting).toEqual([]);
  });
});
