import { firstFit, type Model } from './model.ts';
import { NONE } from './network.ts';
import { copyOf, type Profile, resetTo, take } from './profile.ts';

/** Begins by block; `NONE` for what is not placed. */
export type BlockBegins = Int32Array;

/** How often placed blocks may be taken out again in one schedule, for each block there is. */
const EJECTIONS_PER_BLOCK = 12;

/** Makes schedules of one model. Its working memory is made once; it is not to be shared between models. */
export interface Generator {
  /**
   * The schedule of a list of all blocks: each in turn is placed at the first minute at which lags and resources let it,
   * at or after its floor. Where that is too late for a most lag, what it is tied to is taken out and placed again, late
   * enough. What cannot be placed is left out.
   */
  run(list: ArrayLike<number>, floors?: Int32Array): BlockBegins;
  /**
   * Given begins, as far as they are possible: a block whose begin breaks a lag or finds no room is placed as `run`
   * would. With what is already known placed first, the schedule is no worse than the known one.
   */
  complete(begins: BlockBegins, list: ArrayLike<number>): BlockBegins;
  /**
   * A schedule, as far as it is possible, with each block, in order of begin, moved to the first minute it can have with all others where
   * they are, and with what was left out placed where there is room for it, until nothing changes.
   */
  finish(begins: BlockBegins): BlockBegins;
}

export function generatorOf(model: Model): Generator {
  const {
    size,
    after,
    before,
    earlier,
    later,
    earliest,
    latest,
    fixed,
    needAt,
    needResource,
    needAmount,
    needFrom,
    needUntil,
  } = model;
  const profiles: Profile[] = model.calendars.map(copyOf);
  const floors = new Int32Array(size);
  const dropped = new Uint8Array(size);
  const placeInList = new Int32Array(size);
  let begins = new Int32Array(size);
  let ejections = 0;

  function reset(from: Int32Array | undefined): void {
    begins = new Int32Array(size).fill(NONE);
    dropped.fill(0);
    ejections = 0;
    for (let block = 0; block < size; block++)
      floors[block] = Math.max(earliest[block] as number, from ? (from[block] as number) : NONE);
    profiles.forEach((profile, resource) => {
      resetTo(profile, model.calendars[resource] as Profile);
    });
  }

  function occupy(block: number, begin: number, sign: 1 | -1): void {
    const end = needAt[block + 1] as number;
    for (let need = needAt[block] as number; need < end; need++)
      take(
        profiles[needResource[need] as number] as Profile,
        begin + (needFrom[need] as number),
        begin + (needUntil[need] as number),
        sign * (needAmount[need] as number),
      );
  }

  function put(block: number, begin: number): void {
    begins[block] = begin;
    occupy(block, begin, 1);
  }

  function remove(block: number): void {
    occupy(block, begins[block] as number, -1);
    begins[block] = NONE;
  }

  /** The first minute that lags from placed blocks let a block begin. */
  function byLags(block: number): number {
    let from = floors[block] as number;
    const row = block * size;
    const others = earlier[block] as Int32Array;
    for (let index = 0; index < others.length; index++) {
      const other = others[index] as number;
      const begin = begins[other] as number;
      if (begin === NONE) continue;
      const bound = begin + (before[row + other] as number);
      if (bound > from) from = bound;
    }
    return from;
  }

  /**
   * Places a block, taking out what begins too early for it. Returns the least place in the list of what was taken out,
   * `size` if nothing was, -1 if the block cannot be placed.
   */
  function place(block: number): number {
    const begin = firstFit(model, profiles, block, byLags(block), latest[block] as number);
    if (begin === NONE) return -1;
    const row = block * size;
    const others = later[block] as Int32Array;
    let pushed = 0;
    for (let index = 0; index < others.length; index++) {
      const other = others[index] as number;
      const at = begins[other] as number;
      const path = after[row + other] as number;
      if (at === NONE || begin + path <= at) continue;
      if (fixed[other] || begin + path > (latest[other] as number)) return -1;
      pushed++;
    }
    let back = size;
    if (pushed > 0) {
      ejections += pushed;
      if (ejections > EJECTIONS_PER_BLOCK * size) return -1;
      for (const other of others) {
        const at = begins[other] as number;
        const path = after[row + other] as number;
        if (at === NONE || begin + path <= at) continue;
        floors[other] = begin + path;
        remove(other);
        back = Math.min(back, placeInList[other] as number);
      }
    }
    put(block, begin);
    return back;
  }

  function placeAll(list: ArrayLike<number>): void {
    for (let place = 0; place < size; place++) placeInList[list[place] as number] = place;
    for (let block = 0; block < size; block++)
      if (fixed[block] && begins[block] === NONE && place(block) < 0) dropped[block] = 1;
    let at = 0;
    while (at < size) {
      const block = list[at] as number;
      if (dropped[block] || begins[block] !== NONE) {
        at++;
        continue;
      }
      const back = place(block);
      if (back < 0) dropped[block] = 1;
      else if (back < at) at = back;
    }
  }

  function isPossible(block: number, begin: number): boolean {
    if (firstFit(model, profiles, block, begin, begin) === NONE) return false;
    for (let other = 0; other < size; other++) {
      const at = begins[other] as number;
      if (at === NONE) continue;
      const [to, back] = [after[block * size + other] as number, before[block * size + other] as number];
      if ((to !== NONE && begin + to > at) || (back !== NONE && at + back > begin)) return false;
    }
    return true;
  }

  /** Places blocks where they are known to be, fixed ones first, as far as that is possible. */
  function putPossible(known: BlockBegins): void {
    for (const block of [...byBegin(known)].sort((a, b) => (fixed[b] as number) - (fixed[a] as number))) {
      const begin = known[block] as number;
      if (begin !== NONE && isPossible(block, begin)) put(block, begin);
    }
  }

  function tightenPlaced(): void {
    const order = byBegin(begins);
    for (let moved = true; moved; ) {
      moved = false;
      for (const block of order) {
        const at = begins[block] as number;
        if (at === NONE || fixed[block]) continue;
        remove(block);
        floors[block] = earliest[block] as number;
        const begin = firstFit(model, profiles, block, byLags(block), at);
        put(block, begin);
        if (begin < at) moved = true;
      }
    }
  }

  return {
    run(list, from) {
      reset(from);
      placeAll(list);
      // Only what was taken out and placed again can have been left later than it need be.
      if (ejections > 0 && !from) tightenPlaced();
      return begins;
    },
    complete(known, list) {
      reset(undefined);
      putPossible(known);
      placeAll(list);
      return begins;
    },
    finish(known) {
      reset(undefined);
      putPossible(known);
      for (let placed = true; placed; ) {
        placed = false;
        tightenPlaced();
        for (let block = 0; block < size && !placed; block++) {
          ejections = EJECTIONS_PER_BLOCK * size;
          placed = begins[block] === NONE && place(block) >= 0;
        }
      }
      return begins;
    },
  };
}

/** Blocks in order of begin, then number; those without one first. */
export function byBegin(begins: BlockBegins): Int32Array {
  return Int32Array.from(begins, (_, block) => block).sort(
    (a, b) => (begins[a] as number) - (begins[b] as number) || a - b,
  );
}
