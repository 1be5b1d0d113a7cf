import type { Say } from '../../words/words-in.ts';

/** What food is given out from, by how it is served: guests walk along a line at a buffet, and never at a table. */
const FROM = { plated: 'event.plated-on', 'family style': 'event.dished-on' } as const;

/** The lines that are set up alike, as a fact of the event: `Serving lines`, `2`; plated, `Plating lines`. */
export function linesFact(style: string, lines: number, say: Say): [label: string, value: string] {
  const label = Object.hasOwn(FROM, style) ? FROM[style as keyof typeof FROM] : 'event.served-from';
  return [say(label), String(lines)];
}
