import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { moneyText, negate } from '../../engine/money/money.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { acceptanceFileName } from '../../offers/answers/acceptance-file-name.ts';
import { type CurrentEvent, currentEvent } from '../../offers/event/current-event.ts';
import { type OfferState, offerState } from '../../offers/offer-state.ts';
import type { Offer } from '../../schema/offer.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { BrandView } from '../brand/brand-view.ts';
import { guestsText, shown } from '../quote-view-of.ts';
import { balanceLabel } from './invoice-view-of.ts';
import type { JointShopping } from './joint-orders-of.ts';
import type { PlannedEvent } from './planned-event.ts';
import type { ShownPlan } from './shown-plans.ts';
import { siteSheetLinks } from './site-sheets-of.ts';
import type { SortedEvents } from './sorted-events.ts';
import type { BannerView, KitchenView } from './view.ts';

/**
 * The kitchen's front page: coming events by date, those that are cancelled or have no day, past ones not settled, the
 * days with work, and the proposals.
 */
export function kitchenView(
  book: Book,
  events: readonly PlannedEvent[],
  { apart, past }: Pick<SortedEvents, 'apart' | 'past'>,
  orders: readonly JointShopping[],
  brand: BrandView,
  banner: BannerView | null,
  today: Day,
  stale: readonly Pick<ShownPlan, 'id'>[],
): KitchenView {
  const { locale } = book.kitchen;
  const say = wordsIn(locale);
  return {
    kind: 'kitchen',
    brand,
    banner,
    todayText: dateText(today, locale),
    events: events.map(({ id, offer, status, plan }) => ({
      id,
      occasion: offer.occasion,
      client: offer.client.name,
      dateText: dateText(status.lastDate, locale),
      serveAt: offer.serveAt,
      state: status.state,
      guests: guestsText(scriptWordsIn(locale), status.choice),
      place: offer.placeName,
      planned: plan.ok || stale.some((each) => each.id === id),
      held: plan.ok ? '' : plan.what,
    })),
    apart: apart.map((event) => offOf(event, locale, say)),
    unsettled: past.flatMap((event) => unsettledOf(event, locale)),
    days: daysOf(events, locale, say),
    siteSheets: siteSheetLinks(book),
    buying: orders.map((order) => buyingOf(order)),
    proposals: proposalsOf(book, today),
  };
}

function offOf({ offer, status }: CurrentEvent, locale: string, say: Say): KitchenView['apart'][number] {
  const money = status.account.received;
  const received = money.amount.isZero()
    ? say('front.nothing-received')
    : say('front.received', { sum: displayMoney(money, locale) });
  return {
    id: offer.proposal,
    occasion: offer.occasion,
    client: offer.client.name,
    state: status.state,
    what: say('front.off-what', { day: dateText(status.lastDate, locale), received }),
  };
}

function unsettledOf({ offer, status }: CurrentEvent, locale: string): KitchenView['unsettled'] {
  const { balance } = status.account;
  if (balance.amount.isZero()) return [];
  const size = balance.amount.isNegative() ? negate(balance) : balance;
  return [
    {
      id: offer.proposal,
      occasion: offer.occasion,
      client: offer.client.name,
      dateText: dateText(status.lastDate, locale),
      label: balanceLabel(moneyText(balance), wordsIn(locale)),
      balance: displayMoney(size, locale),
    },
  ];
}

function daysOf(events: readonly PlannedEvent[], locale: string, say: Say): KitchenView['days'] {
  const tasks = new Map<string, number>();
  for (const plan of plansOf(events))
    for (const day of plan.days) tasks.set(day.date, (tasks.get(day.date) ?? 0) + day.tasks.length);
  return [...tasks]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([date, count]) => ({
      date,
      dateText: dateText(date as Day, locale),
      tasks: say('front.tasks', { n: count }),
    }));
}

function buyingOf({ first, shopping }: JointShopping): KitchenView['buying'][number] {
  const { events, total, saves, rounds } = shopping;
  const orders = rounds
    .flatMap((round) => round.orders)
    .toSorted((a, b) => (a.orderBy < b.orderBy ? -1 : a.orderBy > b.orderBy ? 1 : 0))
    .map(({ name, orderByText }) => ({ name, orderByText }));
  return { events, date: first, orders, total, saves };
}

function plansOf(events: readonly PlannedEvent[]): PrepPlanDocument[] {
  return events.flatMap(({ plan }) => (plan.ok ? [plan.value] : []));
}

/** Every proposal by date, and where it stands. */
export function proposalsOf(book: Book, today: Day): KitchenView['proposals'] {
  return [...book.proposals.values()]
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.id < b.id ? -1 : 1))
    .map((proposal) => {
      const event = currentEvent(book, proposal.id);
      const offer = event.ok ? event.value.offer : book.offers.get(proposal.id)?.at(-1);
      // What was accepted, else what is proposed; the invoice has what later counts make of it.
      const state = offerState(book, proposal, today);
      const total = event.ok ? event.value.status.accepted.acceptance.total : offer?.samples[0]?.total;
      return {
        id: proposal.id,
        occasion: proposal.occasion,
        client: proposal.client.name,
        state,
        dateText: dateText(proposal.date, book.kitchen.locale),
        total: offer && total ? shown(total, offer.terms) : '',
        link: offer || proposal.shareDraft ? proposal.link : '',
        next: proposal.date < today ? '' : nextOf(state, proposal.id, offer, book.kitchen.locale),
      };
    });
}

/** What an open proposal waits for and what its owner does next, for a day that is still to come. */
function nextOf(state: OfferState, id: string, offer: Offer | undefined, locale: string): string {
  const say = wordsIn(locale);
  const until = offer ? dateText(offer.validUntil, locale) : '';
  if (state === 'offered' && offer)
    return say('front.next-offered', { day: until, file: acceptanceFileName(id, offer.revision), id });
  if (state === 'expired') return say('front.next-expired', { day: until, id });
  if (state === 'draft') return say('front.next-draft', { id });
  return '';
}
