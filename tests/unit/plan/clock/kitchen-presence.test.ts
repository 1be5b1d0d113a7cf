import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { hoursOn, kitchenHours } from '../../../../src/engine/plan/clock/kitchen-presence.ts';
import { kitchenRota } from '../../../../src/engine/plan/clock/rota.ts';
import { day, step } from '../builders.ts';
import { clock, hot, type Place, planned } from './clocked.ts';

const hours = (plans: Parameters<typeof clock>[0], place: Place = {}) => {
  const day = clock(plans, place);
  return Object.fromEntries(hoursOn({ clock: day, rota: kitchenRota(day) }));
};
const soup = hot('soup', [
  step('on the day', 'Sweat', { handsOn: minutes(20), unattended: minutes(40), useWithin: minutes(10) }),
  step('on the day', 'Blend', { handsOn: minutes(15) }),
]);
const cold = (id: string, handsOn: number) =>
  hot(id, [step('on the day', 'Toss', { station: 'cold', handsOn: minutes(handsOn) })], { hold: 'cold' });

describe('the kitchen’s hours of an event', () => {
  test('go from each cook’s first task to the last, the wait between and loading included', () => {
    // One sweats the soup from 9:15 to 9:35 and blends it from 10:15 to 10:30: there for 1 h 15 min, at work for 35 min.
    // The other packs from 9:30 to 10:30 and loads until 11:00: there for 1 h 30 min, of it an hour of packing.
    expect(hours([planned('lunch', [soup])], { crew: { people: 2 } })).toEqual({
      lunch: { there: 75 + 90, work: 35 + 60 },
    });
  });

  test('are shared by two events of a day in proportion to their work, to the minute', () => {
    // Thirty minutes of salad, an hour of packing and half an hour of loading each; the door takes one truck at a time.
    const both = [planned('lunch', [cold('salad', 30)]), planned('picnic', [cold('slaw', 30)])];
    const { lunch, picnic } = hours(both);
    const alone = hours([both[0]!]).lunch!;
    expect([lunch!.work, picnic!.work]).toEqual([90, 90]);
    expect(Math.abs(lunch!.there - picnic!.there)).toBeLessThanOrEqual(1);
    expect(lunch!.there).toBeGreaterThanOrEqual(alone.work);
    // Twice the work on one of them: 120 of 210 minutes of work and loading, against 90 + 30 of the same.
    const heavy = hours([planned('lunch', [cold('salad', 90)]), both[1]!]);
    const all = heavy.lunch!.there + heavy.picnic!.there;
    expect(heavy.lunch!.there).toBe(Math.floor((all * 180) / 300));
  });

  test('are not known where nobody is stated to cook', () => {
    expect(hours([planned('lunch', [soup])], { crew: null })).toEqual({});
  });

  /** A date on which one cook packs for events, from one minute to another each. */
  const packing = (...events: readonly [id: string, from: number, until: number][]) =>
    ({
      clock: {
        date: day('2027-05-15'),
        steps: [],
        served: events.map(([id, begins, ends]) => ({
          plan: { input: { id } },
          pack: { begins, ends },
          load: { begins: ends, ends },
        })),
      },
      rota: { cooks: new Map(), packs: new Map(events.map(([id]) => [id, [0]])), loads: new Map() },
    }) as unknown as Parameters<typeof hoursOn>[0];

  test('share what is left of a minute alike, in whatever order the events are', () => {
    const shared = hoursOn(packing(['lunch', 0, 30], ['brunch', 31, 61]));
    expect([shared.get('brunch')?.there, shared.get('lunch')?.there]).toEqual([30, 31]);
  });

  test('leave out what is not on the clock and what takes no hands', () => {
    const worked = packing(['lunch', 60, 90]);
    const idle = { begins: 0, handsOff: 20, batch: { events: [] } };
    const steps = [
      { ...idle, id: 'a', clock: undefined, handsFor: 10 },
      { ...idle, id: 'b', clock: {}, handsFor: 0 },
    ];
    const cooks = new Map(steps.map(({ id }) => [id, [0]]));
    const with_ = {
      clock: { ...worked.clock, steps },
      rota: { ...worked.rota, cooks },
    } as unknown as typeof worked;
    expect(hoursOn(with_).get('lunch')?.there).toBe(30);
  });

  test('of an event are those of all its dates, each once, and not known where no date’s are', () => {
    const dates = new Map([
      ['2027-05-14', packing(['lunch', 0, 60])],
      ['2027-05-15', packing(['lunch', 0, 30], ['tea', 30, 60])],
    ]);
    const none = packing();
    const schedule = { on: (date: string) => dates.get(date) ?? none } as never;
    const plan = (id: string, ...days: readonly string[]) =>
      ({ input: { id, date: day('2027-05-15') }, days: days.map((date) => ({ date })) }) as never;
    expect(kitchenHours(plan('lunch', '2027-05-14', '2027-05-15'), schedule)).toEqual({
      there: 90,
      work: 90,
    });
    expect(kitchenHours(plan('tea', '2027-05-13'), schedule)).toEqual({ there: 30, work: 30 });
    expect(kitchenHours(plan('supper', '2027-05-14'), schedule)).toBeUndefined();
  });
});
