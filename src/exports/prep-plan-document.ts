import type { PlanChangesDocument } from './plan-changes-document.ts';
import type { PlanOdds } from './plan-odds-document.ts';
import type { PlanTables } from './plan-tables-document.ts';
import type { SafetySheetDocument } from './safety-sheet-document.ts';

/**
 * `prep-plan.json`: everything the kitchen needs for one event, as text that people and programs read alike.
 * The kitchen's pages, papers and lists show this document and nothing else, so that a figure is the same
 * everywhere. Exact figures are fractions as text (`25/16 gal`), printed ones are kitchen amounts.
 */
export interface PrepPlanDocument {
  readonly version: 1;
  readonly kind: 'prep plan';
  readonly event: PlanEventFacts;
  /** What must be read before anything is cooked, the most dangerous first. */
  readonly alerts: readonly PlanAlert[];
  /** What each course and the whole meal have for each need. */
  readonly coverage: readonly PlanCoverage[];
  /** Every dish, and beside it the portions that are made apart. */
  readonly dishes: readonly PlanDish[];
  /** How likely they run short; left out where no dish says how guests take it. */
  readonly odds?: PlanOdds | undefined;
  /** Who sits where and takes what; null while there is no guest list. */
  readonly tables: PlanTables | null;
  readonly recipes: readonly PlanRecipe[];
  readonly shopping: readonly PlanPurchase[];
  readonly orders: readonly PlanOrder[];
  /** Cost of the whole packs without delivery, money text in the kitchen's currency; null while a price is missing. */
  readonly foodCost: string | null;
  /** What the suppliers take for delivery, over all orders. */
  readonly deliveryFees: string;
  /** What the needs cost at the rate of the packs bought, as purchased, stock included; null while a price is missing. */
  readonly foodUsed: string | null;
  /** The event's day worked back from serving. */
  readonly timeline: readonly PlanTimelineEntry[];
  readonly days: readonly PlanDay[];
  readonly packOut: readonly PackOutLine[];
  readonly labels: readonly PlanLabel[];
  readonly findings: readonly { readonly about: string; readonly what: string; readonly wayOut: string }[];
  /** What to measure when, for the crew to fill in. */
  readonly safetySheet: SafetySheetDocument;
  /** Standing cautions on allergens and food safety. */
  readonly cautions: readonly string[];
  /** What the last change of the event made of this plan; null where nothing has changed since the acceptance. */
  readonly lastChange: PlanChangesDocument | null;
}

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
  }[];
}

/** A figure twice: exact for programs, printed for people. */
export interface AmountText {
  readonly exact: string;
  readonly printed: string;
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

/** What earlier events, served the same way, tell of a dish; amounts are for each guest who came, empty where nobody can say. */
export interface PlanEarlier {
  readonly events: number;
  /** At how many of them nothing was left, so that more might have been eaten. */
  readonly nothingLeft: number;
  /** The mean, and where it lies with the confidence that `said` names. */
  readonly mean: string;
  readonly from: string;
  readonly to: string;
  readonly atLeast: string;
  /** All of it in a sentence without full stop. */
  readonly said: string;
}

export interface PlanDish {
  readonly course: string;
  readonly name: string;
  readonly recipe: string;
  /** The recipe that these portions are made apart from; empty for a dish as it is. */
  readonly apartFrom: string;
  /** How they differ: `without butter`; empty for a dish as it is. */
  readonly changes: readonly string[];
  /** Of the guests counted, those with a need that it suits. */
  readonly needs: readonly { readonly need: string; readonly guests: number }[];
  readonly counted: string;
  readonly perGuest: string;
  readonly overage: string;
  readonly need: AmountText;
  readonly asMade: AmountText;
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  /** Allergen and the ways it comes in, in names from the dish down. */
  readonly allergenPaths: readonly { readonly allergen: string; readonly paths: readonly string[] }[];
  /** The same for what labels warn of. */
  readonly mayContainPaths: readonly { readonly allergen: string; readonly paths: readonly string[] }[];
  readonly unsaid: readonly string[];
  readonly diets: readonly {
    readonly diet: string;
    readonly suits: 'yes' | 'no' | 'unknown';
    readonly because: readonly string[];
  }[];
  /** What earlier events tell of it; left out where none does. */
  readonly earlier?: PlanEarlier | undefined;
  readonly containers: readonly PlanContainer[];
  readonly why: readonly string[];
}

export interface PlanContainer {
  readonly stage: string;
  readonly container: string;
  readonly name: string;
  readonly count: number;
  readonly each: AmountText;
  /** How full the last one is, whole percent of its working fill. */
  readonly lastFull: string;
  readonly why: readonly string[];
}

export interface PlanRecipe {
  readonly id: string;
  readonly name: string;
  readonly usedBy: readonly { readonly by: string; readonly need: AmountText }[];
  readonly need: AmountText;
  readonly batches: string;
  readonly makes: AmountText;
  readonly hold: string;
  readonly keeps: string;
  readonly finish: string;
  /** Key of the cook's notes among the rendered bodies; empty where there are none. */
  readonly notes: string;
  readonly lines: readonly {
    readonly kind: 'ingredient' | 'recipe';
    readonly id: string;
    readonly name: string;
    readonly preparation: string;
    readonly amount: AmountText;
    readonly note: string;
    readonly allergens: readonly string[];
  }[];
  readonly steps: readonly PlanStep[];
  readonly contains: readonly string[];
  readonly why: readonly string[];
}

export interface PlanStep {
  readonly number: number;
  readonly text: string;
  readonly when: string;
  readonly station: string;
  readonly handsOn: string;
  readonly handsOnMinutes: number;
  readonly unattended: string;
  readonly cookTo: string;
}

export interface PlanPurchase {
  readonly ingredient: string;
  readonly name: string;
  readonly need: AmountText;
  readonly usedBy: readonly {
    readonly recipe: string;
    readonly need: AmountText;
    readonly why: readonly string[];
  }[];
  /** What of the need is taken from stock; null for nothing. */
  readonly stock: AmountText | null;
  readonly packs: readonly {
    readonly supplier: string;
    readonly supplierName: string;
    readonly pack: string;
    readonly itemNumber: string;
    readonly count: number;
    /** Price of one pack, money text. */
    readonly price: string;
    readonly cost: string;
  }[];
  readonly bought: AmountText | null;
  readonly left: AmountText | null;
  /** What is left over at the rate of the packs; null where nothing is. */
  readonly leftWorth: string | null;
  readonly cost: string | null;
  readonly why: readonly string[];
}

/** What is ordered from one supplier. */
export interface PlanOrder {
  readonly supplier: string;
  readonly name: string;
  readonly goods: string;
  readonly minimumOrder: string;
  readonly deliveryFee: string;
  /** Goods and delivery. */
  readonly total: string;
  readonly deliverOn: string;
  readonly deliverOnText: string;
  /** The last day to order, so that the goods are there when the first task needs them. */
  readonly orderBy: string;
  readonly orderByText: string;
  /** What is missing to the minimum order; empty when it is reached. */
  readonly short: string;
}

/** A part of the event's day: cook, pack, load, leave, arrive, set up, finish at the place, serve, clear, done. */
export interface PlanTimelineEntry {
  readonly part: string;
  readonly what: string;
  readonly date: string;
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

export interface PackOutLine {
  readonly group: 'food' | 'service ware' | 'staff' | 'add-ons';
  readonly item: string;
  readonly container: string;
  readonly count: number;
  readonly unit: string;
  readonly hold: string;
  readonly note: string;
}

export interface PlanLabel {
  readonly dish: string;
  readonly container: string;
  /** `1 of 3` */
  readonly of: string;
  readonly job: string;
  readonly date: string;
  readonly amount: string;
  readonly ingredients: string;
  /** For whom it is made apart or held back, with room for name and table where it is sealed; empty for everybody. */
  readonly guests: string;
  /** In capitals, so that no eye passes over them. */
  readonly contains: readonly string[];
  /** In capitals as well. */
  readonly mayContain: readonly string[];
  readonly madeOn: string;
  readonly useBy: string;
  readonly hold: string;
  readonly finish: string;
}
