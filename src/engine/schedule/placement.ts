import type { BlockBegins } from './generate.ts';
import type { Model } from './model.ts';
import { type Network, NONE } from './network.ts';
import type { Begins } from './problem.ts';
import { copyOf, type Profile, take } from './profile.ts';

/** When each task of a network begins, by its number; `NONE` for what is not placed. */
export type TaskBegins = Int32Array;

/** Tasks’ begins from those of their blocks. */
export function taskBegins({ blocks }: Model, begins: BlockBegins, size: number): TaskBegins {
  const found = new Int32Array(size).fill(NONE);
  blocks.forEach(({ members }, block) => {
    const begin = begins[block] as number;
    for (const { task, offset } of members) if (begin !== NONE) found[task] = begin + offset;
  });
  return found;
}

/** Tasks’ begins from those known by id; ids that the network does not have are passed over. */
export function taskBeginsOf({ tasks }: Network, known: Begins): TaskBegins {
  return Int32Array.from(tasks, ({ id }) => known.get(id) ?? NONE);
}

/** Begins of a model’s blocks from those of tasks; a block is placed where all its tasks are, as they are tied. */
export function blockBegins({ blocks }: Model, begins: TaskBegins): BlockBegins {
  return Int32Array.from(blocks, ({ members }) => {
    const found = members.map(({ task, offset }) =>
      begins[task] === NONE ? NONE : (begins[task] as number) - offset,
    );
    return found.every((begin) => begin === found[0]) ? (found[0] as number) : NONE;
  });
}

/** What is left of each resource once the placed tasks have what they need. */
export function profilesAfter(
  { tasks, problem }: Network,
  calendars: readonly Profile[],
  begins: TaskBegins,
): Profile[] {
  const profiles = calendars.map(copyOf);
  const at = new Map(problem.resources.map(({ id }, index) => [id, index]));
  tasks.forEach(({ needs, minutes }, task) => {
    const begin = begins[task] as number;
    if (begin === NONE) return;
    for (const { resource, amount, from = 0, until = minutes } of needs)
      take(profiles[at.get(resource) as number] as Profile, begin + from, begin + until, amount);
  });
  return profiles;
}

/** The tasks that have some of a resource at a minute, by number, with the minute at which each lets go. */
export function holdersAt(
  { tasks }: Network,
  begins: TaskBegins,
  resource: string,
  minute: number,
): { readonly task: number; readonly until: number }[] {
  return tasks.flatMap(({ needs, minutes }, task) => {
    const begin = begins[task] as number;
    if (begin === NONE) return [];
    const held = needs.filter(
      (need) =>
        need.resource === resource &&
        need.amount > 0 &&
        begin + (need.from ?? 0) <= minute &&
        minute < begin + (need.until ?? minutes),
    );
    return held.length === 0
      ? []
      : [{ task, until: Math.max(...held.map(({ until = minutes }) => begin + until)) }];
  });
}
