import type { QuoteView } from '../quote-view.ts';
import type { Comparison } from './proposal-choice-comparison.ts';

/** The parts of a proposal's page that answer the client, as they stand before anything is touched. */
export interface ProposalChoiceView {
  /** What the script computes from, as JSON that is safe inside a script element. */
  readonly data: string;
  /** The menus for machines, schema.org in JSON-LD, safe inside a script element. */
  readonly linkedData: string;
  /** The origin that answers are posted to; null where none is, or the site itself takes them. */
  readonly postOrigin: string | null;
  readonly compare: CompareView | null;
  readonly accept: AnswerView | null;
  readonly change: AnswerView | null;
  /** What the guest list asks for; null for menus without a choice by guest. */
  readonly guestList: GuestListView | null;
}

export interface CompareView {
  readonly sides: readonly [SideView, SideView];
  readonly range: { readonly from: number; readonly to: number };
  /** What the guest count means: `Adults and children; 6 of them children.` */
  readonly countHint: string;
  readonly comparison: Comparison;
}

export interface SideView {
  readonly letter: 'A' | 'B';
  /** Begins the names of its fields: `a.` */
  readonly prefix: string;
  readonly menus: readonly { readonly id: string; readonly name: string; readonly chosen: boolean }[];
  readonly guests: number;
  /** `118 guests` */
  readonly guestsText: string;
  readonly addOns: readonly AddOnFieldView[];
}

export interface AddOnFieldView {
  readonly field: string;
  readonly name: string;
  /** `$6.50 per guest` */
  readonly price: string;
  readonly byHour: boolean;
  /** Hours, or `1` for taken; empty for not taken. */
  readonly value: string;
  /** Ids of the menus it goes with, between spaces. */
  readonly menus: string;
}

/** A form that ends in a file for the kitchen. */
export interface AnswerView {
  readonly kind: 'accept' | 'change';
  readonly menus: readonly MenuFieldView[];
  readonly people: readonly CountFieldView[];
  readonly addOns: readonly AddOnFieldView[];
  readonly needs: readonly CountFieldView[];
  readonly quote: QuoteView;
  /** Why it bills more guests than the form names: the least they are held to; empty where it does not. */
  readonly billedWhy: string;
  /** What is agreed to; empty where nothing is. */
  readonly agreement: string;
  /** What happens with the answer, in order. */
  readonly next: readonly string[];
  readonly until: string;
  readonly submit: string;
}

export interface MenuFieldView {
  readonly id: string;
  readonly name: string;
  readonly style: string;
  readonly chosen: boolean;
  readonly courses: readonly CourseFieldView[];
}

export interface CourseFieldView {
  readonly name: string;
  /** `Choose two.` or `One for each guest: the counts must make 94.` */
  readonly ask: string;
  readonly byGuest: boolean;
  /** Names the course among the page's errors. */
  readonly field: string;
  readonly dishes: readonly {
    readonly field: string;
    readonly name: string;
    readonly marks: string;
    /** A count by guest; `on` or empty where so many are chosen. */
    readonly value: string;
  }[];
}

export interface CountFieldView {
  readonly field: string;
  readonly label: string;
  readonly hint: string;
  readonly value: string;
}

export interface GuestListView {
  /** `Main course, then Pudding` */
  readonly courses: readonly string[];
  /** One line as it may be written. */
  readonly example: string;
  readonly next: string;
}
