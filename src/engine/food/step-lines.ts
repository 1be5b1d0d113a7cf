import type { Recipe, RecipeLine } from './recipe.ts';

/** Position from 0 of the step by which a line’s food has to be there: the first that takes it. */
export function firstStepOf({ steps }: Pick<RecipeLine, 'steps'>): number {
  return steps?.[0] ?? 0;
}

/** The lines that a step takes, by its position from 0, in their order. Half of a line may go into one step and half into another. */
export function linesOfStep({ lines }: Pick<Recipe, 'lines'>, position: number): RecipeLine[] {
  return lines.filter(({ steps = [0] }) => steps.includes(position));
}
