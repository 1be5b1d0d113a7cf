import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { FOOD_CODE_2022 } from '../../../../src/engine/safety/limits.ts';
import { day, step } from '../builders.ts';
import { bake, clock, hot, planned } from './clocked.ts';

const keeps = { stands: minutes(240) };
const findings = (...given: Parameters<typeof clock>) => clock(...given).findings;
const later = (...of: ReturnType<typeof hot>[]) => planned('later', of, { date: day('2027-05-16') });
const dayBefore = (id: string, handsOn: number) =>
  hot(id, [step('the day before', 'Stir', { handsOn: minutes(handsOn) })]);

describe('hands that go on too long', () => {
  test('after an event’s own cooks have gone are told: they are there until the truck is loaded', () => {
    // Loaded from 10:30 to 11:00; from 5:00 on, 6 h are just enough.
    const of = (each: number) =>
      findings([
        planned('lunch', [bake('pie')], { cooks: { people: 2, each: minutes(each), from: '5:00' } }),
      ]);
    expect(of(359)).toEqual([{ kind: 'after crew', date: '2027-05-15', at: 660, crew: 659 }]);
    expect(of(360)).toEqual([]);
  });

  test('from the first task to the truck for longer than a shift are told', () => {
    // Filled from 9:00, loaded by 11:00.
    const of = (each: number) =>
      findings([planned('lunch', [bake('pie')])], { crew: { each: minutes(each) } });
    expect(of(119)).toEqual([{ kind: 'long day', date: '2027-05-15', from: 540, until: 660, each: 119 }]);
    expect(of(120)).toEqual([]);
  });

  test('at work for another day after the crew has gone are told, and nothing that needs no hands', () => {
    // One pair of hands from 6:00: 60 and 10 min.
    const of = (each: number) =>
      findings([later(dayBefore('stew', 60), dayBefore('broth', 10))], {
        crew: { people: 1, each: minutes(each) },
      });
    expect(of(69)).toEqual([{ kind: 'after crew', date: '2027-05-15', at: 430, crew: 429 }]);
    expect(of(70)).toEqual([]);
    const proof = hot('dough', [
      step('the day before', 'Proof', { handsOn: minutes(10), unattended: minutes(600) }),
      step('the day before', 'Rest', { handsOn: minutes(0), unattended: minutes(60) }),
    ]);
    expect(findings([later(proof)], { crew: { each: minutes(10) } })).toEqual([]);
    expect(findings([later(proof)], { crew: { each: minutes(9) } })).toMatchObject([{ at: 370, crew: 369 }]);
  });

  test('on a date that cooks both for its own event and for another are told of each', () => {
    const plans = [planned('lunch', [bake('pie')]), later(dayBefore('stew', 60))];
    expect(findings(plans, { crew: { each: minutes(119) } })).toMatchObject([{ kind: 'long day' }]);
    expect(findings(plans, { crew: { each: minutes(59) } })).toMatchObject([
      { kind: 'long day', from: 540, until: 660 },
      { kind: 'after crew', at: 420, crew: 419 },
    ]);
  });

  test('are nobody’s where the crew’s hour is not stated', () => {
    const crew = { each: minutes(1), from: undefined };
    expect(findings([later(dayBefore('stew', 60))], { crew })).toEqual([]);
    expect(findings([planned('lunch', [bake('pie')])], { crew })).toEqual([]);
  });
});

describe('work that has no room wherever it is put', () => {
  const allDay = (id: string, station: string, facts: object) =>
    hot(id, [step('on the day', 'Cook', { station, ...facts })], { stands: minutes(3000) });

  test('for want of hands is told with all that asks for them, from the evening before', () => {
    // Twenty hours each, back from 10:30, and one pair of hands.
    const long = { handsOn: minutes(1200) };
    const { kept, findings: told } = clock(
      [planned('lunch', [allDay('a', 'stove', long), allDay('b', 'cold', long)])],
      { crew: { people: 1 } },
    );
    expect(kept.resources).toBe(false);
    expect(told).toEqual([
      { kind: 'before crew', date: '2027-05-15', at: -570, crew: 360, ways: [] },
      {
        kind: 'clash',
        date: '2027-05-15',
        clash: {
          of: { kind: 'hands' },
          from: -570,
          until: 630,
          asked: 2,
          has: 1,
          what: ['a: Cook', 'b: Cook'],
        },
        ways: [],
      },
      { kind: 'long day', date: '2027-05-15', from: -570, until: 660, each: 600 },
    ]);
  });

  test('for want of an oven is told by its name, for as long as both are in and no longer', () => {
    const long = { handsOn: minutes(10), unattended: minutes(1200) };
    const { findings: told } = clock([
      planned('lunch', [allDay('a', 'oven', long), allDay('b', 'oven', long)]),
    ]);
    const [clash, ...others] = told.filter(({ kind }) => kind === 'clash');
    expect(others).toEqual([]);
    expect(clash).toMatchObject({
      clash: {
        of: { kind: 'equipment', equipment: { name: 'Oven' } },
        from: -570,
        until: 630,
        asked: 2,
        has: 1,
      },
    });
  });
});

describe('ways out of a day that begins before its crew comes', () => {
  const stir = (id: string, station: string, facts: object = keeps) =>
    hot(id, [step('on the day', 'Stir', { station, handsOn: minutes(60) })], facts);
  const of = (dishes: ReturnType<typeof hot>[], people: number) =>
    clock([planned('lunch', dishes)], { crew: { from: '9:00', people } });

  test('are one more pair of hands, for packing too: it is work as cooking is', () => {
    // Both are stirred from 9:30 to 10:30, and the two who stir have packed by then: from 8:30.
    const { findings: told, served, time } = of([stir('a', 'stove'), stir('b', 'cold')], 2);
    expect(served.map(({ pack }) => time(pack.begins))).toEqual(['8:30']);
    expect(told).toEqual([
      {
        kind: 'before crew',
        date: '2027-05-15',
        at: 510,
        crew: 540,
        ways: [
          { kind: 'people', from: 510, until: 630 },
          { kind: 'come', at: 510 },
        ],
      },
    ]);
    expect(of([stir('a', 'stove'), stir('b', 'cold')], 3).findings).toEqual([]);
  });

  test('are one more at the bench that both need, and no hands, of which there are enough', () => {
    expect(of([stir('a', 'stove'), stir('b', 'stove')], 4).findings).toMatchObject([
      {
        at: 510,
        ways: [
          { kind: 'station', station: 'stove' },
          { kind: 'come', at: 510 },
        ],
      },
    ]);
  });

  test('are to do the day before what keeps, and only that', () => {
    const cold = (id: string, facts: object = {}) => stir(id, 'cold', { hold: 'cold', ...facts });
    const moved = (...dishes: ReturnType<typeof hot>[]) => {
      const [early] = of(dishes, 4).findings;
      return early?.kind === 'before crew' ? early.ways.filter(({ kind }) => kind === 'day before') : early;
    };
    // Back from 10:15: the second of two would begin at 8:15.
    expect(moved(cold('a', { keepsDays: 3 }), cold('b'))).toEqual([{ kind: 'day before', recipes: ['a'] }]);
    expect(moved(cold('a'), cold('b'))).toEqual([]);
    // Of three, two have to go, and the fewest that are enough are named.
    const three = [cold('a', { keepsDays: 3 }), cold('b', { keepsDays: 3 }), cold('c')];
    expect(moved(...three)).toEqual([{ kind: 'day before', recipes: ['a', 'b'] }]);
  });
});

describe('why a step begins when it does', () => {
  const whys = (...given: Parameters<typeof clock>) =>
    Object.fromEntries(
      clock(...given).steps.map(({ batch, number, why }) => [`${batch.recipe.id} ${number}`, why]),
    );
  const cold = { hold: 'cold' };

  test('is what it is done for: the next step, loading, packing, or being cold by then', () => {
    expect(whys([planned('lunch', [bake('pie')])])).toEqual({
      'pie 1': { kind: 'next', of: { kind: 'step', recipe: 'pie', number: 2 }, at: 560 },
      'pie 2': { kind: 'next', of: { kind: 'load', event: 'lunch' }, at: 630 },
    });
    const toss = step('on the day', 'Toss', { station: 'cold', handsOn: minutes(20) });
    expect(whys([planned('lunch', [hot('salad', [toss], cold)])])).toEqual({
      'salad 1': { kind: 'next', of: { kind: 'pack', event: 'lunch' }, at: 630 },
    });
    const boil = step('on the day', 'Boil', {
      handsOn: minutes(20),
      cookTo: { amount: 165, scale: 'F' } as never,
    });
    const { temperature } = FOOD_CODE_2022.limits.cooling.stages[0];
    const chilled = { ...cold, chill: minutes(120), pack: { chill: { container: 'pan', each: undefined } } };
    expect(whys([planned('lunch', [hot('pot', [boil], chilled)])])).toEqual({
      'pot 1': {
        kind: 'next',
        of: { kind: 'cold', event: 'lunch', first: { at: 535, temperature } },
        at: 615,
      },
    });
  });

  test('is the oven that another has from then on', () => {
    const { steps } = clock([planned('lunch', [bake('pie', keeps), bake('tart', keeps)])]);
    const into = steps.filter(({ number }) => number === 2).sort((a, b) => a.begins - b.begins);
    expect(into[0]?.why).toEqual({
      kind: 'in use',
      what: 'equipment',
      name: 'oven',
      by: { kind: 'step', recipe: into[1]?.batch.recipe.name },
      from: 570,
    });
  });

  test('is the hands that pack, named with their event', () => {
    // What is cold is packed until 10:30, which one pair of hands begins at 9:30: the salad is tossed before.
    const toss = step('on the day', 'Toss', { station: 'cold', handsOn: minutes(20) });
    expect(whys([planned('lunch', [hot('salad', [toss], cold)])], { crew: { people: 1 } })).toEqual({
      'salad 1': { kind: 'in use', what: 'hands', name: '', by: { kind: 'pack', event: 'lunch' }, from: 570 },
    });
  });

  test('is, for other days, when the crew comes, the step before, or what is in use until then', () => {
    const stew = hot('stew', [
      step('the day before', 'Braise', { handsOn: minutes(60) }),
      step('the day before', 'Skim', { handsOn: minutes(10) }),
    ]);
    const soup = dayBefore('soup', 30);
    expect(whys([later(stew, soup)], { crew: { people: 1 } })).toEqual({
      'stew 1': { kind: 'crew comes', at: 360 },
      'stew 2': { kind: 'after', recipe: 'stew', number: 1, at: 420 },
      'soup 1': { kind: 'in use', what: 'hands', name: '', by: { kind: 'step', recipe: 'stew' }, until: 430 },
    });
    expect(whys([later(stew, soup)], { crew: { people: 3 } })['soup 1']).toEqual({
      kind: 'in use',
      what: 'station',
      name: 'stove',
      by: { kind: 'step', recipe: 'stew' },
      until: 430,
    });
  });
});
