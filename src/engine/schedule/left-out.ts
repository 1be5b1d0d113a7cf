import { firstFit, type Model, nextBegin } from './model.ts';
import { type Arc, NEVER, type Network, NONE } from './network.ts';
import { linkingArcs } from './paths.ts';
import { holdersAt, profilesAfter, type TaskBegins } from './placement.ts';
import { modelOfTask, type Prepared } from './prepare.ts';
import { capacityProfile, type Profile, stepAt } from './profile.ts';

/** Why a task is not placed, by the numbers of the network. */
export type Obstacle =
  | { readonly kind: 'circle'; readonly arcs: readonly Arc[] }
  | { readonly kind: 'lags' | 'window'; readonly arcs: readonly Arc[]; readonly tasks: readonly number[] }
  | {
      readonly kind: 'resource';
      readonly resource: string;
      readonly minute: number;
      readonly needed: number;
      readonly free: number;
      readonly holders: readonly number[];
    }
  | { readonly kind: 'tied'; readonly task: number };

/** The obstacle of each task that is not placed, found with all placed ones where they are. */
export function obstaclesOf(prepared: Prepared, begins: TaskBegins): Map<number, Obstacle> {
  const { network, circles, contradictions, full } = prepared;
  const profiles = profilesAfter(network, full.calendars, begins);
  const obstacles = new Map<number, Obstacle>();
  for (const arcs of circles) for (const { from } of arcs) obstacles.set(from, { kind: 'circle', arcs });
  for (const { task, arcs, between } of contradictions)
    obstacles.set(task, { kind: 'lags', arcs, tasks: between });
  begins.forEach((begin, task) => {
    if (begin !== NONE || obstacles.has(task)) return;
    const obstacle = ownObstacle(prepared, begins, profiles, task);
    if (obstacle) obstacles.set(task, obstacle);
  });
  full.blocks.forEach(({ members }, block) => {
    const without = members.map(({ task }) => task).filter((task) => begins[task] === NONE);
    const cause = without.find((task) => obstacles.has(task)) ?? without[0];
    if (cause === undefined) return;
    if (!obstacles.has(cause)) obstacles.set(cause, blockObstacle(prepared, begins, profiles, block));
    for (const task of without) if (!obstacles.has(task)) obstacles.set(task, { kind: 'tied', task: cause });
  });
  return obstacles;
}

/** Between which minutes a task may begin by the lags to what is placed or fixed, and the tasks that set them. */
interface Between {
  readonly first: number;
  readonly last: number;
  readonly after: number | undefined;
  readonly before: number | undefined;
}

function betweenPlaced({ network, paths }: Prepared, begins: TaskBegins, task: number): Between {
  const size = network.tasks.length;
  let [first, last]: [number, number] = [NONE, NEVER];
  let [after, before]: [number | undefined, number | undefined] = [undefined, undefined];
  network.tasks.forEach(({ fixed }, other) => {
    const at = begins[other] === NONE ? fixed : (begins[other] as number);
    if (other === task || at === undefined) return;
    const [to, back] = [paths[other * size + task] as number, paths[task * size + other] as number];
    if (to !== NONE && at + to > first) [first, after] = [at + to, other];
    if (back !== NONE && at - back < last) [last, before] = [at - back, other];
  });
  return { first, last, after, before };
}

function ownObstacle(
  prepared: Prepared,
  begins: TaskBegins,
  profiles: readonly Profile[],
  task: number,
): Obstacle | undefined {
  const { network, arcs, full } = prepared;
  const between = betweenPlaced(prepared, begins, task);
  const { first, last, after, before } = between;
  const size = network.tasks.length;
  const pressing = (): { arcs: Arc[]; tasks: number[] } => ({
    arcs: [
      ...(after === undefined ? [] : linkingArcs(size, arcs, after, task)),
      ...(before === undefined ? [] : linkingArcs(size, arcs, task, before)),
    ],
    tasks: [after, before].filter((other) => other !== undefined),
  });
  const single = modelOfTask(network, task, full.calendars);
  if (!single) return { kind: 'window', arcs: [], tasks: [] };
  if (first > last) return { kind: 'lags', ...pressing() };
  const begin = nextBegin(single, 0, first);
  if (begin === NONE || begin > last) return { kind: 'window', ...pressing() };
  return firstFit(single, profiles, 0, first, last) === NONE
    ? lackOf(prepared, begins, profiles, single, 0, first, last)
    : undefined;
}

/** Why a block has no place although each of its tasks has one. */
function blockObstacle(
  prepared: Prepared,
  begins: TaskBegins,
  profiles: readonly Profile[],
  block: number,
): Obstacle {
  const { full } = prepared;
  const between = (full.blocks[block]?.members ?? []).map(({ task, offset }) => {
    const { first, last } = betweenPlaced(prepared, begins, task);
    return { first: first === NONE ? NONE : first - offset, last: last === NEVER ? NEVER : last - offset };
  });
  const first = Math.max(...between.map((each) => each.first));
  const last = Math.min(...between.map((each) => each.last));
  const begin = nextBegin(full, block, first);
  return begin === NONE || begin > last
    ? { kind: 'window', arcs: [], tasks: [] }
    : lackOf(prepared, begins, profiles, full, block, first, last);
}

/**
 * The resource that keeps a block from every place between two minutes, or, where no single one does, from the first
 * place; shown at the first minute at which it has too little there.
 */
function lackOf(
  { network }: Prepared,
  begins: TaskBegins,
  profiles: readonly Profile[],
  model: Model,
  block: number,
  first: number,
  last: number,
): Obstacle {
  const begin = nextBegin(model, block, first);
  const needs = Array.from(
    { length: (model.needAt[block + 1] as number) - (model.needAt[block] as number) },
    (_, index) => (model.needAt[block] as number) + index,
  );
  const lacks = needs.flatMap((need) => {
    const index = model.needResource[need] as number;
    const needed = model.needAmount[need] as number;
    const profile = profiles[index] as Profile;
    const until = begin + (model.needUntil[need] as number);
    let minute = begin + (model.needFrom[need] as number);
    for (let step = stepAt(profile.times, profile.count, minute); minute < until; step++) {
      const free = profile.free[step] as number;
      if (free < needed) return [{ index, minute, needed, free }];
      minute = profile.times[step + 1] as number;
    }
    return [];
  });
  const plenty = capacityProfile([{ from: -(2 ** 28), until: 2 ** 28, amount: 2 ** 29 }], 0);
  const everywhere = lacks.find(({ index }) => {
    const only = profiles.map((profile, other) => (other === index ? profile : plenty));
    return firstFit(model, only, block, first, last) === NONE;
  });
  const { index, ...lack } = everywhere ?? (lacks[0] as (typeof lacks)[number]);
  const resource = network.problem.resources[index]?.id ?? unknownResource(network, model, block);
  const holders = holdersAt(network, begins, resource, lack.minute).map(({ task }) => task);
  return { kind: 'resource', resource, ...lack, holders };
}

/** The first resource that a block needs and the problem does not have. */
function unknownResource({ tasks, problem }: Network, { blocks }: Model, block: number): string {
  const known = new Set(problem.resources.map(({ id }) => id));
  const needs = (blocks[block]?.members ?? []).flatMap(({ task }) => tasks[task]?.needs ?? []);
  return needs.find(({ resource, amount }) => amount > 0 && !known.has(resource))?.resource ?? '';
}
