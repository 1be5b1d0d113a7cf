import { type Minutes, minutes } from '../measure/duration.ts';
import type { Hold } from './recipe.ts';

/**
 * How long a finished dish stands at all before it is served, where its recipe states no `stands`: hot 2 h 30 min, at
 * room temperature 4 h, cold and frozen as long as it keeps (undefined). Common practice, no source. What is crisp or
 * fried, fish and dressed leaves stand for much less, which no other fact of a recipe tells.
 */
export function usualStands(hold: Hold): Minutes | undefined {
  if (hold === 'hot') return minutes(150);
  return hold === 'room' ? minutes(240) : undefined;
}
