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
  if (a.under === 1n && b.under === 1n) return { over: a.over + b.over, under: 1n };
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

/** The exact fraction that a plain decimal text such as `5.5` means. Throws on any other text. */
export function decimalRatio(text: string): Ratio {
  const match = /^(\d{1,6})(?:\.(\d{1,4}))?$/.exec(text);
  if (!match?.[1]) throw new RangeError(`"${text}" is not a plain number such as 5.5`);
  const decimals = match[2] ?? '';
  return ratio(BigInt(match[1] + decimals), 10n ** BigInt(decimals.length));
}

/** A fraction times a whole number. */
export function timesWhole(r: Ratio, whole: bigint): Ratio {
  return ratio(r.over * whole, r.under);
}
