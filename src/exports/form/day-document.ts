import type { PlanStep } from './food-document.ts';

/** A part of the event's day: cook, pack, load, leave, arrive, set up, finish at the place, serve, clear, done. */
export interface PlanTimelineEntry {
  readonly part: string;
  readonly what: string;
  readonly date: string;
  /** `Sunday, May 16, 2027` where it begins on another day than the event’s; else left out. */
  readonly dateText?: string | undefined;
  /** HH:MM by the place's clock; `ends` is empty for a moment. */
  readonly begins: string;
  readonly ends: string;
  readonly why: string;
}

export interface PlanDay {
  readonly date: string;
  readonly dateText: string;
  readonly when: string;
  readonly handsOn: string;
  /** What the crew has, `4 × 8 h = 32 h`; empty where nobody has said who cooks. */
  readonly crew: string;
  /** Tasks, the earliest use of each bench first among those that can begin. */
  readonly tasks: readonly PlanTask[];
  /** The day's work in order of time: in the kitchen, and at the place where something is done at serving. */
  readonly pictures: readonly PlanDayPicture[];
  /** What goes through ovens and the like, in the order it goes in. */
  readonly loads: readonly PlanLoad[];
}

/** A day's work at one place: time across, station down. */
export interface PlanDayPicture {
  readonly where: 'in the kitchen' | 'at the place';
  /** Minutes from midnight at which it begins; null where only the time since its beginning is known. */
  readonly from: number | null;
  /** From first to last, in minutes and for people. */
  readonly minutes: number;
  readonly takes: string;
  readonly stations: readonly {
    readonly name: string;
    /** Minutes from the beginning; hands are free at `handsOff`. */
    readonly tasks: readonly {
      readonly number: number;
      readonly id: string;
      readonly begins: number;
      readonly handsOff: number;
      readonly ends: number;
    }[];
  }[];
}

/** One step's way through an oven, a grill or a rack. */
export interface PlanLoad {
  readonly task: string;
  readonly recipeName: string;
  readonly text: string;
  readonly equipment: string;
  /** How many of the equipment are in use at a time. */
  readonly uses: number;
  /** `9 × Full steam-table pan`; empty where it cannot be counted. */
  readonly containers: string;
  readonly loads: number;
  /** When the first goes in and the last comes out, as `at` of a task. */
  readonly goesIn: string;
  readonly comesOut: string;
  readonly minutes: number;
  readonly why: readonly string[];
}

export interface PlanTask extends PlanStep {
  /** Stable through reruns, so that a calendar updates instead of doubling. */
  readonly id: string;
  /** Its number on the day's picture. */
  readonly order: number;
  /** When it begins: `9:40`, or `+1:40` after the day's beginning where the hour is not known. */
  readonly at: string;
  readonly recipe: string;
  readonly recipeName: string;
  readonly batches: string;
  readonly makes: string;
}
