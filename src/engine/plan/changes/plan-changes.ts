import Fraction from 'fraction.js';
import type { Day } from '../../calendar/day.ts';
import type { Recipe } from '../../food/recipe.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { type Money, subtract } from '../../money/money.ts';
import { packKey } from '../../purchase/packs-on.ts';
import type { PricedPack } from '../../purchase/price-list.ts';
import type { EventPlan, PlannedDish, PlannedRecipe } from '../event-plan.ts';

/** A figure before and after a change; null where there was, or is, no such thing. */
export interface Change<T> {
  readonly before: T | null;
  readonly after: T | null;
}

/** A dish whose servings differ, or that came or went. */
export interface DishChange extends Change<PlannedDish> {
  readonly course: string;
  readonly name: string;
  /** How much more is served, exact; undefined where the two are in different units. */
  readonly by: Quantity | undefined;
}

/** A recipe that is cooked in more or fewer batches. */
export interface BatchChange extends Change<PlannedRecipe> {
  readonly recipe: Recipe;
  /** How many batches more; negative for fewer. */
  readonly by: Fraction;
}

/** A pack to add or to take back. */
export interface PackChange {
  readonly ingredient: string;
  readonly name: string;
  readonly pack: PricedPack;
  readonly before: number;
  readonly after: number;
}

/** The hands-on time of a day. */
export interface DayChange {
  readonly date: Day;
  /** Minutes. */
  readonly before: number;
  readonly after: number;
}

/** What differs between two plans of one event; what is the same in both is left out. */
export interface PlanChanges {
  readonly dishes: readonly DishChange[];
  readonly batches: readonly BatchChange[];
  readonly packs: readonly PackChange[];
  readonly days: readonly DayChange[];
  /** Hands-on minutes over all days. */
  readonly handsOn: { readonly before: number; readonly after: number };
  /** null on a side whose food is not all priced; `by` is then undefined. */
  readonly foodCost: Change<Money> & { readonly by: Money | undefined };
}

/**
 * Compares two plans of one event, exactly. Dishes are the same by course and recipe, recipes by id, packs by
 * supplier, ingredient and text, days by date. Both orders are kept: what is in the newer plan as it lists it, then
 * what only the older one has.
 */
export function planChanges(before: EventPlan, after: EventPlan): PlanChanges {
  const handsOn = { before: minutesOf(before), after: minutesOf(after) };
  const cost = { before: before.foodCost, after: after.foodCost };
  return {
    dishes: dishChanges(before, after),
    batches: batchChanges(before, after),
    packs: packChanges(before, after),
    days: dayChanges(before, after),
    handsOn,
    foodCost: { ...cost, by: cost.before && cost.after ? subtract(cost.after, cost.before) : undefined },
  };
}

function dishChanges(before: EventPlan, after: EventPlan): DishChange[] {
  const key = ({ dish }: PlannedDish) => `${dish.course}\n${dish.recipe.id}`;
  return paired(before.dishes, after.dishes, key).flatMap((change) => {
    const { dish } = (change.after ?? change.before) as PlannedDish;
    const [was, is] = [change.before?.need, change.after?.need];
    const unit = (is ?? was)?.unit ?? '';
    const comparable = !was || !is || was.unit === is.unit;
    const amount = (is?.amount ?? new Fraction(0n)).sub(was?.amount ?? 0n);
    if (was && is && comparable && amount.n === 0n) return [];
    return [
      { ...change, course: dish.course, name: dish.name, by: comparable ? { amount, unit } : undefined },
    ];
  });
}

function batchChanges(before: EventPlan, after: EventPlan): BatchChange[] {
  return paired(before.recipes, after.recipes, ({ recipe }) => recipe.id).flatMap((change) => {
    const { recipe } = (change.after ?? change.before) as PlannedRecipe;
    const by = (change.after?.batches ?? new Fraction(0n)).sub(change.before?.batches ?? 0n);
    return by.n === 0n ? [] : [{ ...change, recipe, by }];
  });
}

interface BoughtPack {
  readonly ingredient: string;
  readonly name: string;
  readonly pack: PricedPack;
  readonly count: number;
}

function packChanges(before: EventPlan, after: EventPlan): PackChange[] {
  const packs = ({ purchases }: EventPlan): BoughtPack[] =>
    purchases.flatMap((bought) =>
      bought.packs.map(({ pack, count }) => ({
        ingredient: bought.ingredient.id,
        name: bought.ingredient.name,
        pack,
        count,
      })),
    );
  const key = ({ pack }: BoughtPack) => [pack.supplier, pack.ingredient, packKey(pack.packText)].join('\n');
  return paired(packs(before), packs(after), key).flatMap((change) => {
    const { ingredient, name, pack } = (change.after ?? change.before) as BoughtPack;
    const counts = { before: change.before?.count ?? 0, after: change.after?.count ?? 0 };
    return counts.before === counts.after ? [] : [{ ingredient, name, pack, ...counts }];
  });
}

function dayChanges(before: EventPlan, after: EventPlan): DayChange[] {
  const minutes = ({ days }: EventPlan) =>
    days.map(({ date, tasks }) => ({
      date,
      minutes: tasks.reduce((sum, { handsOnMinutes }) => sum + handsOnMinutes, 0),
    }));
  return paired(minutes(before), minutes(after), ({ date }) => date)
    .map((change) => ({
      date: (change.after ?? change.before)?.date as Day,
      before: change.before?.minutes ?? 0,
      after: change.after?.minutes ?? 0,
    }))
    .filter((change) => change.before !== change.after)
    .sort((a, b) => (a.date < b.date ? -1 : 1));
}

function minutesOf({ days }: EventPlan): number {
  return days.reduce(
    (sum, { tasks }) => sum + tasks.reduce((all, { handsOnMinutes }) => all + handsOnMinutes, 0),
    0,
  );
}

/** Things of two lists that are the same by a key; of several under one key the first of both go together, and so on. */
function paired<T>(before: readonly T[], after: readonly T[], key: (each: T) => string): Change<T>[] {
  const left = Map.groupBy(before, key);
  const pairs = after.map(
    (each): Change<T> => ({ before: left.get(key(each))?.shift() ?? null, after: each }),
  );
  return [...pairs, ...[...left.values()].flat().map((each) => ({ before: each, after: null }))];
}
