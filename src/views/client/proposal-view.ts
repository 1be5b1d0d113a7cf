import type { DishRole } from '../../engine/course/dish-role.ts';
import type { BrandView } from '../brand/brand-view.ts';
import type { ProposalChoiceView } from './proposal-choice.ts';
import type { QuoteRow } from './proposal-choice-rows.ts';
import type { ProposalQuoteView } from './proposal-quote.ts';

/** What stands on a proposal's page and in its PDF: finished text, nothing to compute. */
export interface ProposalView {
  readonly kind: 'proposal';
  readonly brand: BrandView;
  readonly state: 'draft' | 'offered' | 'expired' | 'withdrawn' | 'accepted';
  /** One sentence on the state, for the top of page and sheets. */
  readonly stateText: string;
  /** What stands on every sheet: the state in a word where it is not an open offer, and which offer it is. */
  readonly sheetMarks: { readonly state: string; readonly offer: string };
  /** Where the page is served; empty where it is not stated. */
  readonly address: string;
  readonly title: string;
  readonly client: string;
  readonly facts: readonly { readonly label: string; readonly value: string }[];
  readonly revision: number | null;
  readonly digest: string;
  readonly shortDigest: string;
  /** What differs from the revision before; null where there is none, or nothing is left to decide. */
  readonly changes: OfferChangesView | null;
  /** Dated corrections of allergens and changes of the event since the offer was issued, under a head; above all else. */
  readonly since: { readonly head: string; readonly texts: readonly string[] };
  readonly notices: readonly string[];
  /** The letter as HTML made by Salver from checked Markdown. */
  readonly letterHtml: string;
  readonly packages: readonly PackageView[];
  readonly allergenTable: AllergenTableView;
  readonly legend: readonly { readonly mark: string; readonly meaning: string }[];
  /** What a guest can ask the menus for, in the order in which dishes answer. */
  readonly needs: readonly string[];
  readonly quote: ProposalQuoteView;
  readonly comparison: ComparisonView;
  readonly termsHtml: string;
  /** Conditions made from the offer's figures, each under its head; the kitchen's own words follow them. */
  readonly terms: readonly { readonly head: string; readonly texts: readonly string[] }[];
  readonly acceptance: readonly string[];
  readonly cautions: readonly string[];
  /** What compares and answers on the page; paper has none of it. */
  readonly answering: ProposalChoiceView;
}

/** What has changed since the last revision, as the client reads it. */
export interface OfferChangesView {
  /** `What has changed since revision 1 of Wednesday, April 14, 2027` */
  readonly head: string;
  /** What the quote came to and comes to now. */
  readonly total: string;
  readonly groups: readonly { readonly about: string; readonly lines: readonly string[] }[];
  /** More than fits above the letter: shown folded on the screen. */
  readonly isLong: boolean;
}

/** Which allergens are in which dish: one group of rows for each menu, and one for the food of add-ons. */
export interface AllergenTableView {
  /** The columns: names as the law uses them, then in plain words what no law names but the foods state. */
  readonly allergens: readonly string[];
  readonly menus: readonly AllergenGroupView[];
  /** The same for a sheet, each dish once: those of several menus, those of each menu alone, those of add-ons. */
  readonly once: readonly AllergenGroupView[];
  /** Stands before the table: traces are possible. */
  readonly warning: string;
  /** What a cell's words mean; above all that an empty one is no promise. */
  readonly key: string;
}

/** Dishes of the table under a name. */
export interface AllergenGroupView {
  readonly name: string;
  readonly rows: readonly {
    readonly dish: string;
    /** `2 pieces per guest` */
    readonly perGuest: string;
    readonly cells: readonly AllergenCellView[];
  }[];
}

/** What is known of one allergen in one dish. `not known`: not stated yet, so anything may be in it. */
export interface AllergenCellView {
  readonly says: 'contains' | 'may contain' | 'not known' | '';
  /** The same in a word for a narrow column, and as it is read aloud. */
  readonly shown: string;
  readonly spoken: string;
  /** The kinds where the law wants them named: `almond`, `cod`; empty elsewhere. */
  readonly kinds: readonly string[];
}

export interface PackageView {
  readonly id: string;
  readonly name: string;
  readonly proposed: boolean;
  readonly style: string;
  /** How it is served, in words. */
  readonly served: string;
  /** Key of the story among the rendered bodies; empty where there is none. */
  readonly story: string;
  readonly prices: readonly { readonly guests: string; readonly price: string }[];
  readonly rates: readonly string[];
  readonly courses: readonly CourseView[];
}

export interface CourseView {
  readonly name: string;
  /** True where each guest takes one of the dishes. */
  readonly eachGuest: boolean;
  /** `Choose two; everybody is served both.` Empty where there is nothing to choose. */
  readonly note: string;
  readonly dishes: readonly DishView[];
}

export interface DishView {
  readonly name: string;
  /** What it is in its course: `main`; empty where that is not known. */
  readonly role: DishRole | '';
  readonly chosen: boolean;
  /** `46 guests` where each guest chooses one; else empty. */
  readonly chosenBy: string;
  readonly perGuest: string;
  readonly marks: readonly string[];
  readonly needs: DishNeedsView;
  /** `Contains milk, wheat.` Always says something: what it contains, none of the listed, or not known yet. */
  readonly allergens: string;
  /** `As agreed: Onion tart, 1 piece per guest. …` where a substitution has changed it; else empty. */
  readonly agreed: string;
}

/** What a dish is for each of the page's needs. */
export interface DishNeedsView {
  /** A letter for each: `y` suits, `n` does not or is not stated to, `u` unknown. */
  readonly suits: string;
  /** The needs that it meets when made separately, by number: `1+2 5`; empty for none. */
  readonly made: string;
}

export interface ComparisonView {
  readonly counts: readonly string[];
  readonly rows: readonly {
    readonly package: string;
    readonly totals: readonly string[];
    readonly perGuest: readonly string[];
  }[];
  /** Which of the counts is the proposal's own; -1 where none is. */
  readonly own: number;
  /** Every package line by line at the proposal's own count: a cell of a row for each, in the order of `rows` above. */
  readonly lines: { readonly caption: string; readonly rows: readonly QuoteRow[] };
  readonly note: string;
}
