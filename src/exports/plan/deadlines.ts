import type { Say } from '../../words/words-in.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';

/** A day by which something of an event has to be done. */
export interface PlanDeadline {
  /** The same for as long as the deadline is meant, whatever day it falls on. */
  readonly id: string;
  /** ISO 8601 */
  readonly date: string;
  readonly what: string;
}

/**
 * The days by which the final count, each order and each payment still open are due, also those that are past: a
 * calendar that had them keeps them. Without a sum, since the whole crew reads them.
 */
export function planDeadlines({ event, orders }: PrepPlanDocument, say: Say): PlanDeadline[] {
  const last = ({ id, date, what }: PlanDeadline) => ({ id: `${event.id}.${id}`, date, what });
  return [
    {
      id: 'final-count',
      date: event.guarantee.until,
      what: say('lists.deadline.count', { event: event.occasion }),
    },
    ...orders.map(({ supplier, name, orderBy }) => ({
      id: `order-${supplier}`,
      date: orderBy,
      what: say('lists.deadline.order', { supplier: name, event: event.occasion }),
    })),
    ...event.payments.map(({ label, what = label, due }) => ({
      id: `payment-${idIn(label)}`,
      date: due,
      what: say('lists.deadline.payment', { payment: what, event: event.occasion }),
    })),
  ]
    .filter(({ date }) => date !== '')
    .map(last);
}

/** A payment’s label as part of an id: `40 % 30 days before` is `40-30-days-before`. */
function idIn(label: string): string {
  return label
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
}
