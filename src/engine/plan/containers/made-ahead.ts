import { isAtPlace, type Recipe, type RecipeLine } from '../../food/recipe.ts';
import type { Container } from '../../kitchen/container.ts';
import type { Quantity } from '../../measure/quantity.ts';
import type { EventPlan, PlannedContainer } from '../event-plan.ts';
import { containersFor } from './containers.ts';

/** A part of other recipes that waits in the kitchen from one day to another, all of its batches. */
export interface MadeAhead {
  readonly recipe: Recipe;
  /** What its batches make. */
  readonly makes: Quantity;
  /** Each line that takes it, with the recipe of the line. */
  readonly takenBy: readonly Taker[];
  /** What it waits in: what it is chilled in, else carried in; undefined where its recipe names neither. */
  readonly packed: PlannedContainer | undefined;
}

export interface Taker {
  readonly line: RecipeLine;
  readonly recipe: Recipe;
}

/**
 * The parts of an event's recipes that are begun on a day before the last step in the kitchen that takes them, in the order
 * they are planned. Of what also leaves under its own name, as a dish or for a step at the place, the whole batch waits
 * here first; what only leaves is none of them.
 */
export function madeAhead(plan: EventPlan, containers: ReadonlyMap<string, Container>): MadeAhead[] {
  return plan.recipes.flatMap(({ recipe, makes }): MadeAhead[] => {
    const takenBy = takersOf(plan, recipe);
    const begun = Math.max(0, ...recipe.steps.map(({ when }) => when.daysBefore));
    if (begun <= Math.min(begun, ...takenBy.flatMap(daysTaken))) return [];
    const packed = containersFor(recipe, makes, 1, containers).containers;
    return [
      {
        recipe,
        makes,
        takenBy,
        packed:
          packed.find(({ stage }) => stage === 'chill') ?? packed.find(({ stage }) => stage === 'carry'),
      },
    ];
  });
}

/** The lines that take a recipe as a part, of all that is made for an event; none for what is only served. */
export function takersOf({ recipes }: Pick<EventPlan, 'recipes'>, { id }: Recipe): Taker[] {
  return recipes.flatMap(({ recipe }) =>
    recipe.lines
      .filter(({ item }) => item.kind === 'recipe' && item.recipe.id === id)
      .map((line) => ({ line, recipe })),
  );
}

/** How many days before its event each step in the kitchen takes a line; none for what goes along beside its dish. */
function daysTaken({ line: { item, steps = [0] }, recipe }: Taker): number[] {
  if (item.kind === 'recipe' && recipe.beside?.includes(item.recipe.id)) return [];
  return steps.flatMap((position) => {
    const step = recipe.steps[position];
    return step && !isAtPlace(step) ? [step.when.daysBefore] : [];
  });
}
