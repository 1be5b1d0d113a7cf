import { beginRanges } from './begin-ranges.ts';
import type { Block } from './blocks.ts';
import { nextBegin } from './model.ts';
import { type Arc, NONE } from './network.ts';
import { linkingArcs } from './paths.ts';
import { holdersAt, profilesAfter, type TaskBegins } from './placement.ts';
import type { Prepared } from './prepare.ts';
import type { Span, Task } from './problem.ts';
import { lackUntil, type Profile, take } from './profile.ts';

/** Why a placed task cannot begin a minute earlier, by the numbers of the network. */
export type Bond =
  | { readonly kind: 'lag'; readonly task: number; readonly arcs: readonly Arc[] }
  | {
      readonly kind: 'resource';
      readonly resource: string;
      readonly minute: number;
      readonly holders: readonly number[];
      readonly task: number | undefined;
    }
  | { readonly kind: 'window'; readonly window: Span }
  | { readonly kind: 'horizon' }
  | { readonly kind: 'fixed' };

/**
 * The bond of each placed task. Of several the one is taken whose chain leads back to something that nothing binds, a
 * lag before a resource that another task has before a window, the horizon or capacity.
 */
export function bondsOf(prepared: Prepared, begins: TaskBegins): Map<number, Bond> {
  const all = allBonds(prepared, begins);
  const order = [...all.keys()].sort((a, b) => (begins[a] as number) - (begins[b] as number) || a - b);
  const chosen = new Map<number, Bond>();
  const choose = (fits: (bond: Bond) => boolean): boolean => {
    for (const task of order) {
      const bond = chosen.has(task) ? undefined : all.get(task)?.find(fits);
      if (!bond) continue;
      chosen.set(task, bond);
      return true;
    }
    return false;
  };
  const heldBy = (bond: Bond) => (bond.kind === 'lag' || bond.kind === 'resource' ? bond.task : undefined);
  while (chosen.size < order.length) {
    const followed = choose((bond) => {
      const task = heldBy(bond);
      return task !== undefined && (chosen.has(task) || !all.has(task));
    });
    // Only where no chain can be made longer does another one begin; a ring of tasks that hold each other is cut.
    if (!followed && !choose((bond) => heldBy(bond) === undefined) && !choose(() => true)) break;
  }
  return chosen;
}

function allBonds(prepared: Prepared, begins: TaskBegins): Map<number, Bond[]> {
  const { network, full } = prepared;
  const bonds = new Map<number, Bond[]>();
  begins.forEach((begin, task) => {
    if (begin === NONE) return;
    const isFixed = network.tasks[task]?.fixed !== undefined;
    bonds.set(task, isFixed ? [{ kind: 'fixed' }] : lagBonds(prepared, begins, task));
  });
  const profiles = profilesAfter(network, full.calendars, begins);
  full.blocks.forEach((block, number) => {
    const first = block.members[0];
    if (!first || begins[first.task] === NONE || block.fixed) return;
    const at = (begins[first.task] as number) - first.offset;
    if (nextBegin(full, number, at - 1) !== at - 1)
      for (const [task, bond] of windowBonds(prepared, block, at)) bonds.get(task)?.push(bond);
    for (const [task, bond] of resourceBonds(prepared, begins, profiles, number, at))
      bonds.get(task)?.push(bond);
  });
  return bonds;
}

/** Lags to placed tasks, and over tasks that are not placed to placed and fixed ones. */
function lagBonds({ network, arcs, paths }: Prepared, begins: TaskBegins, task: number): Bond[] {
  const begin = begins[task] as number;
  const direct = arcs.filter(
    ({ from, to, minutes }) =>
      to === task && from !== task && begins[from] !== NONE && (begins[from] as number) + minutes === begin,
  );
  const size = network.tasks.length;
  const isTied = direct.length > 0;
  const overUnplaced = network.tasks.flatMap(({ fixed }, from): Bond[] => {
    // Tasks tied to the minute hold each other; what holds them all may be a fixed task that has no place itself.
    if (isTied && (fixed === undefined || begins[from] !== NONE)) return [];
    const at = begins[from] === NONE ? fixed : (begins[from] as number);
    const path = paths[from * size + task] as number;
    if (from === task || at === undefined || path === NONE || at + path !== begin) return [];
    return [{ kind: 'lag', task: from, arcs: linkingArcs(size, arcs, from, task) }];
  });
  return [...direct.map((arc): Bond => ({ kind: 'lag', task: arc.from, arcs: [arc] })), ...overUnplaced];
}

/** What has too little a minute before what a block needs now, for the task of the block that needs it. */
function resourceBonds(
  { network, full }: Prepared,
  begins: TaskBegins,
  profiles: readonly Profile[],
  number: number,
  at: number,
): [task: number, bond: Bond][] {
  const { members } = full.blocks[number] as Block;
  const own = new Set(members.map(({ task }) => task));
  const [first, end] = [full.needAt[number] as number, full.needAt[number + 1] as number];
  const needs = Array.from({ length: end - first }, (_, index) => ({
    resource: full.needResource[first + index] as number,
    amount: full.needAmount[first + index] as number,
    from: full.needFrom[first + index] as number,
    until: full.needUntil[first + index] as number,
  }));
  const change = (sign: 1 | -1) => {
    for (const { resource, amount, from, until } of needs)
      take(profiles[resource] as Profile, at + from, at + until, sign * amount);
  };
  change(-1);
  const lacking = needs.filter(
    ({ resource, amount, from, until }) =>
      lackUntil(profiles[resource] as Profile, at + from - 1, at + until - 1, amount) !== NONE,
  );
  change(1);
  return lacking.flatMap(({ resource: index, from }): [number, Bond][] => {
    const resource = network.problem.resources[index]?.id as string;
    const minute = at + from - 1;
    const holders = holdersAt(network, begins, resource, minute).filter(({ task }) => !own.has(task));
    const needing = members.find(({ task, offset }) => {
      const { needs: ofTask, minutes } = network.tasks[task] as Task;
      return ofTask.some(
        (need) =>
          need.resource === resource &&
          need.amount > 0 &&
          offset + (need.from ?? 0) <= from &&
          from < offset + (need.until ?? minutes),
      );
    });
    const bond = { kind: 'resource' as const, resource, minute, holders: holders.map(({ task }) => task) };
    const letting = holders.filter(({ until }) => until === minute + 1);
    const bonds: Bond[] =
      letting.length > 0 ? letting.map(({ task }) => ({ ...bond, task })) : [{ ...bond, task: undefined }];
    return bonds.map((each) => [needing?.task as number, each]);
  });
}

function windowBonds({ network }: Prepared, { members }: Block, at: number): [task: number, bond: Bond][] {
  const { horizon } = network.problem;
  return members.flatMap(({ task, offset }): [number, Bond][] => {
    const own = network.tasks[task] as Task;
    const begin = at + offset;
    const may = beginRanges(own, horizon);
    if (may.some(({ first, last }) => first < begin && begin <= last)) return [];
    const window = own.windows?.find(({ from, until }) => from === begin && begin + own.minutes <= until);
    return [[task, window ? { kind: 'window', window } : { kind: 'horizon' }]];
  });
}
