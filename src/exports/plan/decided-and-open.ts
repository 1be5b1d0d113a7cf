import type { Day } from '../../engine/calendar/day.ts';
import { atTable } from '../../engine/quote/counts.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import type { Offer } from '../../schema/offer.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { PlanOrder } from '../form/buying.ts';
import type { PlanEventFacts } from '../form/event.ts';
import type { PlanDish } from '../form/food.ts';
import type { PlanTables } from '../form/tables.ts';
import { dateText } from '../words/date-text.ts';
import { openPaymentLabel } from '../words/open-payment-label.ts';

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
export function decidedAndOpen(
  offer: Offer,
  status: EventStatus,
  plan: PlannedSoFar,
  today: Day,
): Pick<PlanEventFacts, 'decided' | 'open'> {
  const said = (day: string) => dateText(day as Day, offer.terms.locale);
  const say = wordsIn(offer.terms.locale);
  const open = openPoints(offer, status, plan, today, say).map(({ what, due }) => ({
    what,
    due: due ?? '',
    dueText: due ? said(due) : '',
    late: due !== null && due < today,
  }));
  return {
    decided: decidedPoints(offer, status, plan, today, said, say),
    open: open.sort((a, b) => (a.due === b.due ? 0 : a.due < b.due ? -1 : 1)),
  };
}

function decidedPoints(
  offer: Offer,
  status: EventStatus,
  { tables }: PlannedSoFar,
  today: Day,
  said: (day: string) => string,
  say: Say,
): string[] {
  const { accepted, choice, deadline, floor, guarantee } = status;
  const guests = guestsText(atTable(choice.guests), say);
  const since = accepted.acceptance.accepted;
  return [
    say('event.decided-menu', { n: offer.revision, day: said(since) }),
    ...(status.state === 'confirmed' ? [say('event.decided-date')] : []),
    ...(guarantee
      ? [say('event.decided-count', { guests, day: said(guarantee.given ?? guarantee.on), floor })]
      : []),
    ...(!guarantee && isPast(deadline, today) ? [say('event.decided-count-late', { guests, floor })] : []),
    ...(tables ? [say('event.decided-tables', { day: tables.givenOnText })] : []),
  ];
}

interface OpenPoint {
  readonly what: string;
  readonly due: Day | null;
}

function openPoints(
  { terms }: Offer,
  status: EventStatus,
  plan: PlannedSoFar,
  today: Day,
  say: Say,
): OpenPoint[] {
  const { choice, deadline, floor, guarantee } = status;
  const takes = Object.keys(choice.mains);
  return [
    ...(status.state === 'confirmed' ? [] : [{ what: say('event.open-date'), due: null }]),
    ...(guarantee === undefined && deadline !== null && !isPast(deadline, today)
      ? [
          {
            what: say('event.open-count', { guests: guestsText(atTable(choice.guests), say), floor }),
            due: deadline,
          },
        ]
      : []),
    ...(Object.keys(choice.needs).length === 0 ? [{ what: say('event.open-needs'), due: deadline }] : []),
    ...(takes.length > 0 && !plan.tables
      ? [
          {
            what: say('event.open-tables', { courses: takes.join(', ') }),
            due: deadline,
          },
        ]
      : []),
    ...plan.dishes
      .filter(({ unsaid }) => unsaid.length > 0)
      .map(({ name, unsaid }) => ({
        what: say('event.open-allergens', { dish: name, foods: unsaid.join(', ') }),
        due: null,
      })),
    ...plan.orders.map(({ name, orderBy }) => ({
      what: say('event.open-order', { supplier: name }),
      due: orderBy as Day,
    })),
    ...status.open.map((row) => ({
      what:
        row.instalment === null
          ? say('event.open-refund')
          : say('event.open-payment', { payment: openPaymentLabel(row, terms) }),
      due: row.due,
    })),
  ];
}

const isPast = (day: Day | null, today: Day) => day !== null && day < today;

/** `1 guest`, `84 guests`. */
function guestsText(guests: number, say: Say): string {
  return say('why.guests', { n: guests, count: `${guests}` });
}
