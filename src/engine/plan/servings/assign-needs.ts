/** Guests by need (rows) and dish (columns): who is given which dish. */
export type Assigned = number[][];

/**
 * Gives guests with needs the dishes of a course of which every guest takes one, `capacity` of each. As many as can
 * be get a dish that suits them as it is (`suits`), then as many of the others as can be one that is made separately
 * for them (`apart`); who gets neither is missing from the answer's row. Largest flow by shortest ways, so that one
 * guest makes room for another where that feeds both.
 */
export function assignNeeds(
  guests: readonly number[],
  capacity: readonly number[],
  suits: readonly (readonly boolean[])[],
  apart: readonly (readonly boolean[])[],
): Assigned {
  const given = guests.map(() => capacity.map(() => 0));
  const both = suits.map((row, need) => row.map((yes, dish) => yes || apart[need]?.[dish] === true));
  for (const allowed of [suits, both])
    for (const need of guests.keys()) while (feedMore(need, guests, capacity, allowed, given)) {}
  return given;
}

/** Feeds more guests of one need by the shortest way, moving others to dishes they may have as well. */
function feedMore(
  need: number,
  guests: readonly number[],
  capacity: readonly number[],
  allowed: readonly (readonly boolean[])[],
  given: Assigned,
): boolean {
  const hungry = (guests[need] ?? 0) - total(given[need] ?? []);
  if (hungry <= 0) return false;
  const takenBy = new Map<number, number>();
  const givesUp = new Map<number, number>();
  const queue = [need];
  for (const from of queue) {
    for (const dish of capacity.keys()) {
      if (takenBy.has(dish) || !allowed[from]?.[dish]) continue;
      takenBy.set(dish, from);
      const room = (capacity[dish] ?? 0) - total(given.map((row) => row[dish] ?? 0));
      if (room > 0) {
        shift(dish, need, Math.min(room, hungry), takenBy, givesUp, given);
        return true;
      }
      for (const other of guests.keys()) {
        if (queue.includes(other) || (given[other]?.[dish] ?? 0) === 0) continue;
        givesUp.set(other, dish);
        queue.push(other);
      }
    }
  }
  return false;
}

/** Moves as many guests as the way from `need` to a dish with room allows. */
function shift(
  last: number,
  need: number,
  most: number,
  takenBy: ReadonlyMap<number, number>,
  givesUp: ReadonlyMap<number, number>,
  given: Assigned,
): void {
  const moves: { who: number; to: number; from: number | undefined }[] = [];
  for (let to: number | undefined = last; to !== undefined; ) {
    const who = takenBy.get(to) as number;
    const from: number | undefined = who === need ? undefined : givesUp.get(who);
    moves.push({ who, to, from });
    to = from;
  }
  const held = moves.flatMap(({ who, from }) => (from === undefined ? [] : [given[who]?.[from] ?? 0]));
  const moved = Math.min(most, ...held);
  for (const { who, to, from } of moves) {
    const row = given[who] as number[];
    row[to] = (row[to] ?? 0) + moved;
    if (from !== undefined) row[from] = (row[from] ?? 0) - moved;
  }
}

function total(counts: readonly number[]): number {
  return counts.reduce((sum, count) => sum + count, 0);
}
