import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import type { ClockFinding } from '../../../../src/engine/plan/clock/clock-finding.ts';
import { day, step } from '../builders.ts';
import { clock, hot, planned } from './clocked.ts';

// Loads at 10:30. Two benches, so that only people stand in each other's way.
const roll = (id: string, station: string, skill?: string) =>
  hot(id, [step('on the day', 'Roll', { station, handsOn: minutes(60), ...(skill && { skill }) })]);
const crew = (pastry: number, people = 4) => ({ people, skills: new Map([['pastry', pastry]]) });
const both = [planned('lunch', [roll('tart', 'cold', 'pastry'), roll('pie', 'stove', 'pastry')])];

describe('a step that takes a skill', () => {
  test('waits for one of those who have it, whoever else has their hands free', () => {
    const { shown, steps } = clock(both, { crew: crew(1) });
    expect(shown.map((each) => each.slice(-10).trim()).sort()).toEqual(['8:30–9:30', '9:30–10:30']);
    expect(steps.map(({ why }) => why)).toContainEqual(
      expect.objectContaining({ kind: 'in use', what: 'skill', name: 'pastry', from: 570 }),
    );
  });

  test('is done beside another where two have it', () => {
    expect(clock(both, { crew: crew(2) }).shown).toEqual(['tart 1 9:30–10:30', 'pie 1 9:30–10:30']);
  });

  test('takes a pair of hands too: one person who has it packs or rolls', () => {
    const { steps, served } = clock([planned('lunch', [roll('tart', 'cold', 'pastry')])], {
      crew: crew(1, 1),
    });
    const [{ pack }] = served as [(typeof served)[number]];
    const [{ begins, handsOff }] = steps as [(typeof steps)[number]];
    expect([[begins, handsOff, pack.begins, pack.ends].sort((a, b) => a - b)]).toEqual([
      [510, 570, 570, 630],
    ]);
  });

  test('that nobody has who cooks that day is done by anybody, and told with who would do', () => {
    const { shown, findings, kept } = clock([planned('lunch', [roll('tart', 'cold', 'pastry')])], {
      crew: crew(0),
    });
    expect(shown).toEqual(['tart 1 9:30–10:30']);
    expect(kept).toMatchObject({ quality: true, hours: true, resources: true });
    expect(findings).toEqual([
      {
        kind: 'clash',
        date: '2027-05-15',
        clash: {
          of: { kind: 'skill', skill: 'pastry' },
          from: 570,
          until: 630,
          asked: 1,
          has: 0,
          what: ['tart: Roll'],
        },
        ways: [{ kind: 'people', skill: 'pastry', from: 570, until: 630 }],
      },
    ]);
  });

  test('on a day of prep waits for its hour, and is not lost where nobody has it', () => {
    const stew = hot('stew', [
      step('the day before', 'Roll', { station: 'cold', handsOn: minutes(60), skill: 'pastry' }),
    ]);
    const later = planned('later', [stew], { date: day('2027-05-16') });
    expect(clock([later], { crew: crew(1) }).shown).toEqual(['stew 1 6:00–7:00']);
    const { shown, findings } = clock([later], { crew: crew(0) });
    expect(shown).toEqual(['stew 1 6:00–7:00']);
    expect(findings).toMatchObject([{ kind: 'clash', ways: [{ kind: 'people', skill: 'pastry' }] }]);
  });

  test('that would begin before the crew is told with a person who has it, since another pair of hands would not do', () => {
    const { findings } = clock(both, { crew: { ...crew(1), from: '9:00' } });
    const [early] = findings as Extract<ClockFinding, { kind: 'before crew' }>[];
    expect(early!.kind).toBe('before crew');
    expect(early!.ways[0]).toEqual({ kind: 'people', skill: 'pastry', from: 510, until: 630 });
  });
});
