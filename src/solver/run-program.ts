import type { Highs, ModelData } from 'highs';
import type { OrderProgram, ProgramRow } from './order-program.ts';

/** What one run may take. */
export interface RunLimits {
  readonly seconds: number;
  /** Branches looked at: unlike seconds, the same on every machine. */
  readonly nodes: number;
}

/** What a run came to. */
export interface RunResult {
  readonly status: 'best' | 'none' | 'stopped';
  /** A value for each column; undefined where no solution was found. */
  readonly values: Float64Array | undefined;
  /** The objective cannot be less. */
  readonly bound: number;
  readonly objective: number;
  readonly nodes: number;
}

const INTEGER = 1;

/**
 * Minimises an objective over a program with more rows and bounds. One solver for each call, which is given back
 * whatever happens; no gap is allowed for, the seed is fixed, and the library has one thread only.
 */
export function runProgram(
  highs: Highs,
  program: OrderProgram,
  objective: readonly number[],
  more: { readonly rows: readonly ProgramRow[]; readonly upper: ReadonlyMap<number, number> },
  limits: RunLimits,
): RunResult {
  return highs.withModel(
    modelData(program, objective, [...program.rows, ...more.rows], more.upper),
    (model) => {
      model.options.set({
        output_flag: false,
        random_seed: 0,
        mip_rel_gap: 0,
        mip_abs_gap: 0,
        mip_max_nodes: limits.nodes,
        time_limit: Math.max(0, limits.seconds),
      });
      model.run();
      const { optimal, infeasible } = highs.constants.modelStatus;
      const status = model.getModelStatus();
      const solved = model.info.get('primal_solution_status') === highs.constants.solutionStatus.feasible;
      const ended: RunResult['status'] =
        status === optimal ? 'best' : status === infeasible ? 'none' : 'stopped';
      return {
        status: ended,
        values: solved ? Float64Array.from(model.getSolution().colValue) : undefined,
        bound: Number(model.info.get('mip_dual_bound')),
        objective: model.getObjectiveValue(),
        nodes: Number(model.info.get('mip_node_count')),
      };
    },
  );
}

function modelData(
  { upper }: OrderProgram,
  objective: readonly number[],
  rows: readonly ProgramRow[],
  less: ReadonlyMap<number, number>,
): ModelData {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { terms } of rows) {
    for (const [column, value] of terms) {
      indices.push(column);
      values.push(value);
    }
    starts.push(indices.length);
  }
  return {
    numCols: upper.length,
    numRows: rows.length,
    colCost: [...objective],
    colLower: upper.map(() => 0),
    colUpper: upper.map((most, column) => less.get(column) ?? most),
    rowLower: rows.map(({ from }) => from),
    rowUpper: rows.map(({ to }) => to),
    integrality: Int32Array.from(upper, () => INTEGER),
    matrix: { format: 'csr', numRows: rows.length, numCols: upper.length, starts, indices, values },
  };
}
