import Fraction from 'fraction.js';
import { addDays, type Day } from '../../calendar/day.ts';
import { isAtPlace, type PackStage, type Recipe } from '../../food/recipe.ts';
import type { Equipment } from '../../kitchen/kitchen.ts';
import type { Quantity } from '../../measure/quantity.ts';
import type { Said } from '../../text/statement.ts';
import { cookedDishes } from '../cooked-dishes.ts';
import type { PlannedContainer } from '../event-plan.ts';
import type { CookingPlan } from './day-batches.ts';
import { heldContainers, holdingRoom } from './holding-room.ts';

/** Id of the equipment in which a kitchen keeps finished food cold. */
export const COLD_ROOM = 'cold-room';

/** Food of an event that stands in the cold on a day. */
export interface ColdFood {
  readonly plan: CookingPlan;
  readonly recipe: Recipe;
  /** The day on which it is finished. */
  readonly from: Day;
  /** What it stands in; none for a part of other recipes, for which it is not stated. */
  readonly containers: readonly PlannedContainer[];
  readonly makes: Quantity;
}

/** Containers of one kind over all events. */
export interface ColdKind {
  readonly container: string;
  readonly name: Said;
  readonly count: number;
  /** The part of the cold room that they take up; undefined where it is not stated. */
  readonly share: Fraction | undefined;
}

export interface ColdLoad {
  readonly foods: readonly ColdFood[];
  readonly kinds: readonly ColdKind[];
  /** Share of the cold room that is taken up, more than 1 where it does not hold all; undefined without one. */
  readonly share: Fraction | undefined;
}

/** Food stands in what it was chilled in, else in what it is carried or served in. */
const STANDS_IN: readonly PackStage[] = ['chill', 'carry', 'serve'];

/**
 * What stands in the cold on a day, over all events: food that is finished before its event's day unless it is held
 * at room temperature or frozen, and what is held cold on the day itself, each from the day of its last step in the
 * kitchen until its event's. A part counts until what it goes into is finished. Kinds of container share the room:
 * half of it is full of one where half as many stand in it as it holds. What waits on its event's own day in equipment
 * that `keeps: cold` is counted there, by the minute (`clock/holding.ts`), and not here.
 */
export function coldLoad(
  plans: readonly CookingPlan[],
  date: Day,
  equipment: ReadonlyMap<string, Equipment>,
): ColdLoad {
  const room = equipment.get(COLD_ROOM);
  const keepers = holdingRoom(equipment, 'cold');
  const foods = plans.flatMap((plan) =>
    plan.recipes.flatMap(({ recipe, makes }): ColdFood[] => {
      const from = finishedOn(recipe, plan);
      const until = lastUse(recipe, plan);
      if (from > date || date > until || recipe.hold === 'room' || recipe.hold === 'frozen') return [];
      if (from === until && recipe.hold !== 'cold') return [];
      const packed = cookedDishes(plan)
        .filter(({ dish }) => dish.recipe.id === recipe.id)
        .flatMap(({ containers }) => containers);
      if (from === plan.input.date && heldContainers(packed, keepers).containers.length > 0) return [];
      return [{ plan, recipe, from, containers: inColdRoom(packed), makes }];
    }),
  );
  const containers = foods.flatMap((food) => food.containers);
  const kinds = [...Map.groupBy(containers, ({ container }) => container)].map(
    ([container, same]): ColdKind => {
      const count = same.reduce((sum, each) => sum + each.count, 0);
      const holds = room?.holds.find((each) => each.container === container);
      const share = room && holds ? new Fraction(BigInt(count), BigInt(room.count * holds.count)) : undefined;
      return { container, name: same[0]?.containerName ?? container, count, share };
    },
  );
  const share = room && kinds.reduce((sum, kind) => sum.add(kind.share ?? 0n), new Fraction(0n));
  return { foods, kinds, share };
}

function inColdRoom(containers: readonly PlannedContainer[]): PlannedContainer[] {
  const stage = STANDS_IN.find((each) => containers.some((container) => container.stage === each));
  return containers.filter((container) => container.stage === stage);
}

/** The day of a recipe's last step in the kitchen; its event's where it has none. */
function finishedOn(recipe: Recipe, { input }: CookingPlan): Day {
  const steps = recipe.steps.filter((step) => !isAtPlace(step));
  if (steps.length === 0) return input.date;
  return addDays(input.date, -Math.min(...steps.map(({ when }) => when.daysBefore)));
}

/** Until when it stands: a dish until its event, a part until the last that it goes into is finished. */
function lastUse(recipe: Recipe, plan: CookingPlan): Day {
  if (cookedDishes(plan).some(({ dish }) => dish.recipe.id === recipe.id)) return plan.input.date;
  const uses = plan.recipes.filter(({ recipe: user }) =>
    user.lines.some(({ item }) => item.kind === 'recipe' && item.recipe.id === recipe.id),
  );
  const days = uses.map((user) => finishedOn(user.recipe, plan)).sort();
  return days.at(-1) ?? plan.input.date;
}
