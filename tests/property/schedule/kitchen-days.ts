import type { Lag, ScheduleProblem, Task } from '../../../src/engine/schedule/problem.ts';
import { seeded } from '../../bench/seeded.ts';

const DAY = 24 * 60;
const SERVING = DAY + 18 * 60;

/**
 * Two days of a kitchen that serves at six in the evening of the second, from a seed: dishes of four to six tasks each
 * (prep, cook, chill, load, reheat, plate), a crew with hours, ovens, benches, a cold room and a van. Times in minutes
 * from the first midnight.
 */
export function kitchenDays(tasks: number, seed: number, crew = 4): ScheduleProblem {
  const random = seeded(seed);
  const made: Task[] = [{ id: 'serve', minutes: 0, needs: [], fixed: SERVING }];
  const lags: Lag[] = [];
  const hours = [0, 1].map((day) => ({ from: day * DAY + 8 * 60, until: day * DAY + 22 * 60 }));
  const between = (least: number, most: number) => least + random.below(most - least + 1);
  for (let dish = 1; made.length < tasks; dish++) {
    const name = `dish-${String(dish).padStart(2, '0')}`;
    const add = (step: string, minutes: number, needs: Task['needs'], weight: number): string => {
      const id = `${name}-${step}`;
      made.push({ id, minutes, needs, weight, windows: hours });
      return id;
    };
    const hands = (amount: number, until?: number) =>
      until === undefined ? { resource: 'hands', amount } : { resource: 'hands', amount, from: 0, until };
    const cold = random.below(2) === 0;
    const prep = add('prep', between(15, 60), [hands(between(1, 2)), { resource: 'bench', amount: 1 }], 0);
    const minutes = between(30, 120);
    const cook = add('cook', minutes, [hands(1, 10), { resource: 'oven', amount: between(1, 3) }], 1);
    const turn = add('turn', 5, [hands(1)], 0);
    lags.push({ from: prep, to: cook, kind: 'end-begin', least: 0, most: 4 * 60, why: 'prepped' });
    lags.push({
      from: cook,
      to: turn,
      kind: 'begin-begin',
      least: minutes - 5,
      most: minutes - 5,
      why: 'turn',
    });
    let last = cook;
    if (cold) {
      const chill = add('chill', between(60, 180), [{ resource: 'cold', amount: between(1, 4) }], 1);
      lags.push({ from: cook, to: chill, kind: 'end-begin', least: 0, most: 30, why: 'cooling begins' });
      last = add('reheat', between(20, 40), [hands(1, 5), { resource: 'oven', amount: 1 }], 3);
      lags.push({ from: chill, to: last, kind: 'end-begin', least: 0, most: DAY, why: 'keeps' });
    }
    const plate = add('plate', between(5, 15), [hands(between(1, 2)), { resource: 'bench', amount: 1 }], 5);
    lags.push({ from: last, to: plate, kind: 'end-begin', least: 5, most: 60, why: 'stands hot' });
    lags.push({ from: plate, to: 'serve', kind: 'end-begin', least: 0, most: 120, why: 'stands plated' });
  }
  const kept = new Set(made.slice(0, tasks).map(({ id }) => id));
  return {
    direction: 'late',
    horizon: { from: 0, until: 2 * DAY },
    tasks: made.filter(({ id }) => kept.has(id)),
    lags: lags.filter(({ from, to }) => kept.has(from) && kept.has(to)),
    resources: [
      { id: 'hands', capacity: hours.map((span) => ({ ...span, amount: crew })) },
      { id: 'oven', capacity: [{ from: 0, until: 2 * DAY, amount: 2 * crew }] },
      { id: 'bench', capacity: [{ from: 0, until: 2 * DAY, amount: crew }] },
      { id: 'cold', capacity: [{ from: 0, until: 2 * DAY, amount: 6 * crew }] },
    ],
  };
}
