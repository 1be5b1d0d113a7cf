/** Numbers that look random and are the same in every run: a 32-bit mixer (Mulberry32, public domain). */
export interface Seeded {
  /** A whole number from 0 up to and without `below`. */
  below(below: number): number;
  /** One of a list. */
  of<T>(list: readonly T[]): T;
  /** `count` different ones of a list, in its order. */
  some<T>(list: readonly T[], count: number): T[];
  /** A text of letters and digits as a proposal's link has it. */
  link(): string;
}

const LINK_SIGNS = 'abcdefghijklmnopqrstuvwxyz234567';

/** A row of numbers that its seed decides. */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  function below(limit: number): number {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * limit);
  }
  return {
    below,
    of: (list) => list[below(list.length)]!,
    some(list, count) {
      const left = list.map((_, index) => index);
      const taken = new Set<number>();
      while (taken.size < Math.min(count, list.length)) taken.add(left.splice(below(left.length), 1)[0]!);
      return list.filter((_, index) => taken.has(index));
    },
    link: () => Array.from({ length: 26 }, () => LINK_SIGNS[below(LINK_SIGNS.length)]).join(''),
  };
}
