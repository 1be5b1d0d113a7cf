import { convertFinishedFood } from '../../food/finished-food.ts';
import { type Hold, isAtPlace, type Recipe, type RecipeLine } from '../../food/recipe.ts';
import { firstStepOf } from '../../food/step-lines.ts';
import { isTapWater } from '../../food/tap-water.ts';
import type { Container } from '../../kitchen/container.ts';
import { addQuantities, type Quantity } from '../../measure/quantity.ts';
import { type LeavesRaw, lineLeavesRaw } from '../../safety/leaves-raw.ts';
import type { SafetyRules } from '../../safety/limit.ts';
import { travelsAs } from '../../safety/travels-as.ts';
import { containersFor } from '../containers/containers.ts';
import { isSealed } from '../containers/separate-containers.ts';
import type { EventPlan, PlannedContainer } from '../event-plan.ts';

/** How far a component is made when it leaves the kitchen. */
export type ComponentState = 'bought' | 'half-made' | 'made';

/** Food that a step at the place takes: it goes there in containers of its own and not in those of its dish. */
export interface Component {
  readonly line: RecipeLine;
  /** What it is for. */
  readonly recipe: Recipe;
  readonly state: ComponentState;
  /** What the batches take of it, exact, in the recipe line’s measure. */
  readonly amount: Quantity;
  /** True where a step in the kitchen takes some of it first: what that leaves goes, which no file states. */
  readonly rest: boolean;
  readonly hold: Hold;
  /** Where it is raw and has to be cooked there; undefined where it is ready or made as its own recipe says. */
  readonly raw: LeavesRaw | undefined;
  /** The containers that its own recipe names for the road; undefined for none: then one is found for it. */
  readonly packed: PlannedContainer | undefined;
}

/**
 * The components of an event, recipe by recipe in the order they are planned: every line that a step at the place takes,
 * but what is given out beside its dish, which has containers already, and tap water where the place is known to have it.
 * What is made separately for a diet takes the same food from the container of its dish; a sealed portion, which is
 * for an allergy, has all of its own.
 */
export function componentsOf(plan: EventPlan, containers: ReadonlyMap<string, Container>): Component[] {
  const fromTap = plan.input.venueKit?.water === true;
  const taken = plan.recipes.flatMap((planned) =>
    planned.lines.flatMap(({ line, amount }): Taken[] => {
      const { recipe } = planned;
      const { item } = line;
      if (!(line.steps ?? [0]).some((position) => isThere(recipe, position))) return [];
      if (item.kind === 'recipe' && recipe.beside?.includes(item.recipe.id)) return [];
      if (item.kind === 'ingredient' && fromTap && isTapWater(item.ingredient)) return [];
      return [{ recipe, line, amount, dish: sharesWith(plan, recipe) }];
    }),
  );
  const kinds = Map.groupBy(taken, ({ recipe, line, amount, dish }) => {
    const { item } = line;
    const id = item.kind === 'recipe' ? item.recipe.id : item.ingredient.id;
    return [dish, id, amount.unit, isStarted(line, recipe)].join(' ');
  });
  return [...kinds.values()].map((same) => {
    const own = same.find(({ recipe, dish }) => recipe.id === dish) ?? (same[0] as Taken);
    const amount = same
      .slice(1)
      .reduce((sum, each) => addQuantities(sum, each.amount), (same[0] as Taken).amount);
    return componentOf(own.recipe, own.line, amount, containers, plan.foodSafety);
  });
}

/** A line that a recipe takes at the place, and the id of the recipe with which it shares a container. */
interface Taken {
  readonly recipe: Recipe;
  readonly line: RecipeLine;
  readonly amount: Quantity;
  readonly dish: string;
}

function sharesWith({ dishes }: EventPlan, { id }: Recipe): string {
  const portions = dishes.find(({ dish }) => dish.recipe.id === id)?.dish.portions;
  return portions?.apart && !isSealed(portions) ? portions.apart.recipe : id;
}

function isThere({ steps }: Recipe, position: number): boolean {
  const step = steps[position];
  return step !== undefined && isAtPlace(step);
}

/** Whether a step in the kitchen takes a line before one at the place does. */
function isStarted(line: RecipeLine, recipe: Recipe): boolean {
  return !isThere(recipe, firstStepOf(line));
}

function componentOf(
  recipe: Recipe,
  line: RecipeLine,
  amount: Quantity,
  containers: ReadonlyMap<string, Container>,
  rules: SafetyRules,
): Component {
  const started = isStarted(line, recipe);
  const { item } = line;
  if (item.kind === 'recipe') {
    const made = convertFinishedFood(item.recipe, amount, item.recipe.makes[0].unit);
    const packed = made ? containersFor(item.recipe, made, 1, containers).containers : [];
    return {
      line,
      recipe,
      state: 'made',
      amount,
      rest: started,
      hold: travelsAs(item.recipe),
      raw: undefined,
      packed: packed.find(({ stage }) => stage === 'carry') ?? packed.find(({ stage }) => stage === 'chill'),
    };
  }
  return {
    line,
    recipe,
    state: started ? 'half-made' : 'bought',
    amount,
    rest: started,
    hold: holdOf(item.ingredient.storage, started, recipe),
    raw: lineLeavesRaw(line, recipe, rules),
    packed: undefined,
  };
}

/** As it is stored; where nobody has stated that, cold. What the kitchen has started is kept like its dish, or colder. */
function holdOf(storage: 'dry' | 'chilled' | 'frozen' | undefined, started: boolean, recipe: Recipe): Hold {
  if (started) return storage === 'dry' || storage === undefined ? travelsAs(recipe) : 'cold';
  if (storage === 'frozen') return 'frozen';
  return storage === 'dry' ? 'room' : 'cold';
}
