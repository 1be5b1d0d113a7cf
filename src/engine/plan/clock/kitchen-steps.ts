import type { Day } from '../../calendar/day.ts';
import { isAtPlace, type Recipe } from '../../food/recipe.ts';
import { firstStepOf } from '../../food/step-lines.ts';
import type { Kitchen } from '../../kitchen/kitchen.ts';
import { cookedDishes } from '../cooked-dishes.ts';
import type { DayBatch } from '../days/day-batches.ts';
import { loadAt, loadOf } from '../days/loads.ts';
import { chillAfter } from './chill-time.ts';
import { chillingOf } from './chilling.ts';
import type { ClockStep } from './clock-step.ts';
import { sharedHands } from './shared-hands.ts';

/** What of the kitchen its work depends on. */
export type ClockKitchen = Pick<
  Kitchen,
  | 'equipment'
  | 'vehicles'
  | 'containers'
  | 'crew'
  | 'day'
  | 'stations'
  | 'stationPlaces'
  | 'foodSafety'
  | 'hoursQuoted'
>;

/**
 * The steps that a date's batches take in the kitchen, each with its hands, its equipment and what has to be done
 * before. A step follows the one before it in its recipe; a part has to be done for the step that uses it, the first
 * where the recipe does not state which. `people` is how many cook that day; undefined where it is not stated.
 */
export function kitchenSteps(
  batches: readonly DayBatch[],
  date: Day,
  kitchen: ClockKitchen,
  people: number | undefined,
): ClockStep[] {
  const own = batches.map((batch, at) => ({ batch, at, steps: stepsOn(batch, date) }));
  const idOf = (at: number, number: number) => `${at}.${number}`;
  return own.flatMap(({ batch, at, steps }) => {
    const { recipe, events } = batch;
    const packed = events.flatMap(({ plan }) =>
      cookedDishes(plan)
        .filter(({ dish }) => dish.recipe.id === recipe.id)
        .flatMap(({ containers }) => containers),
    );
    const chill = chillAfter(recipe, kitchen.containers, kitchen.foodSafety);
    const into = own
      .filter((part) => part.steps.length > 0 && goesInto(part.batch, batch))
      .map((part) => ({ ...part, by: usedBy(recipe, part.batch.recipe.id) }));
    return steps.map(({ step, number, handsOn }, index): ClockStep => {
      const shared = sharedHands(step, handsOn, batch.batches, people, kitchen.stationPlaces);
      const load = loadAt(loadOf(step, batch, packed, kitchen), shared.hands);
      const parts = into.filter(({ by }) => by === number);
      const before = steps[index - 1];
      return {
        id: idOf(at, number),
        batch,
        step,
        number,
        where: 'kitchen',
        handsOn,
        ...shared,
        unattended: step.unattended * (load?.loads ?? 1),
        load,
        after: [
          ...(before ? [idOf(at, before.number)] : []),
          ...parts.map((part) => idOf(part.at, part.steps.at(-1)?.number ?? 0)),
        ],
        cools: chill?.index === number - 1 ? chillingOf(chill.cooling, batch, packed, kitchen) : undefined,
      };
    });
  });
}

function stepsOn({ recipe, events }: DayBatch, date: Day) {
  return recipe.steps.flatMap((step, index) => {
    const own = events.flatMap(({ plan: { days } }) =>
      days
        .filter((each) => each.date === date)
        .flatMap(({ tasks }) => tasks.filter((task) => task.recipe === recipe && task.number === index + 1)),
    );
    if (own.length === 0 || isAtPlace(step)) return [];
    return [{ step, number: index + 1, handsOn: own.reduce((sum, task) => sum + task.handsOnMinutes, 0) }];
  });
}

/** Whether a batch is a part of another, for an event that both are for. */
export function goesInto(part: DayBatch, into: DayBatch): boolean {
  return (
    into.recipe.lines.some(({ item }) => item.kind === 'recipe' && item.recipe === part.recipe) &&
    part.events.some(({ plan }) => into.events.some((other) => other.plan === plan))
  );
}

/** The step of a recipe by which a part has to be done, by its position from 1. */
export function usedBy({ lines }: Recipe, part: string): number {
  const takes = lines.filter(({ item }) => item.kind === 'recipe' && item.recipe.id === part);
  return Math.min(...takes.map((line) => firstStepOf(line) + 1));
}
