import { isMadeThere } from '../../food/made-there.ts';
import type { Recipe } from '../../food/recipe.ts';
import { standsWithoutControl } from '../../safety/time-without-control.ts';
import type { EventPlan } from '../event-plan.ts';
import type { TimedStep } from './clock-step.ts';
import type { ServedOn } from './day-clock.ts';

/** When food that stands neither hot nor cold has to be thrown away. */
export interface ThrowAway {
  readonly recipe: Recipe;
  /** The dish that it is served as, or what it travels as beside one; undefined for a part of others. */
  readonly dish: string | undefined;
  /** Minutes from the midnight of the event's day at which it leaves control. */
  readonly left: number;
  /** As `left`, the time that the kitchen's food code allows later (FDA Food Code 3-501.19(B)). */
  readonly by: number;
}

/**
 * The food of an event that time alone keeps safe, each recipe once. It leaves control when the first of it comes off the
 * heat by the day's last step that states a temperature; where none does, when it is taken from the cold: for its first
 * step of the day, else for packing, or for its first step at the place where all of it is made there. What is not known
 * for sure counts as earlier. `steps` are those of the event's day in the kitchen, over all events.
 */
export function throwAways(
  plan: EventPlan,
  steps: readonly TimedStep[],
  { pack, place }: Pick<ServedOn, 'pack' | 'place'>,
): ThrowAway[] {
  const { within } = plan.foodSafety.limits['time without control'];
  const names = new Map(
    [...plan.beside, ...plan.crewMeals, ...plan.dishes].map(({ dish }) => [dish.recipe.id, dish.name]),
  );
  return plan.recipes
    .filter(({ recipe }) => standsWithoutControl(recipe))
    .map(({ recipe }): ThrowAway => {
      const there = isMadeThere(recipe) ? place.steps.filter(({ batch }) => batch.recipe === recipe) : [];
      const left = leftControl([...ownSteps(plan, recipe, steps), ...there]) ?? pack.begins;
      return { recipe, dish: names.get(recipe.id), left, by: left + within };
    });
}

function ownSteps(plan: EventPlan, recipe: Recipe, steps: readonly TimedStep[]): TimedStep[] {
  return steps.filter(
    ({ batch, where, clock }) =>
      clock &&
      where === 'kitchen' &&
      batch.recipe === recipe &&
      batch.events.some((event) => event.plan.input.id === plan.input.id),
  );
}

function leftControl(own: readonly TimedStep[]): number | undefined {
  if (own.length === 0) return undefined;
  const heated = own.filter(({ step }) => step.cookTo !== undefined);
  if (heated.length === 0) return Math.min(...own.map(({ begins }) => begins));
  // Of several loads the first is out long before the last.
  return Math.max(...heated.map(({ handsOff, step }) => handsOff + step.unattended));
}

/** By when a recipe's food has to be thrown away; undefined for what is held hot or cold or is safe without. */
export function thrownAway(foods: readonly ThrowAway[], { id }: Pick<Recipe, 'id'>): ThrowAway | undefined {
  return foods.find(({ recipe }) => recipe.id === id);
}
