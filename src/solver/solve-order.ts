import loadHighs from 'highs';
import type { OrderModel } from '../engine/purchase/order-model.ts';
import type { SolverAnswer } from '../engine/purchase/settle-order.ts';
import type { OrderCounts } from '../engine/purchase/weigh-order.ts';
import { countsOf, type OrderProgram, orderProgram, type ProgramRow } from './order-program.ts';
import { type RunLimits, type RunResult, runProgram } from './run-program.ts';

/**
 * What an order may take by default. The limit on branches comes first, since it falls on the same order on every
 * machine; the seconds, over all runs for one order, keep a slow machine from waiting for ever.
 */
export const ORDER_LIMITS: RunLimits = { seconds: 20, nodes: 5_000 };

/** A solver's answer and how far it went. */
export interface SolvedOrder extends SolverAnswer {
  /** Branches looked at, over all runs. */
  readonly nodes: number;
  /** False where a limit was reached before the least cost was proven. */
  readonly finished: boolean;
}

const ANY = Number.NEGATIVE_INFINITY;

/**
 * Solves an order's model with HiGHS. First for the least cost with every minimum order reached; where that cannot
 * be, for the fewest that are not, then for the least cost with no more than those. Then, among orders of that
 * cost, for the fewest suppliers and packs, the least left over, and the packs named first. Every order on that way
 * is handed back for an exact check; floating-point numbers stay in here.
 *
 * A fresh instance of the library is loaded for each call, so that calls share nothing, not even memory that grew.
 */
export async function solveOrder(model: OrderModel, limits: RunLimits = ORDER_LIMITS): Promise<SolvedOrder> {
  const highs = await loadHighs();
  const program = orderProgram(model);
  const orders: OrderCounts[] = [];
  const until = performance.now() + limits.seconds * 1000;
  let nodes = 0;
  const run = (
    objective: readonly number[],
    rows: readonly ProgramRow[],
    upper: ReadonlyMap<number, number>,
  ) => {
    const seconds = (until - performance.now()) / 1000;
    const left = { seconds: Math.max(seconds, 0), nodes: Math.max(limits.nodes - nodes, 0) };
    const result = runProgram(highs, program, objective, { rows, upper }, left);
    nodes += result.nodes;
    if (result.values) orders.push(countsOf(program, result.values));
    return result;
  };

  const reached = new Map(program.below.map((column): [number, number] => [column, 0]));
  let below: number | undefined = 0;
  let rows: ProgramRow[] = [];
  let cheapest = run(program.cost, rows, reached);
  if (cheapest.status === 'none') {
    const short = weights(program, program.below, 1);
    const fewest = run(short, [], new Map());
    below = fewest.status === 'best' ? Math.round(fewest.objective) : undefined;
    rows = [
      { from: ANY, to: below ?? program.below.length, terms: program.below.map((column) => [column, 1]) },
    ];
    reached.clear();
    cheapest = run(program.cost, rows, reached);
  } else if (cheapest.status === 'stopped' && !cheapest.values) below = undefined;

  const finished = cheapest.status === 'best';
  if (finished) breakTies(program, model, cheapest, rows, (objective, more) => run(objective, more, reached));
  return { orders, bound: boundOf(program, cheapest), below, nodes, finished };
}

/* Each run keeps what the one before reached; a whole objective is kept with half a step to spare. */
function breakTies(
  program: OrderProgram,
  model: OrderModel,
  cheapest: RunResult,
  rows: readonly ProgramRow[],
  run: (objective: readonly number[], rows: readonly ProgramRow[]) => RunResult,
): void {
  const columns = program.packs.flat();
  const most = columns.reduce((sum, column) => sum + (program.upper[column] ?? 0), 1);
  const few = weights(program, columns, 1);
  for (const column of program.used) few[column] = most;
  const left = program.cost.map(() => 0);
  const places = program.cost.map(() => 0);
  for (const [at, food] of model.foods.entries()) {
    for (const [index, { size }] of food.packs.entries()) {
      const column = program.packs[at]?.[index] as number;
      left[column] = Number(size) / Number(food.need);
      places[column] = column;
    }
  }
  for (const [index, column] of program.used.entries()) places[column] = columns.length * (index + 1);

  const asCheap = atMost(program.cost, cheapest.objective + 0.5);
  const fewest = run(few, [...rows, asCheap]);
  if (fewest.status !== 'best') return;
  const asFew = atMost(few, fewest.objective + 0.5);
  const least = run(left, [...rows, asCheap, asFew]);
  if (least.status !== 'best') return;
  run(places, [...rows, asCheap, asFew, atMost(left, least.objective + 1e-9)]);
}

function weights(program: OrderProgram, columns: readonly number[], weight: number): number[] {
  const all = program.cost.map(() => 0);
  for (const column of columns) all[column] = weight;
  return all;
}

function atMost(objective: readonly number[], to: number): ProgramRow {
  return {
    from: ANY,
    to,
    terms: objective.flatMap((weight, column): [number, number][] =>
      weight === 0 ? [] : [[column, weight]],
    ),
  };
}

/* Costs are whole steps: a bound a hair above one of them is that one, anything more the next. */
function boundOf({ offset }: OrderProgram, { bound }: RunResult): bigint | undefined {
  if (!Number.isFinite(bound)) return undefined;
  return BigInt(Math.ceil(bound + offset - 1e-6 - Math.abs(bound) * 1e-9));
}
