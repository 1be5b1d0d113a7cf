import { type CardDish, cardWords } from '../../engine/food/card-word.ts';
import { SHAPES } from '../form/shapes.ts';
import type { PlanMark } from '../form/tables.ts';

/**
 * A word and a shape for each dish of a course, no word twice. More dishes than shapes begin them again, distinguished by
 * their words.
 */
export function dishMarks(dishes: readonly CardDish[]): PlanMark[] {
  return cardWords(dishes).map((letters, index) => ({
    letters,
    shape: SHAPES[index % SHAPES.length] ?? 'circle',
  }));
}
