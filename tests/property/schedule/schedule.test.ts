import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { impossibleLags } from '../../../src/engine/schedule/circles.ts';
import { mirrored, type ScheduleProblem } from '../../../src/engine/schedule/problem.ts';
import { chainOf, type Schedule } from '../../../src/engine/schedule/result.ts';
import { schedule } from '../../../src/engine/schedule/schedule.ts';
import { bestOfAll, weightedBegins } from './every-placement.ts';
import { faultsOf, reasonFaults } from './faults.ts';
import { kitchenDays } from './kitchen-days.ts';
import { anyProblem } from './problems.ts';

const FEW = { schedules: 40 };

const beginsOf = ({ placed }: Schedule) => new Map(placed.map(({ id, begin }) => [id, begin]));

/** Left out, waiting, makespan: in this order a schedule is better or worse. */
const costs = ({ leftOut, waiting, makespan }: Schedule) => [leftOut.length, waiting, makespan];

const isWorse = (a: readonly number[], b: readonly number[]): boolean => {
  const at = a.findIndex((figure, index) => figure !== b[index]);
  return at >= 0 && (a[at] as number) > (b[at] as number);
};

/**
 * Where the same tasks are placed, waiting is a sum of weighted begins that both schedules share what it is counted from;
 * where others are, no more are left out, and nothing else can be compared.
 */
function expectNoneWorse(
  { direction, tasks }: ScheduleProblem,
  after: Schedule,
  before: Pick<Schedule, 'placed' | 'leftOut'>,
): void {
  const without = (answer: Pick<Schedule, 'leftOut'>) => answer.leftOut.map(({ id }) => id).join();
  if (without(after) !== without(before)) return;
  const placed = tasks.filter(({ id }) => after.placed.some((task) => task.id === id));
  const cost = ({ placed: found }: Pick<Schedule, 'placed'>) =>
    (direction === 'late' ? -1 : 1) *
    weightedBegins(placed, new Map(found.map(({ id, begin }) => [id, begin])));
  expect(cost(after)).toBeLessThanOrEqual(cost(before));
}

describe('any problem', () => {
  test('gets a schedule that breaks no lag, window or capacity at any minute, and reasons that are true', () => {
    fc.assert(
      fc.property(anyProblem({ tasks: 14, minutes: 5, horizon: 40 }), (problem) => {
        const answer = schedule(problem, FEW);
        expect(faultsOf(problem, answer)).toEqual([]);
        expect(reasonFaults(problem, answer)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  test('has chains of reasons that end, each step at another task', () => {
    fc.assert(
      fc.property(anyProblem({ tasks: 10, minutes: 5, horizon: 40 }), (problem) => {
        const answer = schedule(problem, FEW);
        for (const { id } of answer.placed) {
          const chain = chainOf(answer, id);
          expect(new Set(chain).size).toBe(chain.length);
          const last = chain.at(-1)?.reason;
          const next = last?.kind === 'lag' || last?.kind === 'resource' ? last.task : null;
          // Nothing placed binds the last one: it is bound by a fact, or by a fixed task that has no place. Or tasks hold
          // each other in a ring, by a lag that leads back in time and a resource between them, and the chain ends there.
          if (next === null || answer.leftOut.some((task) => task.id === next)) continue;
          expect(chain.map((task) => task.id)).toContain(next);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('is answered alike whatever order it is handed in, and mirrored twice is the same problem', () => {
    fc.assert(
      fc.property(anyProblem({ tasks: 10, minutes: 5, horizon: 40 }), (problem) => {
        const turned: ScheduleProblem = {
          ...problem,
          tasks: problem.tasks.toReversed(),
          resources: problem.resources.toReversed(),
        };
        const answer = schedule(problem, FEW);
        expect([...beginsOf(schedule(turned, FEW))]).toEqual([...beginsOf(answer)]);
        expect(beginsOf(schedule(mirrored(mirrored(problem)), FEW))).toEqual(beginsOf(answer));
      }),
      { numRuns: 100 },
    );
  });

  test('placed early is the mirror image of itself placed late', () => {
    fc.assert(
      fc.property(anyProblem({ tasks: 8, minutes: 5, horizon: 30, direction: 'early' }), (problem) => {
        const minutes = new Map(problem.tasks.map((task) => [task.id, task.minutes]));
        const early = beginsOf(schedule(problem, FEW));
        const late = beginsOf(schedule(mirrored(problem), FEW));
        expect(new Map([...late].map(([id, begin]) => [id, -begin - (minutes.get(id) as number)]))).toEqual(
          new Map([...late].map(([id]) => [id, early.get(id)])),
        );
        expect(late.size).toBe(early.size);
      }),
      { numRuns: 100 },
    );
  });

  test('has a circle of lags only where its lags alone have no answer', () => {
    fc.assert(
      fc.property(anyProblem({ tasks: 4, minutes: 2, horizon: 10 }), ({ tasks, lags, ...rest }) => {
        const free = tasks.map(({ id, minutes }) => ({ id, minutes, needs: [] }));
        const bare: ScheduleProblem = { ...rest, lags, tasks: free, horizon: { from: 0, until: 12 } };
        const circles = impossibleLags(bare);
        expect(circles.length === 0).toBe(bestOfAll(bare, 'makespan') !== null);
        for (const circle of circles) {
          const among = new Set(circle.flatMap(({ from, to }) => [from, to]));
          const alone = { ...bare, lags: circle, tasks: free.filter(({ id }) => among.has(id)) };
          expect(bestOfAll(alone, 'makespan')).toBeNull();
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('a known schedule', () => {
  const known = fc.tuple(
    anyProblem({ tasks: 10, minutes: 5, horizon: 24 }).filter(
      (one) => schedule(one, FEW).leftOut.length === 0,
    ),
    fc.nat(1000),
  );

  test('of everything is never made worse by more capacity', () => {
    fc.assert(
      fc.property(known, ([problem, dice]) => {
        const before = schedule(problem, FEW);
        const more = problem.resources.map((resource, index) =>
          index === dice % 2
            ? { ...resource, capacity: [...resource.capacity, { ...problem.horizon, amount: 1 }] }
            : resource,
        );
        const after = schedule(
          { ...problem, resources: more },
          { schedules: 3, alsoTry: [beginsOf(before)] },
        );
        expect(after.leftOut.length).toBeLessThanOrEqual(before.leftOut.length);
        expectNoneWorse(problem, after, before);
      }),
      { numRuns: 200 },
    );
  });

  test('of everything is never made worse by a task less', () => {
    fc.assert(
      fc.property(known, ([problem, dice]) => {
        const gone = problem.tasks[dice % problem.tasks.length]?.id;
        const less: ScheduleProblem = {
          ...problem,
          tasks: problem.tasks.filter(({ id }) => id !== gone),
          lags: problem.lags.filter(({ from, to }) => from !== gone && to !== gone),
        };
        const before = schedule(problem, FEW);
        const begins = beginsOf(before);
        begins.delete(gone as string);
        const after = schedule(less, { schedules: 3, alsoTry: [begins] });
        expect(after.leftOut.length).toBeLessThanOrEqual(less.tasks.length - begins.size);
        expectNoneWorse(less, after, { ...before, leftOut: before.leftOut.filter(({ id }) => id !== gone) });
      }),
      { numRuns: 200 },
    );
  });

  test('that fits as it is and cannot be bettered stays as it is', () => {
    const days = kitchenDays(40, 3);
    const before = schedule(days, { schedules: 400 });
    const after = schedule(days, { schedules: 1, alsoTry: [beginsOf(before)] });
    expect(beginsOf(after)).toEqual(beginsOf(before));
  });
});

describe('days of a kitchen', () => {
  test.each([2, 200])('of %i tasks are scheduled alike every time, without a fault', (tasks) => {
    const days = kitchenDays(tasks, 1, 8);
    const answer = schedule(days, { schedules: 60 });
    expect(faultsOf(days, answer)).toEqual([]);
    expect(reasonFaults(days, answer)).toEqual([]);
    expect(schedule(days, { schedules: 60 })).toEqual(answer);
  });

  test.each([1, 2])('of 60 tasks all find a place (seed %i), and more schedules make none worse', (seed) => {
    const days = kitchenDays(60, seed, 3);
    const [few, more] = [60, 600].map((schedules) => schedule(days, { schedules })) as [Schedule, Schedule];
    expect(more.leftOut).toEqual([]);
    expect(faultsOf(days, more)).toEqual([]);
    expect(isWorse(costs(more), costs(few))).toBe(false);
    // The first list alone leaves something out: what is measured here is the search.
    expect(isWorse(costs(schedule(days, { schedules: 1 })), costs(more))).toBe(true);
  });
});
