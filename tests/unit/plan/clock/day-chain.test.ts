import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import type { ChainLink } from '../../../../src/engine/plan/clock/day-chain.ts';
import { laterWays } from '../../../../src/engine/plan/clock/later-ways.ts';
import { day, step } from '../builders.ts';
import { bake, clock, hot, planned } from './clocked.ts';

type Clock = ReturnType<typeof clock>;

function told({ time }: Pick<Clock, 'time'>, links: readonly ChainLink[] = []): string[] {
  return links.map(({ what, begins }) => {
    const name =
      what.kind === 'step' || what.kind === 'cooling'
        ? `${what.step.batch.recipe.id} ${what.step.number}`
        : what.event;
    const to = what.kind === 'cooling' && what.to ? ` ${what.to.fahrenheit.toString()}` : '';
    return `${time(begins)} ${what.kind} ${name}${to}`;
  });
}

const keeps = { stands: minutes(240) };
const lunch = () => [planned('lunch', [bake('pie', keeps), bake('tart', keeps)])];

describe('the critical path of a date', () => {
  test('leads from the first task over the oven, which another one has, to the truck', () => {
    // One oven: one dish is in from 9:30 to 10:30, so the other bakes from 8:20 and is filled from 8:00 at the latest.
    const found = clock(lunch());
    const [served, ...others] = found.chains;
    const [, , second, ...rest] = told(found, served?.links);
    const [first] = found.steps.toSorted((a, b) => a.begins - b.begins);
    expect(told(found, served?.links)[0]).toBe(
      `${found.time(first!.begins)} step ${first!.batch.recipe.id} ${first!.number}`,
    );
    expect(second).toMatch(/ step (pie|tart) 2$/);
    expect(rest).toEqual(['10:30 load lunch', '11:00 leave lunch']);
    expect(others).toEqual([]);
    // The same steps that the picture marks.
    const marked = found.steps.filter(({ critical }) => critical).map(({ id }) => id);
    const linked = served!.links.flatMap(({ what }) => (what.kind === 'step' ? [what.step.id] : []));
    expect(linked.sort()).toEqual(marked.sort());
    expect([found.served[0]!.load.critical, found.served[0]!.pack.critical]).toEqual([true, false]);
  });

  test('is one for each of two trucks, the one that leaves first first, and both are marked', () => {
    // The tea loads at 12:00: its cake is in the oven from 11:00, put in from 10:50 and filled from 10:30. The lunch loads at
    // 10:30: its pie is in from 9:30, put in from 9:20 and filled from 9:00. Neither waits for the other.
    const found = clock([
      planned('tea', [bake('cake')], { serveAt: '14:00' }),
      planned('lunch', [bake('pie')]),
    ]);
    expect(found.chains.map(({ of, event, links }) => [of, event, told(found, links)])).toEqual([
      ['served', 'lunch', ['9:00 step pie 1', '9:20 step pie 2', '10:30 load lunch', '11:00 leave lunch']],
      ['served', 'tea', ['10:30 step cake 1', '10:50 step cake 2', '12:00 load tea', '12:30 leave tea']],
    ]);
    expect(found.steps.map(({ critical }) => critical)).toEqual([true, true, true, true]);
    expect(found.served.map(({ load }) => load.critical)).toEqual([true, true]);
  });

  test('is the other truck’s too where its dish has to be out of the oven for it', () => {
    // The supper loads at 11:00 and its tart is in from 10:00, so the pie of the lunch, loaded at 10:30, is out by 10:00.
    const found = clock([
      planned('lunch', [bake('pie')]),
      planned('supper', [bake('tart')], { serveAt: '13:00' }),
    ]);
    expect(found.chains.map(({ event, links }) => [event, told(found, links)])).toEqual([
      [
        'supper',
        ['8:30 step pie 1', '8:50 step pie 2', '9:50 step tart 2', '11:00 load supper', '11:30 leave supper'],
      ],
    ]);
  });

  test('goes over the time that food takes to get cold, and over packing', () => {
    const pot = hot(
      'pot',
      [step('on the day', 'Boil', { handsOn: minutes(20), cookTo: { amount: 165, scale: 'F' } as never })],
      { hold: 'cold', chill: minutes(120), pack: { chill: { container: 'pan', each: undefined } } },
    );
    const found = clock([planned('lunch', [pot])]);
    expect(told(found, found.chains[0]?.links)).toEqual([
      '7:55 step pot 1',
      '8:15 cooling pot 1 70',
      '8:55 cooling pot 1',
      '9:30 pack lunch',
      '10:30 load lunch',
      '11:00 leave lunch',
    ]);
  });

  test('of work for other days is one of its own, back to what begins it', () => {
    const dough = hot('dough', [
      step('1 day before', 'Mix', { station: 'cold', handsOn: minutes(30) }),
      step('1 day before', 'Shape', { station: 'cold', handsOn: minutes(45) }),
    ]);
    const found = clock([planned('lunch', [dough])], {}, day('2027-05-14'));
    expect(found.chains.map(({ of, links }) => [of, told(found, links)])).toEqual([
      ['prep', ['6:00 step dough 1', '6:30 step dough 2']],
    ]);
  });
});

describe('what lets a step begin later', () => {
  test('is tried: a second oven does, as far as it says', () => {
    const found = clock(lunch());
    const first = found.steps.toSorted((a, b) => a.begins - b.begins)[0]!;
    const ways = laterWays(found, first, found.chainOf(first.id));
    expect(ways.map(({ more }) => more)).toContainEqual({ kind: 'equipment', equipment: 'oven' });
    const oven = ways.find(({ more }) => more.kind === 'equipment')!;
    // By hand the same day in a kitchen of two ovens.
    const two = clock(lunch(), { ovens: 2 });
    expect(oven.begins).toBe(two.steps.find(({ id }) => id === first.id)!.begins);
    expect(oven.begins).toBeGreaterThan(first.begins);
  });

  test('is nothing that was in use where nothing was: only its truck', () => {
    const found = clock([planned('lunch', [bake('pie')])]);
    const [first] = found.steps;
    expect(laterWays(found, first!, found.chainOf(first!.id))).toEqual([]);
    expect(told(found, found.chainOf(first!.id))).toEqual([
      '9:00 step pie 1',
      '9:20 step pie 2',
      '10:30 load lunch',
      '11:00 leave lunch',
    ]);
  });
});
