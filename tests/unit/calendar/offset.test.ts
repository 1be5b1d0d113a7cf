import { describe, expect, it } from 'vitest';
import { daysBeforeText, parseDaysBefore } from '../../../src/engine/calendar/offset.ts';
import { parseWhen, whenText } from '../../../src/engine/calendar/when.ts';

describe('days before an event', () => {
  it('are read as people write them', () => {
    const cases: [string, number][] = [
      ['2 days before', 2],
      ['1 day before', 1],
      ['the day before', 1],
      ['  The  Day Before ', 1],
      ['2 weeks before', 14],
      ['a week before', 7],
      ['one day after', -1],
      ['an day before', 1],
      ['the day after', -1],
      ['999 weeks before', 6993],
      ['2 Weeks\tafter', -14],
      ['on the day', 0],
      ['at serving', 0],
      ['0 days after', 0],
      ['3 days after', -3],
    ];
    for (const [text, days] of cases)
      expect([text, parseDaysBefore(text)]).toEqual([text, { ok: true, value: days }]);
  });

  it('are refused with what to write', () => {
    for (const text of [
      '',
      'before',
      '-2 days before',
      '1.5 days before',
      '1000 days before',
      '2 days',
      'about 2 days before',
      '2 days before noon',
      'two days before',
      'the day before it',
    ]) {
      expect([text, parseDaysBefore(text).ok]).toEqual([text, false]);
    }
    const refused = parseDaysBefore('soon');
    expect(refused.ok ? '' : refused.wayOut).toContain('"2 days before"');
  });

  it('print so that they read back', () => {
    for (const days of [14, 2, 1, 0, -1, -10]) {
      expect(parseDaysBefore(daysBeforeText(days))).toEqual({ ok: true, value: days });
    }
  });
});

describe('when a task is done', () => {
  it('is a day, or the service itself', () => {
    const read = (text: string) => {
      const when = parseWhen(text);
      return when.ok && [when.value.daysBefore, when.value.atServing, whenText(when.value)];
    };
    expect([' At Serving ', 'on the day', '2 days before', 'a day after'].map(read)).toEqual([
      [0, true, 'at serving'],
      [0, false, 'on the day'],
      [2, false, '2 days before'],
      [-1, false, '1 day after'],
    ]);
    expect(parseWhen('soon').ok).toBe(false);
  });

  it('may be that day only', () => {
    const when = parseWhen('The day before  only');
    expect(when).toEqual({ ok: true, value: { daysBefore: 1, atServing: false, only: true } });
    expect(when.ok && whenText(when.value)).toBe('1 day before only');
    expect(parseWhen('on the day')).toEqual({ ok: true, value: { daysBefore: 0, atServing: false } });
    expect(
      ['only', 'onthe day only', 'on the day, only', 'on the dayonly'].map((text) => parseWhen(text).ok),
    ).toEqual([false, false, false, false]);
  });
});
