import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { digestOfRecord } from '../../offers/digest.ts';

/**
 * The number of a plan, `4F2A9C`: the same as long as nothing that is cooked, packed, served or measured changes, so that
 * an old sheet is told from a new one. What is paid, decided or still open does not count.
 */
export function planNumber(plan: PrepPlanDocument): string {
  const { event, findings: _, lastChange: __, orders: ___, ...work } = plan;
  const { date, serveAt, guests, needs } = event;
  return numberOf({ ...work, date, serveAt, guests, needs });
}

/** The same of anything that sheets are made from. */
export function numberOf(data: object): string {
  return digestOfRecord(data).slice(0, 6).toUpperCase();
}
