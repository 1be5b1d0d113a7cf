import { z } from 'zod';
import type { Day } from '../../engine/calendar/day.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { prepPlanSchema } from '../../exports/form/prep-plan.ts';
import type { DayView } from './day/view.ts';
import type { OwnerMoneyView } from './owner-money.ts';

/** A view without what stands on every page, which is the kitchen’s of the day the page is made. */
type Bare<V extends { readonly brand: unknown; readonly banner: unknown }> = Omit<V, 'brand' | 'banner'>;

/**
 * An event's plan as it was made on a day, with all that its pages and papers need: so that they can be made again from
 * it alone, whatever has become of recipes, prices and facts. Among an event's facts it is a record and never changed.
 */
export interface KeptPlan {
  readonly version: 1;
  readonly kind: 'plan';
  readonly event: string;
  /** The day it was made on. */
  readonly on: Day;
  readonly plan: PrepPlanDocument;
  /** The cooks' notes that the plan names, by their keys. */
  readonly notes: Readonly<Record<string, string>>;
  /** What the event earned and cost; null where it was kept without. */
  readonly money: Bare<OwnerMoneyView> | null;
  /** The pages of the days on which it had work, over all events of the day. */
  readonly days: Readonly<Record<string, Bare<DayView>>>;
}

/** A kept plan that is at hand for an event, known by the digest of its file. */
export interface PlanAtHand {
  readonly digest: string;
  readonly kept: KeptPlan;
}

/** By event. */
export type PlansAtHand = ReadonlyMap<string, PlanAtHand>;

/** The form of the file. Fields that a later plan has besides are optional, so that this one is read for ever. */
const keptPlanSchema = z.object({
  version: z.literal(1),
  kind: z.literal('plan'),
  event: z.string(),
  on: z.string(),
  plan: prepPlanSchema,
  notes: z.record(z.string(), z.string()),
  money: z.looseObject({ kind: z.literal('owner money') }).nullable(),
  days: z.record(z.string(), z.looseObject({ kind: z.literal('day') })),
});

/** A kept plan of an event from its file's text; undefined for anything else. */
export function readKeptPlan(text: string, event: string): KeptPlan | undefined {
  try {
    const data = JSON.parse(text) as KeptPlan;
    // As it was written, in the order it was written, so that what is made from it comes out the same.
    return keptPlanSchema.safeParse(data).success && data.event === event ? data : undefined;
  } catch {
    return undefined;
  }
}

/** A view without what stands on every page. */
export function bare<V extends { readonly brand: unknown; readonly banner: unknown }>({
  brand: _,
  banner: __,
  ...view
}: V): Bare<V> {
  return view;
}
