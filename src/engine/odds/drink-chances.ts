import { type Chances, sumOf, timesOver } from './chances.ts';

/**
 * The chances of how many drinks of one kind a guest takes who takes so many in all, each of them of this kind with the
 * chance given, whatever the others are. Part of a drink is one that is taken with the chance of that part.
 */
export function drinkChances(drinks: number, share: number): Chances {
  const whole = Math.floor(drinks);
  const rest = (drinks - whole) * share;
  return sumOf(timesOver(Float64Array.of(1 - share, share), whole), Float64Array.of(1 - rest, rest));
}
