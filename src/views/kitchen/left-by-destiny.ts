import Fraction from 'fraction.js';
import { DESTINIES } from '../../engine/learning/destiny.ts';
import type { DishAtEvent } from '../../offers/learned/dishes-so-far.ts';
import type { Say } from '../../words/words-in.ts';

/** The food cost of what came back of a dish; undefined where a price is missing. */
export function costLeft({ dish, amounts }: DishAtEvent): Fraction | undefined {
  if (dish.cost === null) return undefined;
  if (amounts.carried.amount.n === 0n) return new Fraction(0n);
  return new Fraction(dish.cost).mul(amounts.back.amount).div(amounts.carried.amount);
}

/** What was thrown away, given away and brought home, by food cost, each where it is recorded of some dish. */
export function leftByDestiny(
  events: readonly DishAtEvent[],
  shown: (sum: Fraction) => string,
  say: Say,
): { readonly label: string; readonly amount: string; readonly why: string }[] {
  return DESTINIES.flatMap((destiny) => {
    const some = events.filter(({ dish }) => dish.destiny === destiny);
    if (some.length === 0) return [];
    const sum = some.reduce((all, at) => all.add(costLeft(at) ?? 0n), new Fraction(0n));
    return [
      {
        label: say('leftovers.by-destiny', { destiny: destiny.split(' ')[0] ?? '' }),
        amount: shown(sum),
        why: say('leftovers.by-destiny.why', { n: some.length }),
      },
    ];
  });
}
