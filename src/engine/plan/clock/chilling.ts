import { convertFinishedFood } from '../../food/finished-food.ts';
import type { Recipe } from '../../food/recipe.ts';
import type { Equipment, Kitchen } from '../../kitchen/kitchen.ts';
import { endsOfCooling } from '../../safety/cooling.ts';
import { containersNeeded } from '../containers/containers.ts';
import { type GearLoad, loadsFor } from '../days/loads.ts';
import type { PlannedContainer, PlannedRecipe } from '../event-plan.ts';
import { type Cooling, coolingOf } from './chill-time.ts';
import type { ClockStep } from './clock-step.ts';

/**
 * How food gets cold in a kitchen with equipment that chills: in that, load after load, where it holds what the food is
 * chilled in, is quicker than the usual way, and brings the last load through both stages in the code's time (FDA Food
 * Code 3-501.14(A)); else the usual way. What it is too slow for is told in `tooSlow`.
 */
export function chillingOf(
  usual: Cooling | undefined,
  cooked: Pick<PlannedRecipe, 'recipe' | 'makes'>,
  packed: readonly PlannedContainer[],
  kitchen: Pick<Kitchen, 'equipment' | 'containers' | 'foodSafety'>,
): Cooling | undefined {
  let tooSlow: GearLoad | undefined;
  for (const gear of kitchen.equipment.values()) {
    const load = gear.chills === undefined ? undefined : chillLoad(gear, cooked, packed, kitchen);
    if (!load || gear.chills === undefined) continue;
    const before = (load.loads - 1) * gear.chills;
    const { minutes, first } = coolingOf(gear.chills, kitchen.foodSafety);
    const chilled: Cooling = {
      minutes: before + minutes,
      first: first && { ...first, minutes: before + first.minutes },
      chiller: load,
      ...(usual && { usual }),
    };
    if (usual && usual.minutes <= chilled.minutes) continue;
    const ends = endsOfCooling(kitchen.foodSafety);
    const late = ends.first && chilled.first && chilled.first.minutes > ends.first.within;
    if (!late && chilled.minutes <= ends.last.within) return chilled;
    tooSlow ??= load;
  }
  return usual && tooSlow ? { ...usual, tooSlow } : usual;
}

/** The containers that food is chilled in, in loads; undefined where the equipment holds none of them. */
function chillLoad(
  gear: Equipment,
  { recipe, makes }: Pick<PlannedRecipe, 'recipe' | 'makes'>,
  packed: readonly PlannedContainer[],
  { containers }: Pick<Kitchen, 'containers'>,
): GearLoad | undefined {
  const rule = recipe.pack.chill;
  const each = gear.holds.find(({ container }) => container === rule?.container)?.count;
  const container = rule && containers.get(rule.container);
  if (!rule || !container || each === undefined) return undefined;
  const planned = packed.filter((one) => one.stage === 'chill' && one.container === rule.container);
  const counted = planned.reduce((sum, { count }) => sum + count, 0);
  if (counted > 0) return loadsFor(gear, each, container.name, counted, []);
  const { holds, fill } = container;
  const filled = rule.each ?? { amount: holds.amount.mul(fill), unit: holds.unit };
  const amount = convertFinishedFood(recipe, makes, filled.unit);
  if (!amount || filled.amount.n === 0n) return undefined;
  const count = Number(containersNeeded(amount.amount.div(filled.amount), container, recipe).n);
  return loadsFor(gear, each, container.name, count, []);
}

/**
 * A day solved with as much of its food in equipment that chills as fits: of what does not, the least time is lost first.
 * With none in it all is as in a kitchen without, so such equipment never makes unfit what fits; undefined where that
 * does not fit either.
 */
export function mostChilled<T>(
  steps: readonly ClockStep[],
  solving: (steps: readonly ClockStep[]) => T,
  fits: (solved: T) => boolean,
): T | undefined {
  const gain = ({ cools }: ClockStep) => (cools?.usual ? cools.usual.minutes - cools.minutes : 0);
  const order = steps.filter(({ cools }) => cools?.chiller && cools.usual).sort((a, b) => gain(a) - gain(b));
  for (let out = 0; out <= order.length; out++) {
    const solved = solving(out === 0 ? steps : chilledUsually(steps, order.slice(0, out)));
    if (fits(solved)) return solved;
  }
  return undefined;
}

/** Food that equipment which chills would hold and has no room for in time. */
export interface Unchilled {
  readonly equipment: Equipment;
  readonly recipe: Recipe;
}

/** What of steps as they could cool does so as in a kitchen without equipment that chills, as `planned` has them. */
export function unchilledOf(steps: readonly ClockStep[], planned: readonly ClockStep[]): Unchilled[] {
  return steps.flatMap(({ id, cools, batch: { recipe } }): Unchilled[] => {
    const gear = cools?.chiller ?? cools?.tooSlow;
    const isIn = planned.some((step) => step.id === id && step.cools?.chiller !== undefined);
    return gear && !isIn ? [{ equipment: gear.equipment, recipe }] : [];
  });
}

/** Steps of which some, or all where none are named, cool as without equipment that chills. */
export function chilledUsually(
  steps: readonly ClockStep[],
  some: readonly ClockStep[] = steps,
): readonly ClockStep[] {
  const ids = new Set(some.map(({ id }) => id));
  return steps.map((step) =>
    ids.has(step.id) && step.cools?.usual ? { ...step, cools: step.cools.usual } : step,
  );
}
