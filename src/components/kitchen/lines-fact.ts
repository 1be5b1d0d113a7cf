/** What food is given out from, by how it is served: guests walk along a line at a buffet, and never at a table. */
const FROM: Readonly<Record<string, string>> = {
  plated: 'Plated on',
  'family style': 'Dished up on',
};

/** The lines that are set up alike, as a fact of the event: `Served from`, `2 lines`; plated, `Plated on`. */
export function linesFact(style: string, lines: number): [label: string, value: string] {
  return [FROM[style] ?? 'Served from', `${lines} ${lines === 1 ? 'line' : 'lines'}`];
}
