import Fraction from 'fraction.js';
import type { Day } from '../../calendar/day.ts';
import { roundBatches } from '../../food/batches.ts';
import { isAtPlace, type Recipe } from '../../food/recipe.ts';
import { usualStands } from '../../food/usual-stands.ts';
import { partsFirst } from '../../food/walk.ts';
import { USUAL_SET_UP } from '../../kitchen/day-times.ts';
import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import { type Quantity, timesQuantity } from '../../measure/quantity.ts';
import { type Said, several, statement } from '../../text/statement.ts';
import type { EventPlan, PlannedLine, PlannedRecipe } from '../event-plan.ts';
import { batchesSaid, comesTo, plainAmount } from '../figure-text.ts';

/** What of an event the batches of a day are calculated from. */
export type CookingPlan = Pick<
  EventPlan,
  'input' | 'dishes' | 'beside' | 'crewMeals' | 'recipes' | 'days' | 'measures'
>;

/** A recipe as one day cooks it: for one event, or for several in batches of their own sum. */
export interface DayBatch {
  readonly recipe: Recipe;
  /** Whether it is made separately for a guest's need, or goes into what is; then it is for one event alone. */
  readonly apart: boolean;
  /** The events that it is for, each with its own need and the batches it would take on its own. */
  readonly events: readonly { readonly plan: CookingPlan; readonly planned: PlannedRecipe }[];
  /** Sum of the events' needs in the batch's unit, exact. */
  readonly need: Quantity;
  /** Batches of the sum, rounded as the recipe says. */
  readonly batches: Fraction;
  /** Batches of all events, each rounded for itself; never fewer than `batches`. */
  readonly separate: Fraction;
  readonly makes: Quantity;
  /** The recipe's lines times the batches cooked. */
  readonly lines: readonly PlannedLine[];
  readonly why: readonly Said[];
}

/**
 * Every recipe that a day works on, with the needs of the events summed first and then rounded to batches once.
 * Only the very same recipe of events on the same date is put together: with another date its steps fall on other days,
 * and one in which an event swaps something is another recipe. A dish that is finished on the day itself is cooked for
 * events together only where it is as good for the later of them as its recipe asks. What is made separately for a guest's need, and all that goes
 * into it, stays by itself. What a part must come to follows the events' own batches, so never less than is called
 * for. Plans keep their order; parts come before what they go into.
 */
export function dayBatches(plans: readonly CookingPlan[], date: Day): DayBatch[] {
  const groups: Grouped[][] = [];
  const ofRecipe = new Map<Recipe, Grouped[][]>();
  for (const plan of plans) {
    const apart = madeSeparately(plan);
    const worked = new Set(
      plan.days
        .filter((day) => day.date === date)
        .flatMap(({ tasks }) => tasks.map(({ recipe }) => recipe.id)),
    );
    for (const planned of plan.recipes) {
      if (!worked.has(planned.recipe.id)) continue;
      const each = { plan, planned, alone: apart.has(planned.recipe.id) };
      const alike = ofRecipe.get(planned.recipe) ?? [];
      const same = alike.find(
        ([first]) =>
          first &&
          !each.alone &&
          !first.alone &&
          first.plan.input.date === plan.input.date &&
          goodForBoth(planned.recipe, first.plan, plan),
      );
      if (same) same.push(each);
      else {
        const group = [each];
        groups.push(group);
        ofRecipe.set(planned.recipe, [...alike, group]);
      }
    }
  }
  return groups.map((events) =>
    together(
      events.map(({ plan, planned }) => ({ plan, planned })),
      events.some(({ alone }) => alone),
    ),
  );
}

/** What one event asks of a group: in a group of its own where it is alone. */
interface Grouped {
  readonly plan: CookingPlan;
  readonly planned: PlannedRecipe;
  readonly alone: boolean;
}

/** What is packed cold or at room temperature is ready so long before the truck leaves, hot food so long: common practice, no source. */
const READY_BEFORE = { hot: 30, room: 45, cold: 45, frozen: 45 } as const;

/**
 * Whether food cooked at once is good for both events: cooked for the earlier one, it stands no longer until the first
 * plate of the later one than its recipe allows. What is not finished on the day itself, or keeps, is good for any.
 */
function goodForBoth(recipe: Recipe, a: CookingPlan, b: CookingPlan): boolean {
  const stands = recipe.stands ?? usualStands(recipe.hold);
  const onTheDay = recipe.steps.some((step) => step.when.daysBefore === 0 && !isAtPlace(step));
  const isDish = [a, b].every(({ dishes }) => dishes.some(({ dish }) => dish.recipe === recipe));
  const finishedThere = recipe.steps.some(isAtPlace);
  if (stands === undefined || !onTheDay || !isDish || finishedThere) return true;
  const [first, second] = [a, b].sort((x, y) => servedAt(x) - servedAt(y)) as [CookingPlan, CookingPlan];
  const { away } = first.input;
  const ready =
    servedAt(first) - (away?.setUp ?? USUAL_SET_UP) - (away?.travel ?? 0) - READY_BEFORE[recipe.hold];
  // Two events alike are no worse together than each is by itself.
  return servedAt(second) - ready <= stands || servedAt(second) === servedAt(first);
}

function servedAt({ input }: CookingPlan): number {
  return minutesOfClock(input.serveAt);
}

/** Ids of what is made separately for a need, down to the bottom. */
function madeSeparately({ dishes }: CookingPlan): Set<string> {
  const apart = dishes.flatMap(({ dish }) => (dish.portions?.apart ? [dish.recipe] : []));
  return new Set(partsFirst(apart).map(({ id }) => id));
}

function together(events: DayBatch['events'], apart: boolean): DayBatch {
  const [first] = events as [DayBatch['events'][number]];
  const { recipe } = first.planned;
  if (events.length === 1) {
    const { need, batches, makes, lines, why } = first.planned;
    return { recipe, apart, events, need, batches, separate: batches, makes, lines, why };
  }
  const [batch] = recipe.makes;
  const sum = (amounts: readonly Fraction[]) =>
    amounts.reduce((all, each) => all.add(each), new Fraction(0n));
  const need = { amount: sum(events.map(({ planned }) => planned.need.amount)), unit: batch.unit };
  const batches = roundBatches(need.amount.div(batch.amount), recipe.batches);
  const separate = sum(events.map(({ planned }) => planned.batches));
  const makes = timesQuantity(batch, batches);
  const uses = events.map(({ plan, planned }) =>
    statement('why.use', { amount: plainAmount(planned.need), for: plan.input.occasion }),
  );
  return {
    recipe,
    apart,
    events,
    need,
    batches,
    separate,
    makes,
    lines: recipe.lines.map((line) => ({ line, amount: timesQuantity(line.amount, batches) })),
    why: [
      statement('why.uses', { uses: several('plus', uses), result: comesTo(need) }),
      statement('why.day-batches', {
        amount: plainAmount(need),
        batch: plainAmount(batch),
        to: recipe.batches,
        batches: batchesSaid(batches, first.plan.measures),
      }),
      ...(batches.lt(separate)
        ? [statement('why.separate-batches', { batches: batchesSaid(separate, first.plan.measures) })]
        : []),
    ],
  };
}
