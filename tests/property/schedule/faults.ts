import type { Need, ScheduleProblem, Task } from '../../../src/engine/schedule/problem.ts';
import type { PlacedTask, Schedule } from '../../../src/engine/schedule/result.ts';

/**
 * Everything that is wrong with a schedule, in words; empty if nothing is. It knows nothing of how schedules are made:
 * it counts minute by minute and holds each claim against the problem as it was put.
 */
export function faultsOf(problem: ScheduleProblem, answer: Pick<Schedule, 'placed' | 'leftOut'>): string[] {
  return [
    ...placesOf(problem, answer),
    ...beginFaults(problem, new Map(answer.placed.map(({ id, begin }) => [id, begin]))),
  ];
}

/** What is wrong with begins by id, whoever made them; tasks without one bind nobody. */
export function beginFaults(problem: ScheduleProblem, begins: ReadonlyMap<string, number>): string[] {
  const faults: string[] = [];
  for (const task of problem.tasks) {
    const begin = begins.get(task.id);
    if (begin !== undefined) faults.push(...ownFaults(problem, task, begin));
  }
  for (const lag of problem.lags) {
    const [from, to] = [begins.get(lag.from), begins.get(lag.to)];
    if (from === undefined || to === undefined) continue;
    const start = lag.kind === 'begin-begin' ? from : from + taskOf(problem, lag.from).minutes;
    if (lag.least !== undefined && to - start < lag.least)
      faults.push(`${lag.to} begins ${to - start} min after ${lag.from}, at least ${lag.least}`);
    if (lag.most !== undefined && to - start > lag.most)
      faults.push(`${lag.to} begins ${to - start} min after ${lag.from}, at most ${lag.most}`);
  }
  return [...faults, ...overloads(problem, begins)];
}

function overloads(problem: ScheduleProblem, begins: ReadonlyMap<string, number>): string[] {
  const taken = new Map<string, number>();
  for (const { id, minutes, needs } of problem.tasks) {
    const begin = begins.get(id);
    if (begin === undefined) continue;
    for (const need of needs)
      for (const minute of minutesOf(need, begin, minutes)) {
        const key = `${need.resource} at ${minute}`;
        taken.set(key, (taken.get(key) ?? 0) + need.amount);
      }
  }
  return [...taken].flatMap(([key, amount]) => {
    const [resource, minute] = key.split(' at ') as [string, string];
    const capacity = capacityAt(problem, resource, Number(minute));
    return amount > capacity ? [`${amount} of ${key}, capacity ${capacity}`] : [];
  });
}

function ownFaults({ horizon }: ScheduleProblem, task: Task, begin: number): string[] {
  const end = begin + task.minutes;
  const faults: string[] = [];
  if (!Number.isInteger(begin)) faults.push(`${task.id} begins at ${begin}`);
  if (begin < horizon.from || end > horizon.until) faults.push(`${task.id} leaves the horizon`);
  if (task.fixed !== undefined && task.fixed !== begin) faults.push(`${task.id} is not where it is fixed`);
  if (task.windows && !task.windows.some(({ from, until }) => from <= begin && end <= until))
    faults.push(`${task.id} from ${begin} until ${end} is in none of its windows`);
  return faults;
}

/** Every task is placed or left out, once. */
function placesOf(
  { tasks }: ScheduleProblem,
  { placed, leftOut }: Pick<Schedule, 'placed' | 'leftOut'>,
): string[] {
  const ids = [...placed, ...leftOut].map(({ id }) => id).sort();
  const wanted = tasks.map(({ id }) => id).sort();
  return JSON.stringify(ids) === JSON.stringify(wanted) ? [] : [`tasks ${wanted}, answered ${ids}`];
}

/**
 * What is wrong with the reasons of placed tasks: each must be true of the schedule and be broken when the task alone,
 * with what is tied to it to the minute, moves on by a minute.
 */
export function reasonFaults(problem: ScheduleProblem, { placed }: Pick<Schedule, 'placed'>): string[] {
  const byId = new Map(placed.map((task) => [task.id, task]));
  return placed.flatMap((task) => {
    const wrong = reasonFault(problem, byId, task);
    return wrong ? [`${task.id} at ${task.begin} by ${JSON.stringify(task.reason)}: ${wrong}`] : [];
  });
}

function reasonFault(
  problem: ScheduleProblem,
  placed: ReadonlyMap<string, PlacedTask>,
  { id, begin, end, reason }: PlacedTask,
): string | undefined {
  const task = taskOf(problem, id);
  const isLate = problem.direction === 'late';
  const moved = isLate ? begin + 1 : begin - 1;
  switch (reason.kind) {
    case 'fixed':
      return task.fixed === begin ? undefined : 'it is not fixed there';
    case 'horizon':
      return moved < problem.horizon.from || moved + task.minutes > problem.horizon.until
        ? undefined
        : 'there is room in the horizon';
    case 'window':
      if (!task.windows?.some((w) => w.from === reason.window.from && w.until === reason.window.until))
        return 'it has no such window';
      if (begin < reason.window.from || end > reason.window.until) return 'it is not in that window';
      return moved >= reason.window.from && moved + task.minutes <= reason.window.until
        ? 'the window has room'
        : undefined;
    case 'lag': {
      if (reason.lags.length > 1) return undefined;
      const lag = reason.lags[0];
      if (!lag || ![lag.from, lag.to].includes(id) || ![lag.from, lag.to].includes(reason.task))
        return 'the lag is between others';
      const [from, to] = [heldAt(problem, placed, lag.from), heldAt(problem, placed, lag.to)];
      if (!from || !to) return 'the lag’s other task is neither placed nor fixed';
      const gap = to.begin - (lag.kind === 'begin-begin' ? from.begin : from.end);
      const shift = (lag.to === id ? 1 : -1) * (moved - begin);
      const broken = lag[reason.side] === gap && (reason.side === 'least' ? shift < 0 : shift > 0);
      return broken ? undefined : `the lag is ${gap} and is not broken`;
    }
    case 'resource': {
      const need = task.needs.find(
        (each) =>
          each.resource === reason.resource &&
          [...minutesOf(each, moved, task.minutes)].includes(reason.minute),
      );
      if (!need) return 'it would not need it then';
      const amountAt = (other: Task, at: number): number =>
        other.needs
          .filter(({ resource }) => resource === reason.resource)
          .filter((each) => [...minutesOf(each, at, other.minutes)].includes(reason.minute))
          .reduce((sum, { amount }) => sum + amount, 0);
      const holds = (holder: string): number =>
        amountAt(taskOf(problem, holder), placed.get(holder)?.begin ?? Number.NaN);
      if (reason.holders.some((holder) => holds(holder) === 0)) return 'one of the holders does not hold it';
      const tied = isTied(problem, id);
      const taken = reason.holders.reduce((sum, holder) => sum + holds(holder), amountAt(task, moved));
      if (!tied && taken <= capacityAt(problem, reason.resource, reason.minute))
        return 'there is enough of it';
      if (reason.task !== null && !reason.holders.includes(reason.task))
        return 'the chain goes on at no holder';
      return undefined;
    }
  }
}

/** Whether lags tie a task to another to the minute: going around a circle of them takes no time at all. */
function isTied({ tasks, lags }: ScheduleProblem, id: string): boolean {
  const minutes = new Map(tasks.map((task) => [task.id, task.minutes]));
  const arcs = lags.flatMap(({ from, to, kind, least, most }) => {
    const length = kind === 'end-begin' ? (minutes.get(from) ?? 0) : 0;
    return [
      ...(least === undefined ? [] : [{ from, to, after: least + length }]),
      ...(most === undefined ? [] : [{ from: to, to: from, after: -most - length }]),
    ];
  });
  const farthest = new Map([[id, 0]]);
  for (let round = 0; round < tasks.length; round++)
    for (const { from, to, after } of arcs) {
      const at = farthest.get(from);
      if (at === undefined || to === id) continue;
      farthest.set(to, Math.max(farthest.get(to) ?? Number.NEGATIVE_INFINITY, at + after));
    }
  return arcs.some(
    ({ from, to, after }) =>
      to === id && from !== id && (farthest.get(from) ?? Number.NEGATIVE_INFINITY) + after >= 0,
  );
}

/** Where a task is, or, if it is not placed, where it is fixed. */
function heldAt(
  problem: ScheduleProblem,
  placed: ReadonlyMap<string, PlacedTask>,
  id: string,
): { readonly begin: number; readonly end: number } | undefined {
  const { fixed, minutes } = taskOf(problem, id);
  return placed.get(id) ?? (fixed === undefined ? undefined : { begin: fixed, end: fixed + minutes });
}

export function capacityAt({ resources }: ScheduleProblem, resource: string, minute: number): number {
  const spans = resources.find(({ id }) => id === resource)?.capacity ?? [];
  return spans
    .filter(({ from, until }) => from <= minute && minute < until)
    .reduce((sum, { amount }) => sum + amount, 0);
}

function* minutesOf({ from = 0, until }: Need, begin: number, length: number): Generator<number> {
  for (let minute = begin + from; minute < begin + (until ?? length); minute++) yield minute;
}

function taskOf({ tasks }: ScheduleProblem, id: string): Task {
  return tasks.find((task) => task.id === id) as Task;
}
