import { beginRanges } from './begin-ranges.ts';
import type { Block } from './blocks.ts';
import { nextBegin } from './model.ts';
import { type Arc, NONE } from './network.ts';
import { linkingArcs } from './paths.ts';
import { holdersAt, profilesAfter, type TaskBegins } from './placement.ts';
import type { Prepared } from './prepare.ts';
import type { Span, Task } from './problem.ts';
import { freeAt, type Profile } from './profile.ts';

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
  const placeOf = new Map(order.map((task, place) => [task, place]));
  const chosen = new Map<number, Bond>();
  /** By place in the order: whether one of the bonds leads to a task that is chosen, or not placed. */
  const follows = new Uint8Array(order.length);
  const leadingTo = new Map<number, number[]>();
  order.forEach((task, place) => {
    for (const bond of all.get(task) as Bond[]) {
      const holder = heldBy(bond);
      if (holder === undefined) continue;
      if (!all.has(holder)) follows[place] = 1;
      else leadingTo.set(holder, [...(leadingTo.get(holder) ?? []), place]);
    }
  });
  let first = 0;
  const choose = (task: number, fits: (bond: Bond) => boolean): void => {
    chosen.set(task, all.get(task)?.find(fits) as Bond);
    follows[placeOf.get(task) as number] = 0;
    for (const place of leadingTo.get(task) ?? []) {
      if (chosen.has(order[place] as number)) continue;
      follows[place] = 1;
      first = Math.min(first, place);
    }
  };
  const next = (fits: (bond: Bond) => boolean) =>
    order.find((task) => !chosen.has(task) && all.get(task)?.some(fits));
  const isFollowed = (bond: Bond) => {
    const task = heldBy(bond);
    return task !== undefined && (chosen.has(task) || !all.has(task));
  };
  while (chosen.size < order.length) {
    while (first < order.length && !follows[first]) first++;
    if (first < order.length) {
      choose(order[first] as number, isFollowed);
      continue;
    }
    // Only where no chain can be made longer does another one begin; a ring of tasks that hold each other is cut.
    const [free, any] = [(bond: Bond) => heldBy(bond) === undefined, () => true];
    const fits = next(free) === undefined ? any : free;
    const task = next(fits);
    if (task === undefined) break;
    choose(task, fits);
  }
  return chosen;
}

function heldBy(bond: Bond): number | undefined {
  return bond.kind === 'lag' || bond.kind === 'resource' ? bond.task : undefined;
}

function allBonds(prepared: Prepared, begins: TaskBegins): Map<number, Bond[]> {
  const { network, full } = prepared;
  const bonds = new Map<number, Bond[]>();
  const arcsTo = Map.groupBy(prepared.arcs, ({ to }) => to);
  begins.forEach((begin, task) => {
    if (begin === NONE) return;
    const isFixed = network.tasks[task]?.fixed !== undefined;
    bonds.set(task, isFixed ? [{ kind: 'fixed' }] : lagBonds(prepared, begins, task, arcsTo.get(task) ?? []));
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
function lagBonds(
  { network, arcs, paths }: Prepared,
  begins: TaskBegins,
  task: number,
  arcsToIt: readonly Arc[],
): Bond[] {
  const begin = begins[task] as number;
  const direct = arcsToIt.filter(
    ({ from, minutes }) =>
      from !== task && begins[from] !== NONE && (begins[from] as number) + minutes === begin,
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
  // What it has now it also has a minute earlier; only the minute before each need is new, where it may have some already.
  const lacking = needs.filter(({ resource, amount, from }) => {
    const has = needs.find((other) => other.resource === resource && other.until === from)?.amount ?? 0;
    return freeAt(profiles[resource] as Profile, at + from - 1) + has < amount;
  });
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
