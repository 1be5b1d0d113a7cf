/**
 * An exact non-negative fraction of whole numbers, always reduced. Guests that count as a third cannot be
 * a decimal, and the client's page should not carry a second number library for them.
 */
export interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

/** `over / under`, reduced. `under` must not be 0. */
export function ratio(over: bigint, under: bigint): Ratio {
  if (under === 0n) throw new RangeError(`the fraction ${over}/0 has no value`);
  let [a, b] = [over, under];
  while (b !== 0n) [a, b] = [b, a % b];
  return { over: over / a, under: under / a };
}

/** The exact sum of two fractions. */
export function addRatios(a: Ratio, b: Ratio): Ratio {
  return ratio(a.over * b.under + b.over * a.under, a.under * b.under);
}

/** The largest whole number that is not above the fraction. */
export function wholeBelow(r: Ratio): bigint {
  return r.over / r.under;
}

/** The smallest whole number that is not below the fraction. */
export function wholeAbove(r: Ratio): bigint {
  return (r.over + r.under - 1n) / r.under;
}

/** The fraction as people write it and as JSON keeps it: `100`, `1/2`, `47 1/2`. */
export function ratioText(r: Ratio): string {
  const rest = r.over % r.under;
  if (rest === 0n) return String(r.over / r.under);
  const part = `${rest}/${r.under}`;
  return r.over < r.under ? part : `${wholeBelow(r)} ${part}`;
}
