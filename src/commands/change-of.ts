import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import type { PlanChangesDocument } from '../exports/plan-changes-document.ts';
import { plannedEvent } from '../views/planned-event.ts';

/** What the last change of an event made of its plan, or the sentence that says why there is none to show. */
export async function changeOf(book: Book, event: string, today: Day): Promise<PlanChangesDocument | string> {
  const planned = await plannedEvent(book, event, today);
  if (!planned.ok) return planned.what;
  const { plan } = planned.value;
  if (!plan.ok) return `It cannot be planned now: ${plan.what} — ${plan.wayOut}.`;
  return plan.value.lastChange ?? 'The plan as it was before can no longer be made, so nothing is compared.';
}
