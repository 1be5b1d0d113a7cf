import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { timeAway } from '../../engine/menu/time-away.ts';
import { type Money, money, sum } from '../../engine/money/money.ts';
import { eventClock } from '../../engine/plan/clock/event-clock.ts';
import { type KitchenHours, kitchenHours } from '../../engine/plan/clock/kitchen-presence.ts';
import { type RoleHours, roleHours, soldShort } from '../../engine/plan/clock/presence.ts';
import { payFor } from '../../engine/plan/money/pay-for.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { soldCrewOf } from '../../offers/event/clock-facts.ts';
import { plannedTogether } from './schedule-for.ts';

/**
 * When each role that a choice of a proposal sells would be at work; nothing of it needs a plan. An event still to come has
 * its hours from the one schedule, where its truck may be loaded earlier. Undefined where the proposal is gone or it is not
 * stated how long is served.
 */
export function hoursOfChoice(
  book: Book,
  id: string,
  terms: Terms,
  choice: Choice,
  today: Day,
): RoleHours[] | undefined {
  const proposal = book.proposals.get(id);
  const chosen = terms.packages.find((each) => each.id === choice.package);
  if (!proposal || !chosen) return undefined;
  const sold = soldCrewOf(book, terms, choice);
  const away = timeAway(proposal, chosen.hours ?? null);
  const { serveAt } = book.offers.get(id)?.at(-1) ?? proposal;
  const clock = eventClock({ serveAt, style: chosen.style, away, dishes: [] }, book.kitchen.day);
  const load = book.events.has(id) ? loadedAt(book, id, today) : undefined;
  return roleHours(sold, load === undefined ? clock : { ...clock, load });
}

function loadedAt(book: Book, id: string, today: Day): number | undefined {
  const { plans, schedule } = plannedTogether(book, today);
  const plan = plans.get(id);
  const served = plan && schedule.on(plan.input.date).clock.served.find((each) => each.plan === plan);
  return served?.load.begins;
}

/** What the kitchen’s crew gives to an event; no line of a quote sells it by the hour. */
export interface KitchenPaid extends KitchenHours {
  /** Null where the crew’s pay is not stated. */
  readonly pay: Money | null;
}

/** The kitchen’s hours of an event still to come, as accepted, by the one schedule; undefined for any other proposal. */
export function kitchenPaid(book: Book, id: string, today: Day): KitchenPaid | undefined {
  const { plans, schedule } = plannedTogether(book, today);
  const plan = plans.get(id);
  const hours = plan && kitchenHours(plan, schedule);
  const { crew, currency } = book.kitchen;
  return (
    hours && {
      ...hours,
      pay: crew?.pay === undefined ? null : payFor(hours.there, money(crew.pay, currency)),
    }
  );
}

/** Hours that an event takes and that are not sold. */
export interface HoursNotSold {
  readonly roles: readonly RoleHours[];
  /** What they are paid; null where a role’s pay is not known. */
  readonly cost: Money | null;
}

/** What is not sold of the hours needed; undefined where all of it is. */
export function hoursNotSold(
  hours: readonly RoleHours[] | undefined,
  { staff, currency }: Pick<Kitchen, 'staff' | 'currency'>,
): HoursNotSold | undefined {
  const roles = soldShort(hours ?? []);
  if (roles.length === 0) return undefined;
  const paid = roles.flatMap(({ sold, missing }) => {
    const pay = staff.get(sold.role)?.pay;
    return pay === undefined ? [] : [payFor(missing, money(pay, currency))];
  });
  return { roles, cost: paid.length === roles.length ? sum(paid, currency) : null };
}
