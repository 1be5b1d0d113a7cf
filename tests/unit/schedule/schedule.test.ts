import { describe, expect, test } from 'vitest';
import { impossibleLags } from '../../../src/engine/schedule/circles.ts';
import type { Lag, ScheduleProblem, Task } from '../../../src/engine/schedule/problem.ts';
import { chainOf, type Schedule } from '../../../src/engine/schedule/result.ts';
import { schedule } from '../../../src/engine/schedule/schedule.ts';

const HORIZON = { from: 0, until: 240 };

/** Tasks on one oven and two hands, placed back from the end of four hours, unless told otherwise. */
function problem(
  tasks: readonly Task[],
  lags: readonly Lag[],
  more: Partial<ScheduleProblem> = {},
): ScheduleProblem {
  return {
    direction: 'late',
    horizon: HORIZON,
    tasks,
    lags,
    resources: [
      { id: 'oven', capacity: [{ ...HORIZON, amount: 1 }] },
      { id: 'hands', capacity: [{ ...HORIZON, amount: 2 }] },
    ],
    ...more,
  };
}

const task = (id: string, minutes: number, ...needs: [resource: string, amount: number][]): Task => ({
  id,
  minutes,
  needs: needs.map(([resource, amount]) => ({ resource, amount })),
});

const serve: Task = { id: 'serve', minutes: 0, needs: [], fixed: 180 };

const begins = ({ placed }: Schedule) => Object.fromEntries(placed.map(({ id, begin }) => [id, begin]));
const reasonOf = ({ placed }: Schedule, id: string) => placed.find((each) => each.id === id)?.reason;
const whyOut = ({ leftOut }: Schedule, id: string) => leftOut.find((each) => each.id === id)?.reason;

describe('what is placed late', () => {
  const roast = task('roast', 60, ['oven', 1]);
  const rest: Lag = { from: 'roast', to: 'carve', kind: 'end-begin', least: 20, why: 'rests' };
  const carved: Lag = { from: 'carve', to: 'serve', kind: 'end-begin', least: 0 };

  test('goes back from what is fixed, each bound by the lag to what it leads to', () => {
    const answer = schedule(problem([roast, task('carve', 10, ['hands', 1]), serve], [rest, carved]));
    expect(begins(answer)).toEqual({ roast: 90, carve: 170, serve: 180 });
    expect(reasonOf(answer, 'roast')).toEqual({ kind: 'lag', task: 'carve', lags: [rest], side: 'least' });
    expect(reasonOf(answer, 'serve')).toEqual({ kind: 'fixed' });
    expect(answer.criticalPath).toEqual(['roast', 'carve', 'serve']);
    expect(chainOf(answer, 'carve').map(({ id }) => id)).toEqual(['carve', 'serve']);
    expect([answer.waiting, answer.makespan, answer.proven]).toEqual([0, 150, true]);
  });

  test('waits for the one oven, which is named with what holds it, and what waits costs most goes last', () => {
    const cakes = (weight: number): Task => ({ ...task('cake', 40, ['oven', 1]), weight });
    const tart: Task = { ...task('tart', 30, ['oven', 1]), weight: 2 };
    const lags: Lag[] = ['cake', 'tart'].map((from) => ({ from, to: 'serve', kind: 'end-begin', least: 0 }));
    const heavy = schedule(problem([cakes(5), tart, serve], lags));
    expect(begins(heavy)).toEqual({ cake: 140, tart: 110, serve: 180 });
    expect(heavy.waiting).toBe(80);
    expect(reasonOf(heavy, 'tart')).toEqual({
      kind: 'resource',
      resource: 'oven',
      minute: 140,
      holders: ['cake'],
      task: 'cake',
    });
    expect(heavy.criticalPath).toEqual(['tart', 'cake', 'serve']);
    const light = schedule(problem([cakes(1), tart, serve], lags));
    expect(begins(light)).toEqual({ cake: 110, tart: 150, serve: 180 });
    expect(light.waiting).toBe(30);
  });

  test('keeps to windows: the crew’s hours of two days', () => {
    const days = [
      { from: 0, until: 60 },
      { from: 120, until: 180 },
    ];
    const answer = schedule(
      problem(
        [
          { ...task('brine', 30, ['hands', 1]), windows: days },
          { ...task('cook', 40, ['hands', 1]), windows: days },
          serve,
        ],
        [
          { from: 'brine', to: 'cook', kind: 'end-begin', least: 25 },
          { from: 'cook', to: 'serve', kind: 'end-begin', least: 0 },
        ],
      ),
    );
    expect(begins(answer)).toEqual({ brine: 30, cook: 140, serve: 180 });
    expect(reasonOf(answer, 'brine')).toEqual({ kind: 'window', window: days[0] });
    // By windows and lags alone it is needed no later: it does not wait.
    expect(answer.waiting).toBe(0);
  });

  test('needs hands only for the minutes that it names, so that others have them in between', () => {
    const braise: Task = {
      id: 'braise',
      minutes: 60,
      needs: [
        { resource: 'hands', amount: 2, from: 0, until: 10 },
        { resource: 'hands', amount: 1, from: 55, until: 60 },
      ],
    };
    const lags: Lag[] = ['braise', 'peel'].map((from) => ({
      from,
      to: 'serve',
      kind: 'end-begin',
      least: 0,
    }));
    const beside = schedule(problem([{ ...braise, weight: 9 }, task('peel', 45, ['hands', 2]), serve], lags));
    expect(begins(beside)).toEqual({ braise: 120, peel: 130, serve: 180 });
    const pressed = schedule(
      problem([{ ...braise, weight: 9 }, task('peel', 46, ['hands', 2]), serve], lags),
    );
    expect(begins(pressed)).toEqual({ braise: 120, peel: 74, serve: 180 });
  });

  test('works around other fixed tasks', () => {
    const baked: Task = { ...task('other event', 30, ['oven', 1]), fixed: 140 };
    const answer = schedule(
      problem(
        [task('roll', 20, ['oven', 1]), baked, serve],
        [{ from: 'roll', to: 'serve', kind: 'end-begin', least: 0 }],
      ),
    );
    expect(begins(answer)).toEqual({ roll: 120, 'other event': 140, serve: 180 });
  });

  test('with nothing fixed goes back from the horizon', () => {
    const answer = schedule(problem([roast], []));
    expect(begins(answer)).toEqual({ roast: 180 });
    expect(reasonOf(answer, 'roast')).toEqual({ kind: 'horizon' });
  });
});

describe('most lags', () => {
  test('take out again what was placed too far away, and place it where both fit', () => {
    // The only oven is free after minute 100 again: what is dipped at most 10 min before must wait for it too.
    const dip = task('dip', 5, ['hands', 1]);
    const bake = task('bake', 20, ['oven', 1]);
    const held: Task = { ...task('other', 100, ['oven', 1]), fixed: 0 };
    const most: Lag = { from: 'dip', to: 'bake', kind: 'end-begin', least: 0, most: 10 };
    const answer = schedule(problem([bake, dip, held], [most], { direction: 'early' }));
    expect(begins(answer)).toEqual({ other: 0, dip: 85, bake: 100 });
    expect(reasonOf(answer, 'dip')).toEqual({ kind: 'lag', task: 'bake', lags: [most], side: 'most' });
    expect(chainOf(answer, 'dip').map(({ id }) => id)).toEqual(['dip', 'bake', 'other']);
  });

  test('of none to spare make one block: fried, drained and packed at once, each with what it needs', () => {
    const block: Lag[] = [
      { from: 'fry', to: 'drain', kind: 'end-begin', least: 0, most: 0 },
      { from: 'drain', to: 'pack', kind: 'end-begin', least: 2, most: 2 },
    ];
    const answer = schedule(
      problem(
        [
          task('fry', 8, ['oven', 1]),
          task('drain', 3),
          task('pack', 5, ['hands', 2]),
          { ...task('toss', 30, ['hands', 1]), weight: 5 },
          serve,
        ],
        [
          ...block,
          ...['pack', 'toss'].map((from): Lag => ({ from, to: 'serve', kind: 'end-begin', least: 0 })),
        ],
      ),
    );
    expect(begins(answer)).toEqual({ fry: 132, drain: 140, pack: 145, toss: 150, serve: 180 });
    expect(reasonOf(answer, 'pack')).toMatchObject({ kind: 'resource', resource: 'hands', task: 'toss' });
    expect(chainOf(answer, 'fry').map(({ id }) => id)).toEqual(['fry', 'drain', 'pack', 'toss', 'serve']);
  });

  test('to two fixed tasks hold what is made for both', () => {
    const lags: Lag[] = [
      { from: 'broth', to: 'lunch', kind: 'end-begin', least: 0 },
      { from: 'broth', to: 'dinner', kind: 'end-begin', least: 0, most: 90 },
    ];
    const meals = [
      { ...serve, id: 'lunch', fixed: 100 },
      { ...serve, id: 'dinner', fixed: 180 },
    ];
    expect(begins(schedule(problem([task('broth', 30), ...meals], lags)))).toMatchObject({ broth: 70 });
    const late = meals.map((meal) => ({ ...meal, fixed: meal.id === 'dinner' ? 200 : meal.fixed }));
    const answer = schedule(problem([task('broth', 30), ...late], lags));
    expect(begins(answer)).toEqual({ lunch: 100, dinner: 200 });
    expect(whyOut(answer, 'broth')).toEqual({
      kind: 'lags',
      lags: expect.toSatisfy(
        (named: Lag[]) => named.length === 2 && lags.every((lag) => named.includes(lag)),
      ),
      tasks: expect.toSatisfy((ids: string[]) => ids.toSorted().join() === 'dinner,lunch'),
    });
  });
});

describe('what is impossible', () => {
  const impossible: Lag[] = [
    { from: 'proof', to: 'bake', kind: 'end-begin', least: 30, why: 'rises' },
    { from: 'mix', to: 'bake', kind: 'begin-begin', most: 40, why: 'used within' },
    { from: 'mix', to: 'proof', kind: 'end-begin', least: 0 },
  ];
  const dough = [task('mix', 10), task('proof', 20), task('bake', 30, ['oven', 1])];

  test('in lags alone is found before any schedule, as the circle it is', () => {
    const [circle, ...others] = impossibleLags(problem(dough, impossible));
    expect(others).toEqual([]);
    expect(circle).toHaveLength(3);
    expect(new Set(circle)).toEqual(new Set(impossible));
    const possible = impossible.map((lag) => ({ ...lag, most: lag.most === undefined ? undefined : 60 }));
    expect(impossibleLags(problem(dough, possible))).toEqual([]);
  });

  test('leaves out the circle and places the rest', () => {
    const answer = schedule(problem([...dough, task('soup', 15), serve], impossible));
    expect(begins(answer)).toEqual({ soup: 225, serve: 180 });
    expect(answer.leftOut.map(({ id }) => id)).toEqual(['bake', 'mix', 'proof']);
    expect(answer.circles).toHaveLength(1);
    expect(whyOut(answer, 'mix')).toEqual({ kind: 'circle', lags: answer.circles[0] });
  });

  test('names a lag once that binds from both its sides', () => {
    const rest: Lag = { from: 'bread', to: 'serve', kind: 'end-begin', least: 20, most: 30 };
    const bread = { ...task('bread', 40), windows: [{ from: 0, until: 60 }] };
    const answer = schedule(problem([bread, serve], [rest]));
    expect(whyOut(answer, 'bread')).toEqual({ kind: 'window', lags: [rest], tasks: ['serve'] });
    const none = { ...rest, least: 40 };
    expect(impossibleLags(problem([task('bread', 40), serve], [none]))).toEqual([[none]]);
    expect(whyOut(schedule(problem([task('bread', 40), serve], [none])), 'bread')).toEqual({
      kind: 'circle',
      lags: [none],
    });
  });

  test('for one resource names it, how much is missing and who holds it', () => {
    const held = { ...task('ham', 120, ['oven', 1]), fixed: 60 };
    const lags: Lag[] = [{ from: 'pie', to: 'serve', kind: 'end-begin', least: 0, most: 30 }];
    const answer = schedule(problem([task('pie', 40, ['oven', 1], ['hands', 1]), held, serve], lags));
    expect(begins(answer)).toEqual({ ham: 60, serve: 180 });
    expect(whyOut(answer, 'pie')).toEqual({
      kind: 'resource',
      resource: 'oven',
      minute: 179,
      needed: 1,
      free: 0,
      holders: ['ham'],
    });
  });

  test('for want of capacity, of a window or of a resource says so, and what is tied to it by the minute too', () => {
    const tie: Lag = { from: 'fry', to: 'drain', kind: 'end-begin', least: 0, most: 0 };
    const answer = schedule(
      problem(
        [
          task('big', 20, ['hands', 3]),
          task('smoke', 20, ['smoker', 1]),
          { ...task('long', 50), windows: [{ from: 0, until: 40 }] },
          task('drain', 60, ['oven', 1]),
          task('fry', 60, ['oven', 1]),
          { ...task('all day', 230, ['oven', 1]), fixed: 5 },
        ],
        [tie],
      ),
    );
    expect(begins(answer)).toEqual({ 'all day': 5 });
    expect(whyOut(answer, 'big')).toMatchObject({
      kind: 'resource',
      resource: 'hands',
      needed: 3,
      free: 2,
      holders: [],
    });
    expect(whyOut(answer, 'smoke')).toMatchObject({
      kind: 'resource',
      resource: 'smoker',
      free: 0,
      holders: [],
    });
    expect(whyOut(answer, 'long')).toEqual({ kind: 'window', lags: [], tasks: [] });
    expect(whyOut(answer, 'fry')).toMatchObject({ kind: 'resource', holders: ['all day'] });
    expect(whyOut(answer, 'drain')).toMatchObject({ kind: 'resource', holders: ['all day'] });
  });

  test('for a task that is tied by the minute to one without a place names that one', () => {
    const tie: Lag = { from: 'fry', to: 'drain', kind: 'end-begin', least: 0, most: 0 };
    const taken = { ...task('all day', 230, ['oven', 1]), fixed: 5 };
    const { leftOut } = schedule(problem([task('fry', 60, ['oven', 1]), task('drain', 10), taken], [tie]));
    expect(leftOut).toMatchObject([
      { id: 'drain', reason: { kind: 'tied', task: 'fry' } },
      { id: 'fry', reason: { kind: 'resource', resource: 'oven', holders: ['all day'] } },
    ]);
  });

  test('for two that are tied to begin at once names what both need together, of one of them', () => {
    const tie: Lag = { from: 'lift', to: 'pour', kind: 'begin-begin', least: 0, most: 0 };
    const { leftOut } = schedule(
      problem([task('lift', 20, ['hands', 2]), task('pour', 5, ['hands', 1])], [tie]),
    );
    expect(leftOut).toMatchObject([
      { id: 'lift', reason: { kind: 'resource', resource: 'hands', needed: 3, free: 2, holders: [] } },
      { id: 'pour', reason: { kind: 'tied', task: 'lift' } },
    ]);
  });

  test('for a window that ends before a lag lets the task begin names both', () => {
    const fresh: Lag = { from: 'dress', to: 'serve', kind: 'end-begin', most: 20 };
    const early = { ...task('dress', 10), windows: [{ from: 0, until: 60 }] };
    const answer = schedule(problem([early, serve], [fresh]));
    expect(begins(answer)).toEqual({ serve: 180 });
    expect(whyOut(answer, 'dress')).toEqual({ kind: 'window', lags: [fresh], tasks: ['serve'] });
  });

  test('in a fixed task still holds what leads to it to its minute', () => {
    const wedding: Task = { ...serve, id: 'wedding', minutes: 10, needs: [{ resource: 'hands', amount: 3 }] };
    const answer = schedule(
      problem(
        [wedding, task('plate', 15, ['hands', 1])],
        [{ from: 'plate', to: 'wedding', kind: 'end-begin', least: 0 }],
      ),
    );
    expect(begins(answer)).toEqual({ plate: 165 });
    expect(reasonOf(answer, 'plate')).toMatchObject({ kind: 'lag', task: 'wedding' });
    expect(whyOut(answer, 'wedding')).toMatchObject({
      kind: 'resource',
      resource: 'hands',
      needed: 3,
      free: 2,
    });
  });
});

describe('bounds', () => {
  test('say what the longest path and the scarcest resource allow', () => {
    const loads = ['a', 'b', 'c', 'd'].map((id) => task(id, 25, ['oven', 1]));
    const answer = schedule(
      problem(loads, [{ from: 'a', to: 'b', kind: 'end-begin', least: 5 }], { direction: 'early' }),
    );
    expect(answer.bounds).toEqual({
      makespan: 100,
      waiting: 0,
      longestPath: 55,
      energy: { resource: 'oven', makespan: 100 },
    });
    expect([answer.makespan, answer.leftOut]).toEqual([100, []]);
  });

  test('stop the search when they are reached', () => {
    const answer = schedule(problem([task('a', 25), task('b', 10)], []), { schedules: 500 });
    expect([answer.proven, answer.schedules]).toEqual([true, 1]);
  });
});

test('what no problem may say is the caller’s mistake', () => {
  const one = task('one', 5);
  const lag: Lag = { from: 'one', to: 'two', kind: 'end-begin', least: 0 };
  expect(() => schedule(problem([one, one], []))).toThrow('two tasks of a schedule have the same id');
  expect(() => schedule(problem([one], [lag]))).toThrow('one of them is not a task');
  expect(() => schedule(problem([{ ...one, minutes: 2.5 }], []))).toThrow('2.5 is not a whole number');
  expect(() => schedule(problem([{ ...one, minutes: -1 }], []))).toThrow('below 0');
  expect(() =>
    schedule(problem([{ ...one, needs: [{ resource: 'oven', amount: 1, until: 6 }] }], [])),
  ).toThrow('needs something before it begins or after it ends');
  expect(schedule(problem([], []))).toMatchObject({ placed: [], leftOut: [], criticalPath: [] });
});

describe('tasks tied to the minute', () => {
  test('names the fixed task without a place that holds two tied to the minute, and not the one the other', () => {
    const late: ScheduleProblem = {
      direction: 'early',
      horizon: { from: 0, until: 40 },
      tasks: [task('a', 0), task('b', 0), { ...task('fixed', 2), fixed: 39 }],
      lags: [
        { from: 'a', to: 'fixed', kind: 'begin-begin', most: 0 },
        { from: 'a', to: 'b', kind: 'begin-begin', least: 0, most: 0 },
      ],
      resources: [],
    };
    const { placed, leftOut } = schedule(late);
    expect(leftOut.map(({ id }) => id)).toEqual(['fixed']);
    expect(placed.map(({ id, begin, reason }) => [id, begin, reason.kind === 'lag' && reason.task])).toEqual([
      ['a', 39, 'fixed'],
      ['b', 39, 'a'],
    ]);
  });
});
