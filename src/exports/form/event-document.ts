import type { DishRole } from '../../engine/course/dish-role.ts';

/** What may hurt a guest: about whom or which dish, and which dishes are and are not for them. */
export interface PlanAlert {
  /** `9 × vegetarian`, `1 × allergy: tree nuts`, or the dish's name. */
  readonly about: string;
  /** The guests it is about, with their tables, as far as a guest list names them. */
  readonly who: readonly string[];
  /** What to know or to do; empty where the lists of dishes say it. */
  readonly what: string;
  readonly notFor: readonly string[];
  /** Dishes of which nobody has said it; to be treated as not for them. */
  readonly notKnown: readonly string[];
  readonly suits: readonly string[];
}

/** How the menu feeds guests with one need. */
export interface PlanCoverage {
  /** As written: `vegan + no gluten`. */
  readonly need: string;
  readonly guests: number;
  /** False where the client has not said it and the kitchen plans for it all the same. */
  readonly said: boolean;
  /** Whether every course has something for them, only some have, or none has; null where the need is not known. */
  readonly whole: 'every course' | 'some courses' | 'nothing' | null;
  readonly courses: readonly {
    readonly course: string;
    readonly fed: boolean;
    readonly suits: readonly string[];
    /** Dishes made apart for them, with what is changed. */
    readonly apart: readonly string[];
    readonly notKnown: readonly string[];
    /** The dishes planned for them by what they are in the course; the role is empty where it is not known. */
    readonly roles: readonly { readonly role: DishRole | ''; readonly dishes: readonly string[] }[];
    /** Roles that the course has for others and not for them. */
    readonly missing: readonly DishRole[];
    /** Dishes whose role is not stated and decides whether they lack something. */
    readonly asked: readonly string[];
    /** How many of them get no portion by the counts chosen. */
    readonly short: number;
  }[];
}

export interface PlanEventFacts {
  readonly id: string;
  readonly occasion: string;
  readonly client: string;
  readonly state: string;
  readonly date: string;
  readonly dateText: string;
  readonly serveAt: string;
  readonly place: string;
  readonly venue: readonly { readonly label: string; readonly value: string }[];
  /** Time on the road, `35 min`; empty while nobody has said. */
  readonly travel: string;
  readonly package: string;
  readonly style: string;
  readonly lines: number;
  readonly guests: {
    readonly adults: number;
    readonly children: number;
    readonly vendors: number;
    readonly staff: number;
  };
  readonly needs: readonly { readonly need: string; readonly guests: number }[];
  readonly offer: { readonly revision: number; readonly digest: string; readonly acceptedOn: string };
  readonly guarantee: {
    readonly deadline: string;
    readonly floor: string;
    /** The last day on which the count may fall. */
    readonly until: string;
    /** The fewest guests at the table that are billed. */
    readonly floorGuests: number;
    /** The day the client guaranteed the count; empty while the accepted one stands. */
    readonly givenOn: string;
  };
  readonly payments: readonly { readonly label: string; readonly due: string; readonly amount: string }[];
  readonly received: readonly { readonly on: string; readonly amount: string }[];
  readonly total: string;
  readonly currency: string;
  readonly measures: 'us' | 'metric';
  /** What stands, a sentence each. */
  readonly decided: readonly string[];
  /** What has still to be given, ordered or paid, by the day it is due. */
  readonly open: readonly {
    readonly what: string;
    /** ISO 8601; empty where no day is set. */
    readonly due: string;
    readonly dueText: string;
    /** Whether that day has passed. */
    readonly late: boolean;
  }[];
}
