import { LeastFirst } from './label-queue.ts';

/** One kind of pack in whole numbers: how much it holds (above 0) and what it costs (0 or more). */
export interface CoverPack {
  readonly size: bigint;
  readonly cost: bigint;
}

/** So many of each pack, in the order given. */
export interface Cover {
  readonly counts: readonly number[];
  /** 0 when proven cheapest; else the cost by which a better cover may at most undercut this one, rounded up. */
  readonly gap: bigint;
}

/** What a search for a cover with a limit came to. */
export interface CoverSearch {
  readonly cover: Cover | undefined;
  /** False where the search stopped early: then a missing cover may exist. */
  readonly complete: boolean;
}

/** Partial covers looked at before the search stops and states its gap. */
const MOST_LABELS = 40_000;

/** A partial cover without the pack of the best rate, which completes it. */
interface Label {
  readonly counts: readonly number[];
  readonly packs: bigint;
  readonly size: bigint;
  /** What it costs above the best rate, times the best pack's size to stay whole. */
  readonly excess: bigint;
}

interface Complete {
  readonly counts: readonly number[];
  /** Cost above the best rate for the bare need, in the scale of `excess`. */
  readonly gap: bigint;
  readonly packs: bigint;
  readonly over: bigint;
}

/**
 * The whole packs that hold at least `need` at the least cost; of equal costs the fewest packs, then the least
 * left over, then more of the packs named first. Exact, in whole numbers.
 *
 * Every cover is packs of the best rate (cost by size) plus others. The others are grown in the order of what
 * they cost above that rate, and each is completed with best packs. Two bounds end the search. First, no more
 * may be paid above the best rate than the cheapest cover found so far does, and that is less than one best
 * pack at the outset. Second, of two sets of others that differ in size by a multiple of the best pack, the
 * one that is smaller and no dearer stands for both, since best packs make up the difference at the best rate:
 * so there are no more sets than remainders of the best pack's size, however large the need. Where sizes have
 * no common measure and rates nearly tie, even that may be too many; the search then stops at a fixed number
 * and states the gap that is left.
 */
export function cheapestCover(need: bigint, packs: readonly CoverPack[]): Cover {
  const { cover } = coverWithin(need, packs, undefined);
  if (!cover) throw new Error('a cover without a limit always exists');
  return cover;
}

/**
 * The same with at most `mostOver` left over. There may be none: then `cover` is undefined. A cover that is
 * smaller and no dearer also leaves no more, so that the bounds above hold with the limit too.
 */
export function coverWithin(
  need: bigint,
  packs: readonly CoverPack[],
  mostOver: bigint | undefined,
): CoverSearch {
  if (packs.length === 0) throw new RangeError('there is no pack to cover a need with');
  if (need <= 0n) return { cover: { counts: packs.map(() => 0), gap: 0n }, complete: true };
  const best = bestRate(packs);
  const { size, cost } = packs[best] as CoverPack;
  const excesses = packs.map((pack) => pack.cost * size - cost * pack.size);
  const complete = (label: Label): Complete | undefined => {
    const missing = need > label.size ? (need - label.size + size - 1n) / size : 0n;
    const over = label.size + missing * size - need;
    if (mostOver !== undefined && over > mostOver) return undefined;
    const counts = label.counts.with(best, Number(missing));
    return { counts, gap: label.excess + cost * over, packs: label.packs + missing, over };
  };

  const start: Label = { counts: packs.map(() => 0), packs: 0n, size: 0n, excess: 0n };
  let found = complete(start);
  const smallest = new Map<bigint, bigint>();
  const queue = new LeastFirst<Label>((a, b) => compareLabels(a, b, best, size));
  queue.push(start);
  let looked = 0;
  for (let label = queue.pop(); label && (!found || label.excess <= found.gap); label = queue.pop()) {
    const remainder = label.size % size;
    const known = smallest.get(remainder);
    if (known !== undefined && known <= label.size) continue;
    smallest.set(remainder, label.size);
    if (looked === MOST_LABELS) {
      const cover = found && { counts: found.counts, gap: (found.gap - label.excess) / size + 1n };
      return { cover, complete: false };
    }
    looked += 1;
    const completed = complete(label);
    if (completed && (!found || compareComplete(completed, found) < 0)) found = completed;
    if (label.size >= need) continue;
    for (const [index, pack] of packs.entries()) {
      const excess = label.excess + (excesses[index] as bigint);
      if (index === best || (found && excess > found.gap)) continue;
      const counts = label.counts.with(index, (label.counts[index] as number) + 1);
      queue.push({ counts, packs: label.packs + 1n, size: label.size + pack.size, excess });
    }
  }
  return { cover: found && { counts: found.counts, gap: 0n }, complete: true };
}

/** The pack that costs least by size; of equal rates the largest, then the first. */
function bestRate(packs: readonly CoverPack[]): number {
  let best = 0;
  for (const [index, pack] of packs.entries()) {
    const { size, cost } = packs[best] as CoverPack;
    const order = pack.cost * size - cost * pack.size;
    if (order < 0n || (order === 0n && pack.size > size)) best = index;
  }
  return best;
}

/*
 * By excess, then by packs. Packs are compared as if best ones had been taken away to bring both to the same
 * size, which is what they differ by once completed.
 */
function compareLabels(a: Label, b: Label, best: number, size: bigint): number {
  const order = a.excess - b.excess || a.packs * size - a.size - (b.packs * size - b.size);
  if (order !== 0n) return order < 0n ? -1 : 1;
  return compareCounts(
    a.counts.with(best, -Number(a.size / size)),
    b.counts.with(best, -Number(b.size / size)),
  );
}

function compareComplete(a: Complete, b: Complete): number {
  const order = a.gap - b.gap || a.packs - b.packs || a.over - b.over;
  return order === 0n ? compareCounts(a.counts, b.counts) : order < 0n ? -1 : 1;
}

/** Order of two covers of the same packs that tie in everything else: more of the packs named first comes first. */
export function compareCounts(a: readonly number[], b: readonly number[]): number {
  for (const [index, count] of a.entries()) {
    const other = b[index] as number;
    if (count !== other) return other - count;
  }
  return 0;
}
