/**
 * Chance that Student's t with whole degrees of freedom lies between −t and t, by its closed form (Abramowitz and
 * Stegun, 26.7.3 and 26.7.4).
 */
export function chanceWithin(t: number, freedom: number): number {
  const angle = Math.atan(t / Math.sqrt(freedom));
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  let term = freedom % 2 === 1 ? cosine : 1;
  let sum = term;
  for (let step = freedom % 2 === 1 ? 3 : 2; step <= freedom - 2; step += 2) {
    term *= ((step - 1) / step) * cosine * cosine;
    sum += term;
  }
  if (freedom % 2 === 0) return sine * sum;
  return (2 / Math.PI) * (freedom === 1 ? angle : angle + sine * sum);
}

/** The t that is not exceeded either way with a chance: for 0.9 and 4 degrees of freedom 2.132. */
export function studentWithin(chance: number, freedom: number): number {
  let [low, high] = [0, 1];
  while (chanceWithin(high, freedom) < chance) high *= 2;
  for (let step = 0; step < 80; step += 1) {
    const middle = (low + high) / 2;
    if (chanceWithin(middle, freedom) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
