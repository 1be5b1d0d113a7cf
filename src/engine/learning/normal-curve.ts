/** Logarithm of the normal density at a deviation from the mean, in standard deviations. */
export function logDensity(deviation: number): number {
  return -(deviation * deviation) / 2 - Math.log(2 * Math.PI) / 2;
}

/**
 * Logarithm of the chance that a normal value lies above a deviation from its mean, in standard deviations. Far out,
 * where the chance itself is too small a number, it is taken from the expansion of the tail (Abramowitz and Stegun,
 * Handbook of Mathematical Functions, 26.2.12).
 */
export function logChanceAbove(deviation: number): number {
  if (deviation > 12) {
    const square = deviation * deviation;
    return logDensity(deviation) - Math.log(deviation) + Math.log1p(-1 / square + 3 / (square * square));
  }
  return Math.log(chanceAboveDeviation(deviation));
}

/**
 * Chance that a normal value lies above a deviation, by the continued fraction of the tail (26.2.14 of the same) from
 * 2 on and by the series of the middle (26.2.10) below; right to ten digits and more.
 */
export function chanceAboveDeviation(deviation: number): number {
  if (deviation < -2) return 1 - chanceAboveDeviation(-deviation);
  const density = Math.exp(logDensity(deviation));
  if (deviation > 2) {
    let fraction = 0;
    for (let step = 160; step >= 1; step -= 1) fraction = step / (deviation + fraction);
    return density / (deviation + fraction);
  }
  let term = deviation;
  let sum = deviation;
  for (let step = 1; step < 60; step += 1) {
    term *= (deviation * deviation) / (2 * step + 1);
    sum += term;
  }
  return 0.5 - density * sum;
}
