import type { Day } from '../../calendar/day.ts';
import type { MeasureSystem } from '../../measure/units.ts';
import { type Statement, statement } from '../../text/statement.ts';
import type { EventPlan } from '../event-plan.ts';
import { batchesSaid } from '../figure-text.ts';
import type { BatchChange, PlanChanges } from './plan-changes.ts';

/** Why a change comes too late to be carried out as planned, and what is left to do. */
export interface LateChange {
  /** The recipe's or ingredient's name. */
  readonly about: string;
  readonly what: Statement;
}

/** What the kitchen has done and ordered by a day. */
export interface Progress {
  /** Steps on days before this one have been done. */
  readonly today: Day;
  /** Supplier → the last day on which it takes an order for this event; one that is not known is never late. */
  readonly orderBy: ReadonlyMap<string, Day>;
}

/**
 * Which changes come too late: a recipe whose cooking has begun (a step of it lies before today in the plan before the
 * change) with other batches than were begun, and packs of a supplier whose last day for orders has passed.
 */
export function lateChanges(
  changes: PlanChanges,
  before: EventPlan,
  { today, orderBy }: Progress,
  nameOf: (supplier: string) => string,
): LateChange[] {
  const begun = new Map<string, Day>();
  for (const { date, tasks } of before.days)
    if (date < today) for (const { recipe } of tasks) if (!begun.has(recipe.id)) begun.set(recipe.id, date);
  return [
    ...changes.batches.flatMap((change) => {
      const since = begun.get(change.recipe.id);
      return since ? [lateBatches(change, since, before.measures)] : [];
    }),
    ...changes.packs.flatMap(({ name, pack, before: was, after: is }) => {
      const last = orderBy.get(pack.supplier);
      if (last === undefined || last >= today) return [];
      const packs = `${Math.abs(is - was)} × ${pack.packText}`;
      const what = statement(is > was ? 'found.late.buy' : 'found.late.cancel', {
        supplier: nameOf(pack.supplier),
        day: { day: last },
        packs,
      });
      return [{ about: name, what }];
    }),
  ];
}

function lateBatches({ recipe, before, by }: BatchChange, since: Day, measures: MeasureSystem): LateChange {
  const was = before ? batchesSaid(before.batches, measures) : statement('found.late.nothing');
  const what = statement(by.s > 0n ? 'found.late.cook-more' : 'found.late.cook-less', {
    day: { day: since },
    was,
    batches: batchesSaid(by.abs(), measures),
  });
  return { about: recipe.name, what };
}
