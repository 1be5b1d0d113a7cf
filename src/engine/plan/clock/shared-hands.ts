import type Fraction from 'fraction.js';
import type { RecipeStep } from '../../food/recipe.ts';
import type { Kitchen } from '../../kitchen/kitchen.ts';

/**
 * How many work at a step side by side, and for how long hands are at it, in whole minutes rounded up. Time that counts
 * for a batch is shared by as many as the station has places, the crew has people and there are batches; time that
 * counts once is one person's.
 */
export function sharedHands(
  { station, handsOnPerBatch }: Pick<RecipeStep, 'station' | 'handsOnPerBatch'>,
  handsOn: number,
  batches: Fraction,
  people: number | undefined,
  places: Kitchen['stationPlaces'] | 'any',
): { readonly hands: number; readonly handsFor: number } {
  if (handsOn === 0) return { hands: 0, handsFor: 0 };
  const most = handsOnPerBatch ? Number(batches.ceil().n) : 1;
  const hands = Math.max(
    1,
    Math.min(
      most,
      places === 'any' ? most : (places?.get(station) ?? 1),
      people ?? (places === 'any' ? 1 : most),
    ),
  );
  return { hands, handsFor: Math.ceil(handsOn / hands) };
}
