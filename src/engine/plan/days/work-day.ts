/** A piece of work of one day, as far as its order in time depends on it. Times are whole minutes. */
export interface Work {
  readonly id: string;
  readonly station: string;
  readonly handsOn: number;
  /** After the hands-on time, all loads together. */
  readonly unattended: number;
  /** Work of the same day that must have ended before it begins, by id. */
  readonly after: readonly string[];
  /** Equipment taken up while it is unattended: `uses` of the `count` there are. */
  readonly gear?: { readonly id: string; readonly count: number; readonly uses: number } | undefined;
}

/** When a piece of work is done, in minutes from the day's beginning. */
export interface TimedWork {
  readonly work: Work;
  readonly begins: number;
  /** Hands are free again; what follows until `ends` is unattended. */
  readonly handsOff: number;
  readonly ends: number;
}

/**
 * Puts a day's work in order of time. A station is one pair of hands, and no more than `people` are at work at once;
 * unattended time leaves them free, but takes up its equipment. Each time the work that can begin earliest is put
 * next, the first in the given order where several can. What it gives is an order that works, not the shortest
 * possible one. The result is in the given order. Throws where work waits for itself.
 */
export function timeWork(works: readonly Work[], people?: number): TimedWork[] {
  const ids = new Set(works.map(({ id }) => id));
  const done = new Map<string, TimedWork>();
  const stations = new Map<string, number>();
  const gear = new Map<string, number[]>();
  const hands: number[] = Array.from({ length: Math.min(people ?? works.length, works.length) }, () => 0);

  const earliest = (work: Work): number | undefined => {
    const waits = work.after.filter((id) => ids.has(id)).map((id) => done.get(id)?.ends);
    if (waits.includes(undefined)) return undefined;
    const gearFree = freeGear(gear, work).at(-1) ?? 0;
    return Math.max(
      0,
      ...waits.map((ends) => ends ?? 0),
      ...(work.handsOn > 0 ? [stations.get(work.station) ?? 0, Math.min(...hands)] : []),
      gearFree - work.handsOn,
    );
  };

  while (done.size < works.length) {
    let next: { work: Work; begins: number } | undefined;
    for (const work of works) {
      if (done.has(work.id)) continue;
      const begins = earliest(work);
      if (begins !== undefined && (!next || begins < next.begins)) next = { work, begins };
    }
    if (!next) throw new Error('work of a day waits for itself, or an id is used twice');
    const { work, begins } = next;
    const handsOff = begins + work.handsOn;
    const ends = handsOff + work.unattended;
    done.set(work.id, { work, begins, handsOff, ends });
    if (work.handsOn > 0) {
      stations.set(work.station, handsOff);
      hands[hands.indexOf(Math.min(...hands))] = handsOff;
    }
    if (work.gear) {
      const free = gear.get(work.gear.id) ?? Array.from({ length: work.gear.count }, () => 0);
      const taken = [...free].sort((a, b) => a - b).map((at, index) => (index < work.gear!.uses ? ends : at));
      gear.set(work.gear.id, taken);
    }
  }
  return works.map(({ id }) => done.get(id) as TimedWork);
}

/** When each piece of the equipment that work takes up is free, the earliest first; none where it takes up none. */
function freeGear(gear: ReadonlyMap<string, readonly number[]>, { gear: wanted }: Work): number[] {
  if (!wanted) return [];
  const free = gear.get(wanted.id) ?? Array.from({ length: wanted.count }, () => 0);
  return [...free].sort((a, b) => a - b).slice(0, wanted.uses);
}

/** How long timed work takes from the day's beginning to the end of the last. */
export function spanOf(timed: readonly TimedWork[]): number {
  return Math.max(0, ...timed.map(({ ends }) => ends));
}
