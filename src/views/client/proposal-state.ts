import type { Day } from '../../engine/calendar/day.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { Guests } from '../../engine/quote/counts.ts';
import { clockText } from '../../exports/words/clock-text.ts';
import { dateText } from '../../exports/words/date-text.ts';
import type { EventState } from '../../offers/event/status.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import type { OfferState } from '../../offers/offer-state.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { guestsText } from '../quote-view-of.ts';

/** When an accepted event takes place, as far as it does. */
export interface EventDay {
  readonly state: EventState;
  /** Null once cancelled, and while postponed without a new day. */
  readonly date: Day | null;
}

/** What of a proposal's page says where it stands. */
interface ShownState {
  readonly content: OfferContent;
  readonly state: OfferState;
  readonly issued: { readonly revision: number; readonly on: Day } | null;
  readonly accepted: { readonly on: Day } | null;
  readonly event: EventDay | null;
}

/** One or two sentences on the state, for the top of page and sheets. */
export function stateSentences({ state, content, issued, accepted, event }: ShownState): string {
  const { locale } = content.terms;
  const say = wordsIn(locale);
  const spoken = {
    revision: issued?.revision ?? 0,
    issued: issued ? dateText(issued.on, locale) : '',
    until: dateText(content.validUntil, locale),
  };
  switch (state) {
    case 'draft':
      return say('page.state.draft');
    case 'offered':
      return say('page.state.offered', spoken);
    case 'expired':
      return say('page.state.expired', spoken);
    case 'withdrawn':
      return say('page.state.withdrawn');
    case 'accepted': {
      if (!accepted) return say('page.state.offered', spoken);
      const agreed = say('page.state.accepted', { ...spoken, accepted: dateText(accepted.on, locale) });
      return event ? `${agreed} ${say(EVENT_WORDS[event.state])}` : agreed;
    }
  }
}

const EVENT_WORDS: Readonly<Record<EventState, WordKey>> = {
  accepted: 'page.event.accepted',
  confirmed: 'page.event.confirmed',
  postponed: 'page.event.postponed',
  cancelled: 'page.event.cancelled',
};

/**
 * Who for, when, where and for how many: the day is the event's own once it has been moved, and once it is recorded who
 * came, the guests are those, beside the count that was planned for where that is another.
 */
export function factsOf(
  shown: ShownState,
  choice: Choice,
  served: Guests | null,
): { label: string; value: string }[] {
  const { content } = shown;
  const { locale } = content.terms;
  const say = wordsIn(locale);
  const venue = [content.venue.name, content.venue.address].filter((text) => text !== undefined).join(', ');
  return [
    { label: say('page.fact.for'), value: content.client.name },
    { label: say('page.fact.when'), value: whenText(shown, say) },
    {
      label: say('page.fact.where'),
      value: venue === '' ? content.placeName : `${venue}, ${content.placeName}`,
    },
    { label: say('page.fact.guests'), value: cameText(choice, served, locale) },
  ];
}

function cameText(choice: Choice, served: Guests | null, locale: string): string {
  const script = scriptWordsIn(locale);
  const planned = guestsText(script, choice);
  if (!served) return planned;
  const say = wordsIn(locale);
  const came = guestsText(script, { guests: served });
  return came === planned ? say('page.came', { came }) : say('page.came-planned', { came, planned });
}

function whenText({ content, event }: ShownState, say: Say): string {
  const { locale } = content.terms;
  const offered = dateText(content.date, locale);
  if (event?.state === 'cancelled') return say('page.when.cancelled', { date: offered });
  if (event && event.date === null) return say('page.when.postponed', { date: offered });
  const time = clockText(content.serveAt, locale);
  return event?.date && event.date !== content.date
    ? say('page.when.moved', { date: dateText(event.date, locale), time, offered })
    : say('page.when', { date: offered, time });
}

/** The terms as they hold on the day that the event was moved to; what was offered stays as it is in the offer. */
export function onItsDay({ content, event }: Pick<ShownState, 'content' | 'event'>): OfferContent {
  return event?.date ? { ...content, terms: { ...content.terms, eventDate: event.date } } : content;
}
