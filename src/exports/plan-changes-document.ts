/**
 * What a change of an event (another count, a substitution, a new day) makes of its plan, as the command line prints
 * it and the event's page shows it. What stays as it was is not in it. Empty text stands for nothing.
 */
export interface PlanChangesDocument {
  /** The change itself: `92 guests at the table instead of 84`. */
  readonly what: string;
  /** The day it was recorded. */
  readonly on: string;
  readonly dishes: readonly (Figures & { readonly course: string; readonly dish: string })[];
  readonly batches: readonly (Figures & { readonly recipe: string })[];
  /** Whole packs to add or take back. */
  readonly packs: readonly (Figures & {
    readonly ingredient: string;
    readonly supplier: string;
    readonly pack: string;
  })[];
  /** Containers, service ware, staff and add-ons that go to the event. */
  readonly packOut: readonly (Figures & {
    readonly group: string;
    readonly item: string;
    readonly container: string;
  })[];
  readonly days: readonly (Figures & { readonly date: string; readonly dateText: string })[];
  /** Hands-on time over all days. */
  readonly handsOn: Figures;
  /** Money text in the kitchen's currency. The client's total is what is billed by what is known now. */
  readonly total: Figures;
  /** Whole packs; empty on a side where a price is missing. */
  readonly foodCost: Figures;
  /** What comes too late to be done as planned, a sentence each. */
  readonly late: readonly string[];
}

/** A figure before and after, and the difference with its sign: `+2 lb`, `−3`. */
export interface Figures {
  readonly before: string;
  readonly after: string;
  readonly by: string;
}
