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
  /** Containers, service ware, meals of the crew and add-ons that go to the event; in plans of before also staff. */
  readonly packOut: readonly (Figures & {
    readonly group: string;
    readonly item: string;
    readonly container: string;
  })[];
  /** Goods ordered from a supplier, money text; empty on a side without an order. Missing in plans of before. */
  readonly orders?: readonly (Figures & { readonly supplier: string })[];
  /** Delivery fees by supplier, money text. Missing in plans of before. */
  readonly deliveryFees?: readonly (Figures & { readonly supplier: string })[];
  /** People who serve by role, with their hours together. Missing in plans of before. */
  readonly staff?: readonly (Figures & { readonly role: string; readonly hours: Figures })[];
  /** What is still open of each of the client's payments, money text. Missing in plans of before. */
  readonly payments?: readonly (Figures & {
    readonly label: string;
    /** In words; empty while the event has no day. */
    readonly due: string;
  })[];
  /** The client's total less what came in, negative where money is to be paid back. Missing in plans of before. */
  readonly balance?: Figures;
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
