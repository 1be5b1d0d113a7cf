/** One line of the table: what was measured, what it is to reach, and whether it does. */
export interface Measure {
  readonly name: string;
  readonly value: number | string;
  readonly target: string;
  readonly holds: boolean;
  /** What the figure was made from, for whoever reads the table. */
  readonly note?: string;
}

/** How large a run is: `full` is what the README's figures are from, `small` only shows that everything runs. */
export interface BenchScale {
  readonly proposals: number;
  readonly events: number;
  readonly manyProposals: number;
  readonly manyEvents: number;
  readonly rounds: number;
}

export const FULL: BenchScale = {
  proposals: 1000,
  events: 100,
  manyProposals: 5000,
  manyEvents: 500,
  rounds: 5,
};
export const SMALL: BenchScale = { proposals: 40, events: 8, manyProposals: 80, manyEvents: 16, rounds: 1 };

/** A ratio that is to be at most some figure. */
export function atMost(name: string, value: number, most: number, note?: string): Measure {
  return { name, value: rounded(value), target: `≤ ${most}`, holds: value <= most, ...(note && { note }) };
}

/** A ratio that is to be at least some figure. */
export function atLeast(name: string, value: number, least: number, note?: string): Measure {
  return { name, value: rounded(value), target: `≥ ${least}`, holds: value >= least, ...(note && { note }) };
}

function rounded(value: number): number {
  return Number(value.toPrecision(3));
}
