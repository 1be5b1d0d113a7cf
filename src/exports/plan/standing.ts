import type { Day } from '../../engine/calendar/day.ts';
import { PAY_BACK } from '../../engine/money/account.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { counted } from '../../engine/text/counted.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import type { Offer } from '../../schema/offer.ts';
import type { PlanOrder } from '../form/buying.ts';
import type { PlanEventFacts } from '../form/event.ts';
import type { PlanDish } from '../form/food.ts';
import type { PlanTables } from '../form/tables.ts';
import { dateText } from '../words/date-text.ts';

/** What a plan says besides its facts, as far as it decides or leaves open. */
export interface PlannedSoFar {
  readonly dishes: readonly PlanDish[];
  readonly orders: readonly PlanOrder[];
  readonly tables: PlanTables | null;
}

/**
 * What is decided of an event and what is still open, as on a day: sentences for whoever runs it, without a sum, since
 * the whole crew reads them. Open points come by the day they are due, those without one first.
 */
export function planStanding(
  offer: Offer,
  status: EventStatus,
  plan: PlannedSoFar,
  today: Day,
): Pick<PlanEventFacts, 'decided' | 'open'> {
  const said = (day: string) => dateText(day as Day, offer.terms.locale);
  const open = openPoints(status, plan, today).map(({ what, due }) => ({
    what,
    due: due ?? '',
    dueText: due ? said(due) : '',
    late: due !== null && due < today,
  }));
  return {
    decided: decidedPoints(offer, status, plan, today, said),
    open: open.sort((a, b) => (a.due === b.due ? 0 : a.due < b.due ? -1 : 1)),
  };
}

function decidedPoints(
  offer: Offer,
  status: EventStatus,
  { tables }: PlannedSoFar,
  today: Day,
  said: (day: string) => string,
): string[] {
  const { accepted, choice, deadline, floor, guarantee } = status;
  const guests = `${counted(atTable(choice.guests), 'guest')} at the table`;
  const since = accepted.acceptance.accepted;
  return [
    `The menu: revision ${offer.revision} of the offer, accepted on ${said(since)}.`,
    ...(status.state === 'confirmed' ? ['The date: it is kept for this event.'] : []),
    ...(guarantee
      ? [
          `The count: ${guests}, guaranteed on ${said(guarantee.given ?? guarantee.on)}. ${floor} ${floor === 1 ? 'is' : 'are'} billed at least.`,
        ]
      : []),
    ...(!guarantee && isPast(deadline, today)
      ? [
          `The count: ${guests} as accepted. Its deadline has passed, so it may only rise; ${floor} ${floor === 1 ? 'is' : 'are'} billed at least.`,
        ]
      : []),
    ...(tables ? [`Who sits where and takes what: the guest list of ${tables.givenOnText}.`] : []),
  ];
}

interface OpenPoint {
  readonly what: string;
  readonly due: Day | null;
}

function openPoints(status: EventStatus, plan: PlannedSoFar, today: Day): OpenPoint[] {
  const { choice, deadline, floor, guarantee } = status;
  const takes = Object.keys(choice.mains);
  return [
    ...(status.state === 'confirmed'
      ? []
      : [{ what: 'The date is held and not kept until the event is confirmed.', due: null }]),
    ...(guarantee === undefined && deadline !== null && !isPast(deadline, today)
      ? [
          {
            what: `The final count: ${counted(atTable(choice.guests), 'guest')} at the table as accepted; ${floor} ${floor === 1 ? 'is' : 'are'} billed at least.`,
            due: deadline,
          },
        ]
      : []),
    ...(Object.keys(choice.needs).length === 0
      ? [{ what: 'What guests do not eat: the client has not said.', due: deadline }]
      : []),
    ...(takes.length > 0 && !plan.tables
      ? [
          {
            what: `Who takes which at the table: ${takes.join(', ')}. There is no guest list.`,
            due: deadline,
          },
        ]
      : []),
    ...plan.dishes
      .filter(({ unsaid }) => unsaid.length > 0)
      .map(({ name, unsaid }) => ({
        what: `Allergens of ${name}: nobody has said them of ${unsaid.join(', ')}.`,
        due: null,
      })),
    ...plan.orders.map(({ name, orderBy }) => ({ what: `The order from ${name}.`, due: orderBy as Day })),
    ...status.open.map(({ label, due }) => ({
      what: label === PAY_BACK ? 'Money to pay back to the client.' : `A payment: ${label}.`,
      due,
    })),
  ];
}

const isPast = (day: Day | null, today: Day) => day !== null && day < today;
