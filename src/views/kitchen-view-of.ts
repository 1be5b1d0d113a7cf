import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { dateText } from '../exports/date-text.ts';
import type { PrepPlanDocument } from '../exports/prep-plan-document.ts';
import { offerState } from '../offers/offer-state.ts';
import type { BrandView } from './brand-view.ts';
import type { BannerView, KitchenView } from './kitchen-view.ts';
import type { PlannedEvent } from './planned-event.ts';
import { guestsText, shown } from './quote-view-of.ts';

/** The kitchen's front page: coming events by date, the days with work, and the proposals. */
export function kitchenView(
  book: Book,
  events: readonly PlannedEvent[],
  brand: BrandView,
  banner: BannerView | null,
  today: Day,
): KitchenView {
  const { locale } = book.kitchen;
  return {
    kind: 'kitchen',
    brand,
    banner,
    todayText: dateText(today, locale),
    events: events.map(({ id, offer, status, plan }) => ({
      id,
      occasion: offer.occasion,
      client: offer.client.name,
      dateText: dateText(offer.date, locale),
      serveAt: offer.serveAt,
      state: status.state,
      guests: guestsText(status.choice),
      place: offer.placeName,
      planned: plan.ok,
      held: plan.ok ? '' : plan.what,
    })),
    days: daysOf(events, locale),
    proposals: proposalsOf(book, today),
  };
}

function daysOf(events: readonly PlannedEvent[], locale: string): KitchenView['days'] {
  const tasks = new Map<string, number>();
  for (const plan of plansOf(events))
    for (const day of plan.days) tasks.set(day.date, (tasks.get(day.date) ?? 0) + day.tasks.length);
  return [...tasks]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([date, count]) => ({
      date,
      dateText: dateText(date as Day, locale),
      tasks: `${count} ${count === 1 ? 'task' : 'tasks'}`,
    }));
}

function plansOf(events: readonly PlannedEvent[]): PrepPlanDocument[] {
  return events.flatMap(({ plan }) => (plan.ok ? [plan.value] : []));
}

function proposalsOf(book: Book, today: Day): KitchenView['proposals'] {
  return [...book.proposals.values()]
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.id < b.id ? -1 : 1))
    .map((proposal) => {
      const offer = book.offers.get(proposal.id)?.at(-1);
      const total = offer?.samples[0]?.total;
      return {
        id: proposal.id,
        occasion: proposal.occasion,
        client: proposal.client.name,
        state: offerState(book, proposal, today),
        dateText: dateText(proposal.date, book.kitchen.locale),
        total: offer && total ? shown(total, offer.terms) : '',
        link: offer || proposal.shareDraft ? proposal.link : '',
      };
    });
}
