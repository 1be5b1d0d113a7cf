import fc from 'fast-check';
import type { Lag, ScheduleProblem, Span, Task } from '../../../src/engine/schedule/problem.ts';

interface Shape {
  readonly tasks: number;
  /** Minutes of the longest task, and of the horizon. */
  readonly minutes: number;
  readonly horizon: number;
  readonly direction?: ScheduleProblem['direction'];
}

/** Problems of every kind: windows, fixed tasks, partial needs, least and most lags, capacities that change. */
export function anyProblem({ tasks, minutes, horizon, direction }: Shape): fc.Arbitrary<ScheduleProblem> {
  const amounts = fc.integer({ min: 0, max: 2 });
  const span = fc
    .tuple(fc.nat(horizon), fc.nat(horizon))
    .map(([a, b]): Span => ({ from: Math.min(a, b), until: Math.max(a, b) }));
  const task = fc.integer({ min: 0, max: minutes }).chain((length) =>
    fc.record(
      {
        minutes: fc.constant(length),
        weight: fc.nat(3),
        needs: fc.array(
          fc
            .tuple(fc.constantFrom('oven', 'hands'), amounts, fc.nat(length), fc.nat(length), fc.boolean())
            .map(([resource, amount, a, b, isWhole]) =>
              isWhole
                ? { resource, amount }
                : { resource, amount, from: Math.min(a, b), until: Math.max(a, b) },
            ),
          { maxLength: 2 },
        ),
        windows: fc.array(span, { minLength: 1, maxLength: 2 }),
        fixed: fc.nat(horizon),
      },
      { requiredKeys: ['minutes', 'needs'] },
    ),
  );
  // Most tasks are free: a window or a fixed minute for each would leave little to be scheduled.
  const freer = fc.tuple(task, fc.nat(9)).map(([{ windows, fixed, ...rest }, dice]) => ({
    ...rest,
    windows: dice < 2 ? windows : undefined,
    fixed: dice === 2 ? fixed : undefined,
  }));
  const lag = fc.record(
    {
      ends: fc.tuple(fc.nat(1000), fc.nat(1000)),
      kind: fc.constantFrom<Lag['kind']>('begin-begin', 'end-begin'),
      least: fc.integer({ min: -1, max: 2 }),
      slack: fc.nat(3),
    },
    { requiredKeys: ['ends', 'kind'] },
  );
  return fc
    .record({
      direction: direction ? fc.constant(direction) : fc.constantFrom<'early' | 'late'>('early', 'late'),
      tasks: fc.array(freer, { minLength: 1, maxLength: tasks }),
      lags: fc.array(lag, { maxLength: tasks }),
      oven: fc.array(fc.tuple(span, fc.integer({ min: 1, max: 2 })), { maxLength: 1 }),
    })
    .map(({ oven, ...made }) => ({
      direction: made.direction,
      horizon: { from: 0, until: horizon },
      tasks: made.tasks.map((each, index): Task => ({ id: `t${index}`, ...each })),
      // As a rule a lag leads from one task to a later one of the list, so that few go around in circles.
      lags: made.lags.flatMap(({ ends, kind, least, slack }): Lag[] => {
        const [a, b] = ends.map((end) => end % made.tasks.length) as [number, number];
        const [from, to] = [`t${Math.min(a, b)}`, `t${Math.max(a, b)}`];
        const most = slack === undefined ? undefined : (least ?? 0) + slack;
        return a === b ? [] : [{ from, to, kind, least, most }];
      }),
      resources: [
        {
          id: 'oven',
          capacity: [
            { from: 0, until: horizon, amount: 2 },
            ...oven.map(([where, amount]) => ({ ...where, amount })),
          ],
        },
        { id: 'hands', capacity: [{ from: 0, until: horizon, amount: 2 }] },
      ],
    }));
}
