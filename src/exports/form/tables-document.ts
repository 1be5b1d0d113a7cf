/** Who sits where and takes what, from the guest list that stands. */
export interface PlanTables {
  /** The day the client gave the list. */
  readonly givenOn: string;
  readonly givenOnText: string;
  /** Whether it came after the day up to which the count could fall. */
  readonly late: boolean;
  /** One for each course of which every guest takes one dish. */
  readonly courses: readonly PlanTableCourse[];
  /** Every guest in the order of the tables, and within a table of the list. */
  readonly seats: readonly PlanSeat[];
}

/** The dishes of a course by table. */
export interface PlanTableCourse {
  readonly course: string;
  readonly dishes: readonly PlanTableDish[];
  readonly rows: readonly {
    /** `Table 4`, a table's name, or `No table`. */
    readonly table: string;
    /** In the order of the dishes. */
    readonly counts: readonly number[];
    /** Guests who have said no dish. */
    readonly unsaid: number;
  }[];
  readonly unsaid: number;
}

/** A dish that guests choose, with the signs that stand for it on cards. */
export interface PlanTableDish extends PlanMark {
  readonly recipe: string;
  readonly name: string;
  /** Guests who take it by the list, and those it is planned for. */
  readonly listed: number;
  readonly planned: number;
}

/** What stands for a dish where there is little room: a word and a shape, which say the same. */
export interface PlanMark {
  /** The dish's word for cards, in capitals. */
  readonly letters: string;
  readonly shape: Shape;
}

/** Outlines that are told apart without colour and from any side, then the same filled. */
export const SHAPES = [
  'circle',
  'square',
  'triangle',
  'diamond',
  'hexagon',
  'cross',
  'full circle',
  'full square',
  'full triangle',
  'full diamond',
  'full hexagon',
  'full cross',
] as const;
export type Shape = (typeof SHAPES)[number];

/** One guest's place. */
export interface PlanSeat {
  readonly name: string;
  /** As in the rows. */
  readonly table: string;
  /** As on the list; empty for none. */
  readonly need: string;
  readonly dishes: readonly PlanSeatDish[];
  /** Dishes chosen that are not for this guest, and are not made apart either; empty for none. */
  readonly notFor: readonly string[];
  /** What is made apart for this guest, in every course, by the names it has among the plan's dishes. */
  readonly apart: readonly string[];
  /** Those of them that are sealed, since the guest has an allergy; left out in plans made before this was said. */
  readonly sealed?: readonly string[] | undefined;
}

/** A dish that a guest chose, with its mark. */
export interface PlanSeatDish extends PlanMark {
  readonly course: string;
  readonly name: string;
  /** What this guest gets in its place, by its name among the plan's dishes; left out where it is the dish as it is. */
  readonly made?: string | undefined;
}
