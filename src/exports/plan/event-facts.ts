import type { Book } from '../../book/book.ts';
import { daysBeforeText } from '../../engine/calendar/offset.ts';
import { durationText } from '../../engine/measure/duration.ts';
import { instalmentLabel } from '../../engine/money/instalments.ts';
import { moneyText } from '../../engine/money/money.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import type { Offer } from '../../schema/offer.ts';
import type { PlanEventFacts } from '../form/event.ts';
import { dateText } from '../words/date-text.ts';
import { openPaymentLabel } from '../words/open-payment-label.ts';

/** What an event's plan says of the event itself. */
export function eventFacts(
  book: Book,
  plan: EventPlan,
  offer: Offer,
  status: EventStatus,
): Omit<PlanEventFacts, 'decided' | 'open'> {
  const { input } = plan;
  const { locale, measures } = book.kitchen;
  const { guarantee, currency } = offer.terms;
  return {
    id: input.id,
    occasion: input.occasion,
    client: input.client,
    state: status.state,
    date: input.date,
    dateText: dateText(input.date, locale),
    serveAt: input.serveAt,
    place: input.placeName,
    venue: [...input.venue].map(([label, value]) => ({ label, value })),
    ...(input.siteSheet && { siteSheet: input.siteSheet }),
    ...(input.vehicle && { vehicle: input.vehicle.name }),
    travel: input.away?.travel === undefined ? '' : durationText(input.away.travel),
    package: input.packageName,
    style: input.style,
    lines: input.lines,
    guests: input.guests,
    needs: [...input.needs].map(([need, guests]) => ({ need, guests })),
    offer: {
      revision: offer.revision,
      digest: offer.digest,
      acceptedOn: status.accepted.acceptance.accepted,
    },
    guarantee: {
      deadline: daysBeforeText(guarantee.daysBefore),
      floor: guarantee.floorRate,
      until: status.deadline ?? '',
      floorGuests: status.floor,
      givenOn: status.guarantee?.given ?? status.guarantee?.on ?? '',
    },
    payments: status.open.map((row) => ({
      label: row.instalment
        ? instalmentLabel(row.instalment, currency, offer.terms.locale)
        : 'to be paid back',
      what: openPaymentLabel(row, offer.terms),
      due: row.due ?? '',
      amount: moneyText(row.amount),
    })),
    received: status.received.map(({ on, amount }) => ({ on, amount: moneyText(amount) })),
    total: moneyText(status.total),
    currency,
    measures,
  };
}
