import { describe, expect, test } from 'vitest';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { type TimelineInput, timelineOf } from '../../../src/engine/plan/days/timeline.ts';
import { planTimeline } from '../../../src/exports/plan/timeline.ts';
import { day } from './builders.ts';

const input = (facts: Partial<TimelineInput> = {}): TimelineInput => ({
  serveAt: '18:00',
  away: { travel: minutes(35), setUp: minutes(90), service: minutes(240) },
  times: { pack: 60, load: 30, clear: 75 },
  kitchenSpan: 250,
  placeSpan: 40,
  placeHandsOn: 100,
  ...facts,
});

const shown = (facts?: Partial<TimelineInput>) =>
  planTimeline(timelineOf(input(facts)), day('2027-05-15'), 'en-GB').map(({ part, date, begins, ends }) =>
    [part, date.slice(-2), begins, ends].join(' ').trim(),
  );

describe('the event’s day worked back from serving', () => {
  test('each part ends when the next begins', () => {
    // 18:00 − 1:30 = 16:30 − 0:35 = 15:55 − 0:30 = 15:25 − 1:00 = 14:25 − 4:10 = 10:15; 18:00 + 4:00 + 1:15.
    expect(shown()).toEqual([
      'cook 15 10:15 14:25',
      'pack 15 14:25 15:25',
      'load 15 15:25 15:55',
      'leave 15 15:55',
      'arrive 15 16:30',
      'set up 15 16:30 18:00',
      'finish 15 17:20 18:00',
      'serve 15 18:00 22:00',
      'clear 15 22:00 23:15',
      'done 15 23:15',
    ]);
  });

  test('a breakfast is packed on the day before, and a late supper cleared on the day after', () => {
    const early = shown({ serveAt: '2:30', kitchenSpan: 0 });
    expect(early[0]).toBe('pack 14 22:55 23:55');
    expect(shown({ serveAt: '21:00' }).slice(-2)).toEqual(['clear 16 01:00 02:15', 'done 16 02:15']);
    const late = planTimeline(timelineOf(input({ serveAt: '21:00' })), day('2027-05-15'), 'en-US');
    expect(late.map(({ part, dateText }) => `${part} ${dateText}`).slice(-3)).toEqual([
      'serve undefined',
      'clear Sunday, May 16, 2027',
      'done Sunday, May 16, 2027',
    ]);
  });

  test('what nobody has said is told: no travel, the usual set-up, no end of serving', () => {
    const entries = timelineOf(input({ away: undefined, placeSpan: 0 }));
    expect(entries.map(({ part }) => part)).toEqual([
      'cook',
      'pack',
      'load',
      'leave',
      'arrive',
      'set up',
      'serve',
    ]);
    expect(entries.find(({ part }) => part === 'leave')?.why).toBe(
      'travel time is not stated, so none is planned',
    );
    expect(entries.find(({ part }) => part === 'arrive')?.begins).toBe(18 * 60 - 90);
  });

  test('finishing never begins before arriving, and says how many hands that takes', () => {
    const finish = timelineOf(input({ placeSpan: 150, placeHandsOn: 345 })).find(
      ({ part }) => part === 'finish',
    );
    // 345 min in 90 min is 3.8 pairs of hands, so 4.
    expect(finish).toMatchObject({
      begins: 990,
      ends: 1080,
      why: '5 h 45 min of work in 1 h 30 min: needs 4 people',
    });
  });
});
