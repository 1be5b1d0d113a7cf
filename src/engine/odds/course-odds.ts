import type { Said } from '../text/statement.ts';

/** A course of which each guest takes one helping of one dish, as a whole. */
export interface CourseOdds {
  readonly course: string;
  /** How many take one of its dishes, those for whom only one is there included. */
  readonly guests: number;
  readonly oneIn: number;
  /** Helpings of all its dishes together. */
  readonly helpings: number;
  /** Chance that a guest finds none of them. */
  readonly shortOfAll: number;
  readonly dishes: readonly {
    readonly name: string;
    readonly recipe: string;
    readonly helpings: number;
    /** Chance that somebody whose first choice it is takes another. */
    readonly missed: number;
  }[];
  /** Helpings together if each dish were carried for its own demand, at the same risk. */
  readonly apart: number;
  /** Helpings together by the per-guest amounts and their overage. */
  readonly byGuest: number;
  readonly why: readonly Said[];
}
