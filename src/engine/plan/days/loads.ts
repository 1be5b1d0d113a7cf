import { convertFinishedFood } from '../../food/finished-food.ts';
import type { PackStage, RecipeStep } from '../../food/recipe.ts';
import type { Container } from '../../kitchen/container.ts';
import type { Equipment } from '../../kitchen/kitchen.ts';
import { type Said, statement } from '../../text/statement.ts';
import { containersNeeded } from '../containers/containers.ts';
import type { PlannedContainer, PlannedRecipe, Why } from '../event-plan.ts';
import { plainAmount } from '../figure-text.ts';

/** How a step's food goes through an oven, grill or rack of the kitchen. */
export interface GearLoad {
  readonly equipment: Equipment;
  /** Containers that go in; null where the food cannot be counted in what the equipment holds. */
  readonly containers: { readonly name: Said; readonly count: number } | null;
  /** One after the other, each as long as the step is unattended; 1 where it cannot be counted. */
  readonly loads: number;
  /** How many of the equipment are in use at a time. */
  readonly uses: number;
  /** How many of its containers one piece holds; 0 where they cannot be counted. */
  readonly each: number;
  readonly why: Why;
}

/** What a load is reckoned from besides the step. */
export interface LoadSetting {
  readonly equipment: ReadonlyMap<string, Equipment>;
  readonly containers: ReadonlyMap<string, Container>;
}

/** Food is cooked in what it is carried in, else in what it is served or chilled in. */
const COOKED_IN: readonly PackStage[] = ['carry', 'serve', 'chill'];

/**
 * The loads of a step that looks after itself at a station with equipment: containers ÷ (how many there are × what one
 * holds), up to whole loads. The containers are those of the dish that the equipment names, in the order of
 * carrying, serving, chilling; food packed in none of them is counted in the first container that the equipment
 * holds and its amount can be turned into, at the working fill. Undefined for a step without unattended time
 * or at a station without equipment that says what it holds.
 */
export function loadOf(
  step: RecipeStep,
  cooked: Pick<PlannedRecipe, 'recipe' | 'makes'>,
  packed: readonly PlannedContainer[],
  { equipment, containers }: LoadSetting,
): GearLoad | undefined {
  if (step.unattended === 0) return undefined;
  const gear = [...equipment.values()].find((each) => each.station === step.station && each.holds.length > 0);
  if (!gear) return undefined;
  const inPacked = COOKED_IN.flatMap((stage) =>
    packed.filter((each) => each.stage === stage && holdsOf(gear, each.container) > 0),
  );
  const [first] = inPacked;
  if (first) {
    const same = inPacked.filter(
      ({ stage, container }) => stage === first.stage && container === first.container,
    );
    const count = same.reduce((sum, each) => sum + each.count, 0);
    return loadsFor(gear, first.container, first.containerName, count, []);
  }
  for (const { container: id } of gear.holds) {
    const container = containers.get(id);
    const filled = container && {
      amount: container.holds.amount.mul(container.fill),
      unit: container.holds.unit,
    };
    const amount = filled && convertFinishedFood(cooked.recipe, cooked.makes, filled.unit);
    if (!container || !filled || !amount || filled.amount.n === 0n) continue;
    const count = Number(containersNeeded(amount.amount.div(filled.amount), container, cooked.recipe).n);
    const why = statement('why.load-containers', {
      amount: plainAmount(amount),
      filled: plainAmount(filled),
      container: container.name,
      count: String(count),
    });
    return loadsFor(gear, id, container.name, count, [why]);
  }
  const why = statement('why.load-not-stated', { recipe: cooked.recipe.name, equipment: gear.name });
  return { equipment: gear, containers: null, loads: 1, uses: 1, each: 0, why: [why] };
}

function holdsOf(gear: Equipment, container: string): number {
  return gear.holds.find((each) => each.container === container)?.count ?? 0;
}

function loadsFor(gear: Equipment, id: string, name: Said, count: number, why: Why): GearLoad {
  const each = holdsOf(gear, id);
  const atOnce = gear.count * each;
  const loads = Math.max(1, Math.ceil(count / atOnce));
  return {
    equipment: gear,
    containers: { name, count },
    loads,
    each,
    uses: Math.min(gear.count, Math.max(1, Math.ceil(count / each))),
    why: [
      ...why,
      statement('why.loads', {
        count: String(count),
        pieces: String(gear.count),
        each: String(each),
        n: loads,
      }),
    ],
  };
}
