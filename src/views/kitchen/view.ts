import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import type { SafetySheetCheck } from '../../exports/form/sheets.ts';
import type { BrandView } from '../brand/brand-view.ts';
import type { BuffetCard } from './buffet-cards.ts';
import type { LossView } from './losses.ts';

/** What stands above the kitchen's pages: errors in the content on each, clients' answers that wait on the front page. */
export interface BannerView {
  readonly errors: number;
  readonly lines: readonly string[];
  /** What waits in the inbox, with the command that takes it. */
  readonly waiting: readonly string[];
  /** On the pages of a plan that cannot be made again now: since when, and what is broken; left out on all others. */
  readonly stale?: string;
}

/** The coming events by date, and what is still a proposal. */
export interface KitchenView {
  readonly kind: 'kitchen';
  readonly brand: BrandView;
  readonly banner: BannerView | null;
  readonly todayText: string;
  readonly events: readonly {
    readonly id: string;
    readonly occasion: string;
    readonly client: string;
    readonly dateText: string;
    readonly serveAt: string;
    readonly state: string;
    readonly guests: string;
    readonly place: string;
    /** False where there is no plan to show. */
    readonly planned: boolean;
    /** Why it cannot be planned now; where there is a plan all the same, it is the last that could be made. */
    readonly held: string;
  }[];
  /** Cancelled, or postponed without a new day: on none of the lists above and below. */
  readonly apart: readonly {
    readonly id: string;
    readonly occasion: string;
    readonly client: string;
    readonly state: string;
    /** The day it was set for, and what was received. */
    readonly what: string;
  }[];
  /** Past events with money still to come in or to be paid back. */
  readonly unsettled: readonly {
    readonly id: string;
    readonly occasion: string;
    readonly client: string;
    readonly dateText: string;
    /** `Balance`, or `To be paid back`. */
    readonly label: string;
    readonly balance: string;
  }[];
  readonly days: readonly { readonly date: string; readonly dateText: string; readonly tasks: string }[];
  /** Whether there is a page of what came back from events so far. */
  readonly leftovers?: boolean;
  /** Places with a site sheet, and how much of each nobody has asked yet. */
  readonly siteSheets: readonly { readonly id: string; readonly name: string; readonly missing: string }[];
  /** Events that buy in one order, which has to go out before their first day of work. */
  readonly buying: readonly {
    readonly events: readonly string[];
    /** The first of their days, whose page has the whole order. */
    readonly date: string;
    readonly orders: readonly { readonly name: string; readonly orderByText: string }[];
    /** Empty while a price is missing. */
    readonly total: string;
    /** Against an order for each; empty where it saves nothing. */
    readonly saves: string;
  }[];
  readonly proposals: readonly {
    readonly id: string;
    readonly occasion: string;
    readonly client: string;
    readonly state: string;
    readonly dateText: string;
    readonly total: string;
    readonly link: string;
    /** What it waits for, until when, and what to do next; empty where nothing is open, or its day has passed. */
    readonly next: string;
  }[];
}

/** One event: its prep plan and the files beside it. */
export interface EventView {
  readonly kind: 'event';
  readonly brand: BrandView;
  readonly banner: BannerView | null;
  readonly plan: PrepPlanDocument;
  /** Tells an old sheet from a new one. */
  readonly number: string;
  /** For paper: the event's day in one order of time, and what is measured away from the kitchen. */
  readonly runSheet: readonly RunLine[];
  readonly awayChecks: readonly SafetySheetCheck[];
  /** Names of the files beside the page, with what they are. */
  readonly files: readonly { readonly file: string; readonly what: string }[];
  /** What was broken or is missing; left out where nothing is. */
  readonly losses?: readonly LossView[];
}

/** A line of what happens when on the event's day: a part of it, or a task done at the place. */
export interface RunLine {
  /** Set on a part of the day; left out on a task. */
  readonly part?: string;
  readonly begins: string;
  /** Empty for a moment. */
  readonly ends: string;
  /** The day in words, where it is not the event's; else empty. */
  readonly on: string;
  /** What is done: the part, or the dish. */
  readonly dish: string;
  /** Of a task: its words, how much, to what temperature and in what heat; empty where there is none. */
  readonly text: string;
  readonly makes: string;
  readonly heat: string;
  readonly cookTo: string;
  /** Why then, of a part; who, of a task where that is known. */
  readonly why: string;
  readonly who: string;
}

/** Where labels lie on their sheet, as lengths of CSS, nudged as the kitchen says. */
export interface LabelSheetView {
  readonly sheetWidth: string;
  readonly sheetHeight: string;
  readonly labelWidth: string;
  readonly labelHeight: string;
  readonly above: string;
  readonly beside: string;
  readonly between: string;
}

/** The labels of one event, for printing. */
export interface LabelsView {
  readonly kind: 'labels';
  readonly brand: BrandView;
  readonly plan: PrepPlanDocument;
  readonly sheet: LabelSheetView;
  /** Stands on every label. */
  readonly caution: string;
}

/** The cards beside an event's dishes, for printing. */
export interface BuffetCardsView {
  readonly kind: 'buffet cards';
  readonly brand: BrandView;
  /** Occasion and day. */
  readonly job: string;
  readonly cards: readonly BuffetCard[];
  readonly caution: string;
}
