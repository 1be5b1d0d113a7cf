import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import { dayShopping } from './day/shopping-of.ts';
import type { DayShopping } from './day/view.ts';

/** Events that buy in one order. */
export interface JointShopping {
  readonly plans: readonly EventPlan[];
  /** The first day on which any of them has work. */
  readonly first: Day;
  readonly shopping: DayShopping;
}

/**
 * One order for all events that hang together by days of work: where one shares a day with a second, and that with a
 * third, the three buy together, so that no event is in two orders. An event that shares no day is left out: its
 * own page has its order.
 */
export async function jointOrders(
  book: Book,
  plans: readonly EventPlan[],
  today: Day,
): Promise<JointShopping[]> {
  const orders: JointShopping[] = [];
  for (const group of connected(plans)) {
    const shopping = await dayShopping(book, group, today);
    const [first] = group.flatMap(({ days }) => days.map(({ date }) => date)).sort();
    if (shopping && first) orders.push({ plans: group, first, shopping });
  }
  return orders.sort((a, b) => (a.first < b.first ? -1 : 1));
}

function connected(plans: readonly EventPlan[]): EventPlan[][] {
  let groups: { dates: Set<Day>; plans: EventPlan[] }[] = [];
  for (const plan of plans) {
    const dates = new Set(plan.days.map(({ date }) => date));
    const touched = groups.filter((group) => [...dates].some((date) => group.dates.has(date)));
    const rest = groups.filter((group) => !touched.includes(group));
    groups = [
      ...rest,
      {
        dates: new Set([...touched.flatMap((group) => [...group.dates]), ...dates]),
        plans: [...touched.flatMap((group) => group.plans), plan],
      },
    ];
  }
  return groups.map((group) => group.plans);
}
