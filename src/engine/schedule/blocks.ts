import { beginRanges, commonRanges, laterRanges, type Range } from './begin-ranges.ts';
import { type Network, NONE } from './network.ts';
import type { Task } from './problem.ts';

/** A task of a block and how many minutes after the block’s begin it begins. */
export interface Member {
  readonly task: number;
  readonly offset: number;
}

/** Tasks that lags tie to each other to the minute, such as fry, drain and pack: they are placed as one. */
export interface Block {
  /** In order of begin, then id; the first begins with the block. */
  readonly members: readonly Member[];
  /** Minutes until the last of them has ended. */
  readonly minutes: number;
  /** When the block may begin by the windows and fixed minutes of all its tasks. */
  readonly begins: readonly Range[];
  readonly fixed: boolean;
  readonly weight: number;
}

/** An amount of a resource for an interval, in minutes from a block’s begin. */
export interface BlockNeed {
  readonly resource: number;
  readonly amount: number;
  readonly from: number;
  readonly until: number;
}

/** The blocks of some tasks of a network, a task that nothing ties being one of its own. `paths` as `longestPaths` gives. */
export function blocksOf({ tasks, problem }: Network, paths: Int32Array, among: readonly number[]): Block[] {
  const size = tasks.length;
  const taken = new Uint8Array(size);
  return among.flatMap((first) => {
    if (taken[first]) return [];
    const tied: number[] = [];
    let earliest = 0;
    for (const other of among) {
      const to = paths[first * size + other] as number;
      // Most lead nowhere, and looking back is what costs.
      if (to === NONE) continue;
      const back = paths[other * size + first] as number;
      if (back === NONE || to + back !== 0) continue;
      tied.push(other);
      taken[other] = 1;
      earliest = Math.min(earliest, to);
    }
    const members = tied
      .map((task) => ({ task, offset: (paths[first * size + task] as number) - earliest }))
      .sort((a, b) => a.offset - b.offset || a.task - b.task);
    const of = ({ task }: Member) => tasks[task] as Task;
    return [
      {
        members,
        minutes: Math.max(...members.map((member) => member.offset + of(member).minutes)),
        begins: members
          .map((member) => laterRanges(beginRanges(of(member), problem.horizon), -member.offset))
          .reduce(commonRanges),
        fixed: members.some((member) => of(member).fixed !== undefined),
        weight: members.reduce((sum, member) => sum + (of(member).weight ?? 0), 0),
      },
    ];
  });
}

/** What a block needs, each resource’s intervals in order and none over another: where tasks overlap, amounts add. */
export function needsOfBlock({ tasks, resourceAt }: Network, members: readonly Member[]): BlockNeed[] {
  const single = members.flatMap(({ task, offset }) => {
    const { needs, minutes } = tasks[task] as Task;
    return needs.map(({ resource, amount, from = 0, until = minutes }) => ({
      resource: resourceAt.get(resource) ?? -1,
      amount,
      from: offset + from,
      until: offset + until,
    }));
  });
  const real = single.filter(({ amount, from, until }) => amount > 0 && from < until);
  real.sort((a, b) => a.resource - b.resource);
  // Mostly each need is of a resource of its own.
  if (real.every(({ resource }, index) => resource !== real[index + 1]?.resource)) return real;
  return [...Map.groupBy(real, ({ resource }) => resource).values()].flatMap(addedUp);
}

/** Needs of one resource as intervals none over another. */
function addedUp(needs: readonly BlockNeed[]): BlockNeed[] {
  const times = [...new Set(needs.flatMap(({ from, until }) => [from, until]))].sort((a, b) => a - b);
  return times.slice(0, -1).flatMap((from, index) => {
    const until = times[index + 1] as number;
    const amount = needs
      .filter((need) => need.from <= from && need.until >= until)
      .reduce((sum, need) => sum + need.amount, 0);
    return amount > 0 ? [{ resource: (needs[0] as BlockNeed).resource, amount, from, until }] : [];
  });
}

/** The task that begins with the block. */
export function leadOf({ members }: Block): number {
  return (members[0] as Member).task;
}
