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
  /** True: it is in use while hands are at it too, as a grill is; else while the food looks after itself. */
  readonly byHand?: true;
  readonly why: Why;
}

/**
 * From which minute of a step its equipment is in use, until the step ends: with the hands, or once they are free. Common
 * practice, no source: an oven is filled before it counts as taken.
 */
export function inUseFrom({ load, handsFor }: { load: GearLoad | undefined; handsFor: number }): number {
  return load?.byHand ? 0 : handsFor;
}

/** The load where so many hands are at it: each pair works at one piece of what is worked by hand. */
export function loadAt(load: GearLoad | undefined, hands: number): GearLoad | undefined {
  return load?.byHand ? { ...load, uses: Math.min(load.uses, Math.max(1, hands)) } : load;
}

/** What a load is calculated from, with the step. */
export interface LoadSetting {
  readonly equipment: ReadonlyMap<string, Equipment>;
  readonly containers: ReadonlyMap<string, Container>;
}

/** Food is cooked in what it is carried in, else in what it is served or chilled in. */
const COOKED_IN: readonly PackStage[] = ['carry', 'serve', 'chill'];

/**
 * The loads of a step at a station with equipment: containers ÷ (how many there are × what one holds), up to whole loads.
 * The containers are those of the dish that the equipment names, in the order of carrying, serving, chilling; food packed
 * in none of them is counted in the first container that the equipment holds and its amount can be turned into, at the
 * working fill. What holds batches is counted in batches. Undefined for a step in which the equipment is not in use, and
 * at a station without equipment that says what it holds.
 */
export function loadOf(
  step: RecipeStep,
  cooked: Pick<PlannedRecipe, 'recipe' | 'makes' | 'batches'>,
  packed: readonly PlannedContainer[],
  { equipment, containers }: LoadSetting,
): GearLoad | undefined {
  const gear = [...equipment.values()].find(
    (each) => each.station === step.station && holdsAny(each) && !each.chills && !each.keeps,
  );
  if (!gear) return undefined;
  // Where it is not stated, hands that are all a step takes are at the equipment.
  const byHand = step.handsOn > 0 && (gear.byHand ?? step.unattended === 0);
  if (step.unattended === 0 && !byHand) return undefined;
  const load = countedIn(gear, cooked, packed, containers);
  return byHand ? { ...load, byHand } : load;
}

/** Whether equipment states what it holds. */
export function holdsAny({ holds, batches }: Pick<Equipment, 'holds' | 'batches'>): boolean {
  return holds.length > 0 || batches !== undefined;
}

function countedIn(
  gear: Equipment,
  cooked: Pick<PlannedRecipe, 'recipe' | 'makes' | 'batches'>,
  packed: readonly PlannedContainer[],
  containers: LoadSetting['containers'],
): GearLoad {
  const inPacked = COOKED_IN.flatMap((stage) =>
    packed.filter((each) => each.stage === stage && holdsOf(gear, each.container) > 0),
  );
  const [first] = inPacked;
  if (first) {
    const same = inPacked.filter(
      ({ stage, container }) => stage === first.stage && container === first.container,
    );
    const count = same.reduce((sum, each) => sum + each.count, 0);
    return loadsFor(gear, holdsOf(gear, first.container), first.containerName, count, []);
  }
  if (gear.batches !== undefined) {
    const count = Number(cooked.batches.ceil().n);
    return loadsFor(gear, gear.batches, statement('why.load-batches', { n: count }), count, []);
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
    return loadsFor(gear, holdsOf(gear, id), container.name, count, [why]);
  }
  const why = statement('why.load-not-stated', { recipe: cooked.recipe.name, equipment: gear.name });
  return { equipment: gear, containers: null, loads: 1, uses: 1, each: 0, why: [why] };
}

function holdsOf(gear: Equipment, container: string): number {
  return gear.holds.find((each) => each.container === container)?.count ?? 0;
}

/** So many containers in a kind of equipment that holds `each` of them, up to whole loads. */
export function loadsFor(gear: Equipment, each: number, name: Said, count: number, why: Why): GearLoad {
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
