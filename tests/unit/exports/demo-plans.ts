import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readBook } from '../../../src/check/read-book.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { plannedEvents } from '../../../src/views/kitchen/planned-event.ts';
import { sortedEvents } from '../../../src/views/kitchen/sorted-events.ts';
import { day } from '../offers/second-kitchen.ts';

const content = join(fileURLToPath(new URL('../../..', import.meta.url)), 'content');
const TODAY = day('2027-04-26');

/** The plans of the demo's coming events. */
export async function demoPlans(): Promise<PrepPlanDocument[]> {
  const { book } = await readBook(content);
  if (!book) throw new Error('the demo’s content cannot be read');
  const ids = sortedEvents(book, TODAY).coming.map(({ offer }) => offer.proposal);
  const events = await plannedEvents(book, ids, TODAY);
  return events.flatMap(({ plan }) => (plan.ok ? [plan.value] : []));
}
