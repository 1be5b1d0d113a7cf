/** Whole numbers that look random and are the same on every machine. */
export interface Random {
  /** A whole number from 0 up to and without `limit`. */
  below(limit: number): number;
}

/** The numbers of a seed: the 32-bit mixer Mulberry32 (public domain), in whole numbers only. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return {
    below(limit) {
      state = (state + 0x6d2b79f5) >>> 0;
      let mixed = Math.imul(state ^ (state >>> 15), state | 1);
      mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
      return ((mixed ^ (mixed >>> 14)) >>> 0) % limit;
    },
  };
}
