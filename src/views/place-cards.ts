import type { PlanSeat } from '../exports/plan-tables-document.ts';
import type { PrepPlanDocument } from '../exports/prep-plan-document.ts';
import type { BrandView } from './brand-view.ts';

/** A card for every guest's place, for printing. */
export interface PlaceCardsView {
  readonly kind: 'place cards';
  readonly brand: BrandView;
  /** Occasion, client and day. */
  readonly job: string;
  readonly seats: readonly PlanSeat[];
}

/** The place cards of an event that is carried to the table and has a guest list; null for any other. */
export function placeCards(
  { event, tables }: Pick<PrepPlanDocument, 'event' | 'tables'>,
  brand: BrandView,
): PlaceCardsView | null {
  if (event.style !== 'plated' || !tables) return null;
  const job = `${event.occasion}, ${event.client}, ${event.dateText}`;
  return { kind: 'place cards', brand, job, seats: tables.seats };
}
