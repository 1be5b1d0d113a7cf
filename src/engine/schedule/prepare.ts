import { beginRanges } from './begin-ranges.ts';
import { type Block, blocksOf, leadOf, needsOfBlock } from './blocks.ts';
import { circlesOf } from './circles.ts';
import { type Contradiction, withoutContradictions } from './contradictions.ts';
import { firstFit, type Model, modelFrom, nextBegin } from './model.ts';
import { type Arc, NEVER, type Network, NONE } from './network.ts';
import type { Task } from './problem.ts';
import { capacityProfile, type Profile } from './profile.ts';
import { compatibleBlocks, type HeldMinute, holdTo, raiseBounds } from './temporal-bounds.ts';

/** A problem made ready to be searched, with what can be known to be impossible left out of the model. */
export interface Prepared {
  readonly network: Network;
  /** The positive circles of lags; their tasks are in no block. */
  readonly circles: readonly (readonly Arc[])[];
  /** Tasks between fixed ones that leave them no minute; they are in no block either. */
  readonly contradictions: readonly Contradiction[];
  /** The arcs between the other tasks, and the longest paths over them. */
  readonly arcs: readonly Arc[];
  readonly paths: Int32Array;
  /** The blocks that can be placed together as far as their bounds tell: what is searched. */
  readonly model: Model;
  /** All blocks, bound by nothing but their own windows and held minutes: what is placed last, and explained. */
  readonly full: Model;
}

/**
 * Analyses a problem that is placed early: circles, longest paths, tasks that fit nowhere even by themselves, blocks and
 * the bounds on their begins.
 */
export function prepare(network: Network): Prepared {
  const { tasks } = network;
  const circles = circlesOf(network);
  const inCircle = new Set(circles.flatMap((circle) => circle.map(({ from }) => from)));
  const { contradictions, arcs, paths } = withoutContradictions(
    network,
    network.arcs.filter(({ from, to }) => !inCircle.has(from) && !inCircle.has(to)),
  );
  const impossible = new Set([...inCircle, ...contradictions.map(({ task }) => task)]);
  const calendars = calendarsOf(network);
  const possible = tasks.map((_, task) => task).filter((task) => !impossible.has(task));
  const fitting = withRoom(network, possible, paths, calendars);
  const all = fitting.blocks;
  const held = heldMinutes(
    network,
    new Set([...impossible, ...all.flatMap(({ members }) => members.map(({ task }) => task))]),
  );
  const full = fitting.model;
  const bound = compatibleBlocks(all, paths, tasks.length, held);
  // Mostly all agree, and only the bounds on begins differ.
  const model =
    bound.kept.length === all.length
      ? { ...full, base: full.base.slice(), earliest: full.earliest.slice(), latest: full.latest.slice() }
      : modelOf(network, bound.kept, paths, calendars);
  holdTo(full, paths, tasks.length, held);
  model.latest.set(bound.latest);
  model.base.set(bound.earliest);
  raiseBounds(model, model.base, (block, from) => nextBegin(model, block, from));
  model.earliest.set(model.base);
  raiseBounds(model, model.earliest, (block, from) =>
    firstFit(model, calendars, block, from, model.latest[block] as number),
  );
  full.base.set(full.earliest);
  bound.kept.forEach((block, index) => {
    full.base[all.indexOf(block)] = model.base[index] as number;
  });
  return { network, circles, contradictions, arcs, paths, model, full };
}

/** The capacity of each resource, nothing placed, and at the end one without any, for resources nobody has. */
function calendarsOf({ problem, tasks }: Network): Profile[] {
  const needs = tasks.reduce((sum, task) => sum + task.needs.length, 0);
  return [...problem.resources.map(({ capacity }) => capacity), []].map((capacity) =>
    capacityProfile(capacity, 2 * needs),
  );
}

/**
 * The blocks of the tasks whose windows, and the capacity they need, have room for them with nothing else placed; with
 * their model.
 */
function withRoom(
  network: Network,
  possible: readonly number[],
  paths: Int32Array,
  calendars: readonly Profile[],
): { readonly blocks: readonly Block[]; readonly model: Model } {
  const blocks = blocksOf(network, paths, possible);
  const model = modelOf(network, blocks, paths, calendars);
  const without = new Set(
    blocks.flatMap(({ members }, block) =>
      // A block of several has room only where each has, but may have none where each has some.
      firstFit(model, calendars, block, NONE, NEVER) !== NONE
        ? []
        : members.map(({ task }) => task).filter((task) => !fitsAlone(network, task, calendars)),
    ),
  );
  if (without.size === 0) return { blocks, model };
  const left = blocksOf(
    network,
    paths,
    possible.filter((task) => !without.has(task)),
  );
  return { blocks: left, model: modelOf(network, left, paths, calendars) };
}

function modelOf(
  network: Network,
  blocks: readonly Block[],
  paths: Int32Array,
  calendars: readonly Profile[],
): Model {
  return modelFrom({
    blocks,
    needs: blocks.map(({ members }) => needsOfBlock(network, members)),
    after: pathsBetween(blocks, paths, network.tasks.length),
    calendars,
    origin: network.problem.horizon.from,
  });
}

/** Whether a task’s windows and the capacity it needs have room for it with nothing else placed. */
function fitsAlone(network: Network, task: number, calendars: readonly Profile[]): boolean {
  const single = modelOfTask(network, task, calendars);
  return single !== undefined && firstFit(single, calendars, 0, NONE, NEVER) !== NONE;
}

/** One task as a model of its own, or undefined where its windows leave it no minute to begin. */
export function modelOfTask(
  network: Network,
  task: number,
  calendars: readonly Profile[],
): Model | undefined {
  const { minutes, ...own } = network.tasks[task] as Task;
  const begins = beginRanges({ minutes, ...own }, network.problem.horizon);
  const members = [{ task, offset: 0 }];
  return begins.length === 0
    ? undefined
    : modelFrom({
        blocks: [{ members, minutes, begins, fixed: own.fixed !== undefined, weight: 0 }],
        needs: [needsOfBlock(network, members)],
        after: Int32Array.of(0),
        calendars,
        origin: 0,
      });
}

/** Fixed tasks that are in no block: they cannot be placed, and still hold what is tied to them by lags to their minute. */
function heldMinutes({ tasks }: Network, others: ReadonlySet<number>): HeldMinute[] {
  return tasks.flatMap(({ fixed }, task): HeldMinute[] =>
    fixed === undefined || others.has(task) ? [] : [{ task, minute: fixed }],
  );
}

function pathsBetween(blocks: readonly Block[], paths: Int32Array, size: number): Int32Array {
  const leads = blocks.map(leadOf);
  // Mostly no tasks are tied, and none is impossible.
  if (leads.length === size && leads.every((task, block) => task === block)) return paths;
  const between = new Int32Array(leads.length * leads.length);
  let index = 0;
  for (const from of leads) for (const to of leads) between[index++] = paths[from * size + to] as number;
  return between;
}
