import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { crewHours } from '../../../../src/engine/plan/clock/crew-hours.ts';

const crew = (people: number, from: string | undefined, hours: number) => ({
  people,
  from,
  each: minutes(60 * hours),
});
const usual = crew(4, '7:00', 8);
const none = {};

describe('who cooks on a date', () => {
  test('is the kitchen’s crew from its hour until the last truck, where an event or prep is its work', () => {
    const open = [{ from: 420, until: 2880, people: 4 }];
    expect(crewHours(usual, [none], false)).toEqual(open);
    expect(crewHours(usual, [], true)).toEqual(open);
    expect(crewHours(usual, [], false)).toEqual([]);
    expect(crewHours(crew(2, undefined, 8), [none], false)).toEqual([{ from: 0, until: 2880, people: 2 }]);
  });

  test('is nobody where no crew is stated', () => {
    expect(crewHours(undefined, [none], true)).toEqual([]);
  });

  test('is an event’s own cooks at their hours, and beside them the crew only where it has work', () => {
    const own = { cooks: crew(2, '5:00', 6) };
    expect(crewHours(usual, [own], false)).toEqual([{ from: 300, until: 660, people: 2 }]);
    // The larger of the two, never their sum: they may be the same people.
    const both = [
      { from: 300, until: 420, people: 2 },
      { from: 420, until: 660, people: 4 },
      { from: 660, until: 2880, people: 4 },
    ];
    expect(crewHours(usual, [own], true)).toEqual(both);
    expect(crewHours(usual, [own, none], false)).toEqual(both);
  });

  test('is nobody between two that come and go', () => {
    const morning = { cooks: crew(2, '5:00', 2) };
    const evening = { cooks: crew(3, '14:00', 4) };
    expect(crewHours(usual, [evening, morning], false)).toEqual([
      { from: 300, until: 420, people: 2 },
      { from: 840, until: 1080, people: 3 },
    ]);
  });
});
