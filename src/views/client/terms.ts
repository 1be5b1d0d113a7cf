import type { Day } from '../../engine/calendar/day.ts';
import type { AnswerWay } from '../../engine/kitchen/answer-way.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { Guests } from '../../engine/quote/counts.ts';
import type { Terms } from '../../engine/quote/terms.ts';

/**
 * What the page's script computes from: frozen sell-side terms and what to do with an answer. It is embedded in the
 * public page as it is, so nothing stands in it that a client may not read.
 */
export interface ClientTerms {
  readonly version: 1;
  /** `closed`: nothing is left to answer. */
  readonly state: 'draft' | 'offered' | 'accepted' | 'closed';
  readonly proposal: string;
  readonly occasion: string;
  /** 0 for a draft. */
  readonly revision: number;
  /** Empty for a draft. */
  readonly digest: string;
  /** Null for a draft. */
  readonly issued: Day | null;
  readonly validUntil: Day;
  readonly kitchen: { readonly name: string; readonly email: string; readonly timeZone: string };
  readonly answers: AnswerWay;
  readonly terms: Terms;
  /** Meals of the caterer's own people, which the client does not choose. */
  readonly staff: number;
  /** People by group as proposed, which the bounds of an answer hang on. */
  readonly proposed: Guests;
  /** What is proposed of each package, in the order of the terms. */
  readonly choices: readonly Choice[];
  readonly needs: readonly NeedTerms[];
  /** Whether the client is told of guest counts at which more guests cost less in all. */
  readonly tellPriceSteps: boolean;
  /** What was accepted and until when its counts may change; null before. */
  readonly accepted: AcceptedCounts | null;
}

/** A dietary need or allergy that the page names by itself. */
export interface NeedTerms {
  /** As an acceptance names it: `vegan`, `tree nuts`. */
  readonly name: string;
  /** As the page shows it: `vegan`, `allergy: tree nuts`. */
  readonly label: string;
  /** Recipe ids of the dishes that suit it; null where nobody can say yet. */
  readonly suits: readonly string[] | null;
  /** Recipe ids of the dishes of which nobody knows; missing for none. */
  readonly ask?: readonly string[];
}

/** An accepted choice as the page lets its counts change. */
export interface AcceptedCounts {
  /** What was accepted, with the counts given last. */
  readonly choice: Choice;
  /** The people accepted at first. */
  readonly guests: Guests;
  /** The last day on which the count may fall. */
  readonly until: Day;
  /** The fewest guests at the table that are billed. */
  readonly floor: number;
}
