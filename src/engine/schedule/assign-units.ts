/** A stretch of whole minutes in which so many of a kind are taken, all the time. */
export interface Stint {
  readonly id: string;
  readonly from: number;
  readonly until: number;
  readonly amount: number;
  /** What it goes well after, the best first: a unit whose last stint shares the first of these is asked first. */
  readonly near?: readonly string[];
}

/** Which of those that are free and equally near is taken. */
export type Preferred = 'least busy' | 'first';

/**
 * Tells which units of a kind each stint has, by numbers from 0, so that none has two at a minute. In order of their
 * beginnings each takes units that are free; a further one is added only where too few are, so there are never more than
 * `units`, or than are taken at once at the busiest minute, whichever is more. The same stints always get the same units,
 * in whatever order they are given.
 */
export function assignUnits(
  stints: readonly Stint[],
  units: number,
  preferred: Preferred,
): Map<string, readonly number[]> {
  const all: Unit[] = Array.from({ length: units }, (_, number) => newUnit(number));
  const given = new Map<string, readonly number[]>();
  const order = stints
    .filter(({ from, until, amount }) => until > from && amount > 0)
    .sort((a, b) => a.from - b.from || a.until - b.until || (a.id < b.id ? -1 : 1));
  for (const stint of order) {
    const free = all.filter(({ until }) => until <= stint.from).sort(byPreference(stint, preferred));
    while (free.length < stint.amount) {
      const more = newUnit(all.length);
      all.push(more);
      free.push(more);
    }
    const taken = free.slice(0, stint.amount);
    for (const unit of taken) {
      unit.until = stint.until;
      unit.busy += stint.until - stint.from;
      unit.near = stint.near ?? [];
    }
    given.set(
      stint.id,
      taken.map(({ number }) => number).sort((a, b) => a - b),
    );
  }
  return given;
}

interface Unit {
  readonly number: number;
  /** When it is free again. */
  until: number;
  busy: number;
  /** Of what it did last. */
  near: readonly string[];
}

function newUnit(number: number): Unit {
  return { number, until: Number.NEGATIVE_INFINITY, busy: 0, near: [] };
}

function byPreference({ near = [] }: Stint, preferred: Preferred): (a: Unit, b: Unit) => number {
  const distance = (unit: Unit) => {
    const at = near.findIndex((key) => unit.near.includes(key));
    return at === -1 ? near.length : at;
  };
  const busy = (unit: Unit) => (preferred === 'first' ? 0 : unit.busy);
  return (a, b) => distance(a) - distance(b) || busy(a) - busy(b) || a.number - b.number;
}
