import { isAtPlace } from '../../food/recipe.ts';
import { cookedDishes } from '../cooked-dishes.ts';
import type { DayBatch } from '../days/day-batches.ts';
import { type GearLoad, loadAt, loadOf } from '../days/loads.ts';
import type { EventPlan } from '../event-plan.ts';
import type { ClockStep } from './clock-step.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { type PlaceEquipment, placeEquipment } from './place-equipment.ts';
import { sharedHands } from './shared-hands.ts';

/** What is done at an event's place, and what it runs on. */
export interface PlaceWork {
  readonly steps: readonly ClockStep[];
  readonly equipment: readonly PlaceEquipment[];
  /** For whom each step is done: the course that its dish is served with; undefined for a part of other dishes. */
  readonly courseOf: ReadonlyMap<string, string>;
}

/**
 * The steps of an event that are done at its place. Each dish is finished for its own guests alone, nothing is shared
 * with another event. A step in waves is as many as it has loads, each with its share of the hands; the first is there
 * for the first guests. `cooks` is how many cook there; undefined where it is not known.
 */
export function placeSteps(
  plan: EventPlan,
  batches: readonly DayBatch[],
  kitchen: ClockKitchen,
  cooks: number | undefined,
): PlaceWork {
  const equipment = placeEquipment(kitchen.equipment, plan.input.venueKit);
  const setting = {
    equipment: new Map(equipment.map((each) => [each.equipment.id, each.equipment])),
    containers: kitchen.containers,
  };
  const courseOf = new Map<string, string>();
  const steps = plan.days.flatMap(({ tasks }) =>
    tasks
      .filter(({ step }) => isAtPlace(step))
      .flatMap((task): ClockStep[] => {
        const { recipe, step, number, handsOnMinutes: handsOn } = task;
        const cooked = plan.recipes.find((each) => each.recipe === recipe);
        const dish = plan.dishes.find((each) => each.dish.recipe === recipe);
        const packed = cookedDishes(plan)
          .filter((each) => each.dish.recipe === recipe)
          .flatMap(({ containers }) => containers);
        const shared = sharedHands(step, handsOn, task.batches, cooks, 'any');
        const load = loadAt(cooked && loadOf(step, cooked, packed, setting), shared.hands);
        const batch = batches.find(
          (each) =>
            each.recipe === recipe && each.events.some((event) => event.plan.input.id === plan.input.id),
        );
        if (!batch) return [];
        const before = tasks
          .filter((other) => isAtPlace(other.step) && other.number < number && other.recipe === recipe)
          .at(-1);
        const id = `${recipe.id}.${number}`;
        if (dish) courseOf.set(id, dish.dish.course);
        const one: ClockStep = {
          id,
          batch,
          step,
          number,
          where: { event: plan.input.id },
          handsOn,
          ...shared,
          unattended: step.unattended * (load?.loads ?? 1),
          load,
          after: before ? [`${recipe.id}.${before.number}`] : [],
          cools: undefined,
        };
        return step.waves ? wavesOf(one, load, courseOf) : [one];
      }),
  );
  return { steps, equipment, courseOf };
}

/** A step as the loads it takes, one after the other; without loads that can be counted it is served in two. */
function wavesOf(step: ClockStep, load: GearLoad | undefined, courseOf: Map<string, string>): ClockStep[] {
  const waves = Math.max(2, load?.loads ?? 2);
  const course = courseOf.get(step.id);
  return Array.from({ length: waves }, (_, index): ClockStep => {
    const id = index === 0 ? step.id : `${step.id}~${index + 1}`;
    if (course !== undefined) courseOf.set(id, course);
    return {
      ...step,
      id,
      handsOn: share(step.handsOn, waves, index),
      handsFor: share(step.handsFor, waves, index),
      unattended: step.step.unattended,
      load: load && { ...load, loads: 1 },
      after: index === 0 ? step.after : [index === 1 ? step.id : `${step.id}~${index}`],
      wave: { number: index + 1, of: waves },
    };
  });
}

/** Whole minutes of a wave, the first ones a minute longer where they cannot be alike. */
function share(minutes: number, waves: number, index: number): number {
  return Math.floor(minutes / waves) + (index < minutes % waves ? 1 : 0);
}
