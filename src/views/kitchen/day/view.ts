import type { PlanOrder } from '../../../exports/form/buying.ts';
import type { PlanDayPicture, PlanLoad, PlanTimelineEntry } from '../../../exports/form/day.ts';
import type { PlanAlert } from '../../../exports/form/event.ts';
import type { PlanDish, PlanRecipe } from '../../../exports/form/food.ts';
import type { BrandView } from '../../brand/brand-view.ts';
import type { BannerView } from '../view.ts';

/** Everything to do on one day, across events. */
export interface DayView {
  readonly kind: 'day';
  readonly brand: BrandView;
  readonly banner: BannerView | null;
  readonly date: string;
  readonly dateText: string;
  /** The kitchen's, for what is told by the device's clock; left out in plans kept before anything was. */
  readonly timeZone?: string;
  readonly events: readonly { readonly id: string; readonly occasion: string; readonly what: string }[];
  readonly alerts: readonly { readonly event: string; readonly alerts: readonly PlanAlert[] }[];
  /** The day of the events served on it, by one clock. */
  readonly clock: readonly PlanTimelineEntry[];
  /** What does not fit: ovens, hands, the cold room. */
  readonly findings: readonly { readonly about: string; readonly what: string; readonly wayOut: string }[];
  /** The day's work drawn over all events; left out in plans kept before there were any. */
  readonly pictures?: readonly PlanDayPicture[];
  /** What sets how long the day is, in order of time; left out in plans kept before there was any. */
  readonly chains?: readonly {
    readonly of: 'served' | 'prep';
    /** Whose truck it leads to; left out where there is one event. */
    readonly event?: string;
    readonly lines: readonly DayChainLine[];
  }[];
  /** What is made separately for a guest's need; null for nothing. */
  readonly apart: DayTaskList | null;
  readonly stations: readonly DayTaskList[];
  /** What is done at serving, by event. */
  readonly places: readonly DayTaskList[];
  /** What goes through ovens and the like over all events, in the order it goes in. */
  readonly loads: readonly PlanLoad[];
  /** How long each kind of equipment is in use. */
  readonly gear: readonly string[];
  /** What each event's food goes into. */
  readonly containers: readonly { readonly event: string; readonly dishes: readonly PlanDish[] }[];
  /** What stands in the cold over all events. */
  readonly cold: {
    readonly kinds: readonly { readonly text: string; readonly share: string }[];
    readonly foods: readonly {
      readonly event: string;
      /** Raw food last, with its mark; empty for food that is cooked or ready. */
      readonly foods: readonly {
        readonly name: string;
        readonly raw: string;
        readonly standsIn: string;
        readonly since: string;
      }[];
    }[];
    /** How much of the cold room is taken up; empty where the kitchen names none. */
    readonly full: string;
    readonly finding: { readonly about: string; readonly what: string; readonly wayOut: string } | null;
  };
  /** The card of every recipe worked on that day, parts before what they go into. */
  readonly recipes: readonly DayRecipe[];
  /** What the day's events buy in one order; null where there is one event. */
  readonly shopping: DayShopping | null;
  /** Hands-on time of all tasks in the kitchen against what the crew has; null where it is not stated. */
  readonly crew: { readonly text: string; readonly over: string } | null;
  readonly cautions: readonly string[];
  /** What is on the day's paper alone; left out in plans kept before days had one. */
  readonly paper?: DayPaper;
}

/** What a day's paper has besides its page. */
export interface DayPaper {
  readonly events: readonly {
    readonly occasion: string;
    readonly client: string;
    /** For how many, in words. */
    readonly guests: string;
    readonly place: string;
    /** When its truck leaves and its food is on the table; empty on a day before the event's own. */
    readonly leaves: string;
    readonly serves: string;
    /** The event's day in words; empty where it is this one. */
    readonly servedOn: string;
  }[];
  /** Who is in the kitchen from when to when, by the work they have. */
  readonly people: readonly { readonly name: string; readonly begins: string; readonly ends: string }[];
  /** What each supplier brings on this day. */
  readonly deliveries: readonly {
    readonly supplier: string;
    /** For which events. */
    readonly events: readonly string[];
    /** `limit` is what the code asks of it on delivery; empty for food that it asks nothing of. */
    readonly lines: readonly { readonly name: string; readonly packs: string; readonly limit: string }[];
  }[];
  /** What the next working day needs thawed, and what is begun today and left overnight. */
  readonly tomorrow: readonly { readonly what: string; readonly why: string }[];
  /** What is measured in the kitchen today, in the order of the work. */
  readonly log: readonly {
    readonly stage: string;
    readonly what: string;
    readonly event: string;
    readonly limit: string;
    readonly section: string;
    /** What is read or done, a row for each: `after 2 h`. */
    readonly readings: readonly string[];
  }[];
  /** Tells an old sheet from a new one: another as soon as anything on the day's sheets is. */
  readonly number: string;
  /** The code and edition that the sections of the log are of, and who has the last word. */
  readonly edition: string;
  readonly defers: string;
}

/** Something on a day's critical path. */
export interface DayChainLine {
  readonly begins: string;
  /** Empty for a moment. */
  readonly ends: string;
  /** Its number among the day's tasks; left out for what is no task. */
  readonly number?: number;
  readonly what: string;
  readonly why: string;
}

/** Tasks of a day under one heading, in order of time. */
export interface DayTaskList {
  readonly name: string;
  readonly handsOn: string;
  readonly tasks: readonly {
    readonly id: string;
    /** Among all tasks of the day, as on its picture; left out in plans kept before there was one for all lists. */
    readonly number?: number;
    /** When it begins: `9:40`, or `+1:40` where the hour is not known. */
    readonly at: string;
    /** Its minutes from midnight, and when it is done; left out where the hour is not known. */
    readonly hours?: {
      readonly begins: number;
      readonly handsOff: number;
      readonly ends: number;
      readonly to: string;
    };
    readonly recipeName: string;
    /** Id of its recipe's card; left out where the day has none. */
    readonly card?: string;
    readonly text: string;
    readonly amounts: readonly { readonly event: string; readonly makes: string }[];
    /** For whom it is made separately. */
    readonly guests: readonly string[];
    readonly handsOn: string;
    readonly unattended: string;
    readonly cookTo: string;
    /** What an oven or the like is set to; left out where the step's words name nothing. */
    readonly heat?: string;
    /** The oven or the like that it goes into, with how many loads; left out where it goes into none. */
    readonly oven?: string;
    /** The pans it goes through the oven in, or is finished into; left out where none is known. */
    readonly pan?: string;
    /** The skill that one of those at it has; empty where anybody will do. */
    readonly skill: string;
    /** Who does it; empty where it is not stated who cooks. */
    readonly who?: string;
    /** Why it begins then; empty where nothing holds it there. */
    readonly why: string;
    /** What it is cooled to on the way to cold, and when; empty where nothing is. */
    readonly cooledBy: string;
    /** When it is cold; empty where it is not cooled. */
    readonly coldBy: string;
    /** Where what it finishes waits until it is loaded; empty where no equipment keeps it. */
    readonly waitsIn: string;
  }[];
}

/** A recipe as a day cooks it. */
export interface DayRecipe {
  /** The events it is cooked for, together. */
  readonly events: readonly { readonly id: string; readonly occasion: string }[];
  /** What is told where together takes fewer batches than separately; else empty. */
  readonly fewer: string;
  readonly card: PlanRecipe;
}

/** One order for several events, its sums as they are read. */
export interface DayShopping {
  readonly events: readonly string[];
  /** Several only where something would spoil. */
  readonly rounds: readonly {
    readonly lines: readonly {
      readonly ingredient: string;
      readonly name: string;
      readonly need: string;
      readonly packs: readonly string[];
      /** What stands in place of packs. */
      readonly without: string;
      readonly left: string;
    }[];
    readonly orders: readonly PlanOrder[];
    readonly goods: string | null;
    readonly fees: string;
    readonly findings: readonly { readonly what: string; readonly wayOut: string }[];
  }[];
  /** Goods and fees of one order, and of one for each event; empty while a price is missing. */
  readonly total: string;
  readonly separate: string;
  /** Empty where nothing is saved. */
  readonly saves: string;
}
