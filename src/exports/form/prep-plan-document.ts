import type { PlanOrder, PlanPurchase } from './buying-document.ts';
import type { PlanChangesDocument } from './changes-document.ts';
import type { PlanDay, PlanTimelineEntry } from './day-document.ts';
import type { PlanAlert, PlanCoverage, PlanEventFacts } from './event-document.ts';
import type { PlanDish, PlanRecipe } from './food-document.ts';
import type { PlanOdds } from './odds-document.ts';
import type { SafetySheetDocument } from './safety-sheet-document.ts';
import type { PackOutLine, PlanLabel } from './sheets-document.ts';
import type { PlanTables } from './tables-document.ts';

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
