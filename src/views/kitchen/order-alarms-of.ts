import type { Book } from '../../book/book.ts';
import type { Finding } from '../../book/findings/finding.ts';
import { priceFinding } from '../../check/prices.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { statementsIn } from '../../exports/words/statement-text.ts';
import { orderPlan } from '../../solver/order-plan.ts';
import { plannedTogether } from './schedule-for.ts';
import { sortedEvents } from './sorted-events.ts';
import { stockFor } from './stock-for.ts';

/**
 * What no buyer would sign in the orders of coming events, each told at the row of its pack: what the events' own pages
 * say too. Prices are left to the check of the lists. An event that cannot be planned has its own findings.
 */
export async function orderAlarmsOf(book: Book, today: Day): Promise<Finding[]> {
  const { kitchen, prices, suppliers } = book;
  const { secondSupplierSaves } = kitchen;
  const setting = { kitchen, suppliers, secondSupplierSaves, today };
  const inWords = statementsIn(kitchen.locale);
  const { plans } = plannedTogether(book, today);
  const found: Finding[] = [];
  for (const { offer } of sortedEvents(book, today).coming) {
    const plan = plans.get(offer.proposal);
    if (!plan) continue;
    const { order } = await orderPlan(plan, prices, stockFor(book, offer.proposal, today, plans), setting);
    for (const { code, pack, what, wayOut } of order.alarms)
      if (code === 'order-line-long' || code === 'left-over-long')
        found.push(priceFinding(book, code, pack, `${offer.proposal}: ${inWords(what)}`, inWords(wayOut)));
  }
  return found;
}
