/** A stretch of whole minutes in which so many of a kind are taken, all the time. */
export interface Stint {
  readonly id: string;
  readonly from: number;
  readonly until: number;
  readonly amount: number;
  /** What it goes well after, the best first: a unit whose last stint shares the first of these is asked first. */
  readonly near?: readonly string[];
  /** The units that can do it, where not any can; others are taken only while all of these are busy. */
  readonly only?: readonly number[];
}

/** Which of those that are free and equally near is taken. */
export type Preferred = 'least busy' | 'first';

/**
 * Tells which units of a kind each stint has, by numbers from 0, so that none has two at a minute. What only some can do
 * comes first, then all others, each in order of their beginnings, to units that are free; a further one is added only where
 * too few are. Where any can do all there are never more than `units`, or than are taken at once at the busiest minute,
 * whichever is more. The same stints always get the same units, in whatever order they are given.
 */
export function assignUnits(
  stints: readonly Stint[],
  units: number,
  preferred: Preferred,
): Map<string, readonly number[]> {
  const all: Unit[] = Array.from({ length: units }, (_, number) => ({ number, has: [] }));
  const sought = new Set(stints.flatMap(({ only = [] }) => only));
  const given = new Map<string, readonly number[]>();
  const order = stints
    .filter(({ from, until, amount }) => until > from && amount > 0)
    .sort(
      (a, b) =>
        Number(!a.only) - Number(!b.only) || a.from - b.from || a.until - b.until || (a.id < b.id ? -1 : 1),
    );
  for (const stint of order) {
    const free = all
      .filter(({ has }) => has.every(({ from, until }) => until <= stint.from || from >= stint.until))
      .sort(byPreference(stint, sought, preferred));
    while (free.length < stint.amount) {
      const more: Unit = { number: all.length, has: [] };
      all.push(more);
      free.push(more);
    }
    const taken = free.slice(0, stint.amount);
    for (const { has } of taken) has.push(stint);
    given.set(
      stint.id,
      taken.map(({ number }) => number).sort((a, b) => a - b),
    );
  }
  return given;
}

interface Unit {
  readonly number: number;
  readonly has: Stint[];
}

function byPreference(
  { near = [], only = [], from }: Stint,
  sought: ReadonlySet<number>,
  preferred: Preferred,
): (a: Unit, b: Unit) => number {
  // What any can do leaves those free whom other stints ask for.
  const able = ({ number }: Unit) => Number(only.length > 0 ? !only.includes(number) : sought.has(number));
  const distance = ({ has }: Unit) => {
    const before = has.filter(({ until }) => until <= from).sort((a, b) => b.until - a.until)[0];
    const at = near.findIndex((key) => before?.near?.includes(key));
    return at === -1 ? near.length : at;
  };
  const busy = ({ has }: Unit) =>
    preferred === 'first' ? 0 : has.reduce((sum, stint) => sum + stint.until - stint.from, 0);
  return (a, b) => able(a) - able(b) || distance(a) - distance(b) || busy(a) - busy(b) || a.number - b.number;
}
