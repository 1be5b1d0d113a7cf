import type { Day } from '../../engine/calendar/day.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { Guests } from '../../engine/quote/counts.ts';
import { clockText } from '../../exports/words/clock-text.ts';
import { dateText } from '../../exports/words/date-text.ts';
import type { EventState } from '../../offers/event/status.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import type { OfferState } from '../../offers/offer-state.ts';
import { guestsText } from '../quote-view-of.ts';

/** When an accepted event takes place, as far as it does. */
export interface EventDay {
  readonly state: EventState;
  /** Null once cancelled, and while postponed without a new day. */
  readonly date: Day | null;
}

/** What of a proposal's page says where it stands. */
interface Standing {
  readonly content: OfferContent;
  readonly state: OfferState;
  readonly issued: { readonly revision: number; readonly on: Day } | null;
  readonly accepted: { readonly on: Day } | null;
  readonly event: EventDay | null;
}

/** One or two sentences on the state, for the top of page and sheets. */
export function standingText({ state, content, issued, accepted, event }: Standing): string {
  const { locale } = content.terms;
  const revision = issued ? `Offer, revision ${issued.revision} of ${dateText(issued.on, locale)}` : '';
  switch (state) {
    case 'draft':
      return 'Draft: not an offer yet. Prices and menus may change, and it cannot be accepted.';
    case 'offered':
      return `${revision}, valid until ${dateText(content.validUntil, locale)}.`;
    case 'expired':
      return `${revision}. It was valid until ${dateText(content.validUntil, locale)} and can no longer be accepted; please ask us for a new one.`;
    case 'withdrawn':
      return 'This proposal was withdrawn and cannot be accepted. Please write to us if you have questions.';
    case 'accepted':
      return accepted
        ? `${revision}, accepted on ${dateText(accepted.on, locale)}.${event ? ` ${EVENT_WORDS[event.state]}` : ''}`
        : revision;
  }
}

const EVENT_WORDS: Readonly<Record<EventState, string>> = {
  accepted: 'We hold the date for you; it is confirmed when the deposit is in.',
  confirmed: 'The date is confirmed.',
  postponed: 'It is put off; the new day is not known yet.',
  cancelled: 'The event is cancelled.',
};

/**
 * Who for, when, where and for how many: the day is the event's own once it has been moved, and once it is recorded who
 * came, the guests are those, beside the count that was planned for where that is another.
 */
export function factsOf(
  standing: Standing,
  choice: Choice,
  served: Guests | null,
): { label: string; value: string }[] {
  const { content } = standing;
  const venue = [content.venue.name, content.venue.address].filter((text) => text !== undefined).join(', ');
  return [
    { label: 'For', value: content.client.name },
    { label: 'When', value: whenText(standing) },
    { label: 'Where', value: venue === '' ? content.placeName : `${venue}, ${content.placeName}` },
    { label: 'Guests', value: cameText(guestsText(choice), served) },
  ];
}

function cameText(planned: string, served: Guests | null): string {
  if (!served) return planned;
  const came = guestsText({ guests: served });
  return came === planned ? `${came} came` : `${came} came (final count: ${planned})`;
}

function whenText({ content, event }: Standing): string {
  const offered = dateText(content.date, content.terms.locale);
  if (event?.state === 'cancelled') return `Cancelled; it was planned for ${offered}`;
  if (event && event.date === null) return `Put off from ${offered}; the new day is not known yet`;
  const served = `served at ${clockText(content.serveAt, content.terms.locale)}`;
  return event?.date && event.date !== content.date
    ? `${dateText(event.date, content.terms.locale)}, ${served} (moved from ${offered}, the day in the offer)`
    : `${offered}, ${served}`;
}

/** The terms as they hold on the day that the event was moved to; what was offered stays as it is in the offer. */
export function onItsDay({ content, event }: Pick<Standing, 'content' | 'event'>): OfferContent {
  return event?.date ? { ...content, terms: { ...content.terms, eventDate: event.date } } : content;
}
