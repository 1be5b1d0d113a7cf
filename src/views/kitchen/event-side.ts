import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { type Parsed, parsed } from '../../engine/parsed.ts';
import { eventHours } from '../../engine/plan/clock/event-work.ts';
import { type KitchenHours, kitchenHours } from '../../engine/plan/clock/kitchen-presence.ts';
import type { RoleHours } from '../../engine/plan/clock/presence.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import type { OrderedPlan } from '../../engine/plan/purchases/ordered.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { prepPlan } from '../../exports/plan/prep-plan.ts';
import { currentEvent } from '../../offers/event/current-event.ts';
import { eventInputOf } from '../../offers/event/input-of.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import { bodyKey } from '../../offers/issue/body-key.ts';
import { orderPlan } from '../../solver/order-plan.ts';
import { type Planned, plannedBeside, plannedTogether } from './schedule-for.ts';
import { stockFor } from './stock-for.ts';

/** An event planned as its facts stand: in exact values, and as the document made from them. */
export interface EventSide {
  readonly status: EventStatus;
  readonly plan: OrderedPlan;
  readonly document: PrepPlanDocument;
  /** When each role works at it; undefined where it is not stated how long is served. */
  readonly hours: readonly RoleHours[] | undefined;
  /** What the kitchen’s crew gives to it, by the one schedule; undefined where it is not known who works when. */
  readonly kitchenHours: KitchenHours | undefined;
}

/**
 * Plans an event and what is ordered for it, as on a day: stock goes to the events that are still to come, and an
 * order that had to go out before it is told. Its clock is that of all events together; `others` are those beside it
 * where they are planned already. Fails where there is none, it has no day, or something it serves is gone or
 * held back.
 */
export async function eventSide(
  book: Book,
  id: string,
  today: Day,
  others?: Planned,
): Promise<Parsed<EventSide>> {
  const found = currentEvent(book, id);
  if (!found.ok) return found;
  const { offer, status } = found.value;
  const input = eventInputOf(book, id);
  if (!input.ok) return input;
  const { kitchen, prices, suppliers } = book;
  const { secondSupplierSaves } = kitchen;
  const together = others ?? plannedTogether(book, today);
  const known = others ? undefined : together.plans.get(id);
  const { plans, schedule } = known ? together : plannedBeside(book, input.value, together);
  const own = known ?? (plans.get(id) as EventPlan);
  const plan = await orderPlan(own, prices, stockFor(book, id, today, plans), {
    kitchen,
    suppliers,
    secondSupplierSaves,
    today,
  });
  const notesOf = (recipe: string) => bodyKey(book.recipeBodies.get(recipe) ?? '');
  const document = prepPlan(book, plan, schedule, offer, status, notesOf, today);
  return parsed({
    status,
    plan,
    document,
    hours: eventHours(plan, schedule),
    kitchenHours: kitchenHours(plan, schedule),
  });
}
