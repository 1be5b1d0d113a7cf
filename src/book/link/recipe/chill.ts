import type { Recipe } from '../../../engine/food/recipe.ts';
import { durationText } from '../../../engine/measure/duration.ts';
import type { RecipeText } from '../../../schema/recipe.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkWait } from './step.ts';

/** How long a recipe takes to cool; its first stage ends before all of it does. */
export function linkChill(
  reading: Reading,
  text: NonNullable<RecipeText['chill']>,
): Pick<Recipe, 'chill' | 'chillFirst'> {
  const chill = linkWait(reading, ['chill', 'in all'], text['in all']);
  const first = linkWait(reading, ['chill', 'first stage'], text['first stage']);
  if (chill === undefined) return {};
  if (first === undefined) return { chill };
  if (first < chill) return { chill, chillFirst: first };
  reading.say(
    'not-understood',
    ['chill', 'first stage'],
    `the first stage of cooling takes ${durationText(first)}, but all of it takes ${durationText(chill)}`,
    'write under “in all” the time from the end of cooking to cold, the first stage included',
  );
  return { chill };
}
