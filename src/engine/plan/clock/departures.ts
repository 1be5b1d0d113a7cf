import type { PlacedTask, Schedule } from '../../schedule/result.ts';

/** The first task of a chain that ends in an event’s truck or tables. */
export interface Departure {
  /** Undefined where what holds the chain in the end belongs to no event, such as the crew’s going home. */
  readonly event: string | undefined;
  readonly first: string;
}

/**
 * For each departure of a date the first of all that it holds in the end: what sets how early work for it begins. What
 * sets how early the whole date begins is among them, whatever holds it.
 */
export function departuresOf({ placed }: Pick<Schedule, 'placed'>): Departure[] {
  const byId = new Map(placed.map((task) => [task.id, task]));
  const found = new Map<string | undefined, string>();
  placed.forEach(({ id }, index) => {
    const event = eventOf(endOf(id, byId));
    if (!found.has(event) && (event !== undefined || index === 0)) found.set(event, id);
  });
  return [...found].map(([event, first]) => ({ event, first }));
}

/** The last of the chain from a task, which nothing else holds or which closes a ring. */
function endOf(id: string, byId: ReadonlyMap<string, PlacedTask>): string {
  const seen = new Set<string>();
  for (let at = id; ; ) {
    seen.add(at);
    const reason = byId.get(at)?.reason;
    const next = reason?.kind === 'lag' || reason?.kind === 'resource' ? reason.task : null;
    if (next === null || seen.has(next) || !byId.has(next)) return at;
    at = next;
  }
}

function eventOf(id: string): string | undefined {
  const [kind = '', event] = id.split(' ');
  return ['leave', 'serve', 'load', 'pack', 'out'].includes(kind) ? event : undefined;
}
