import type { Book } from '../book/book.ts';
import { addDays } from '../engine/calendar/day.ts';
import { type Parsed, parsed } from '../engine/parsed.ts';
import type { EventInput } from '../engine/plan/event-input.ts';
import { acceptedOffer } from './accepted-offer.ts';
import { eventDishes } from './event-dishes.ts';
import { eventStatus } from './event-status.ts';

/**
 * All that planning an event needs, from what the client accepted and the kitchen as it is now.
 * Fails where there is no such event, or a recipe it serves is gone or held back.
 */
export function eventInputOf(book: Book, event: string): Parsed<EventInput> {
  const found = acceptedOffer(book, event);
  if (!found.ok) return found;
  const { offer, facts } = found.value;
  const { choice } = eventStatus(offer, facts);
  const accepted = offer.terms.packages.find((each) => each.id === choice.package);
  if (!accepted)
    throw new Error(`a checked acceptance of ${event} chooses a package that is not in its offer`);
  const dishes = eventDishes(book, accepted, choice);
  if (!dishes.ok) return dishes;
  return parsed({
    id: event,
    occasion: offer.occasion,
    client: offer.client.name,
    date: offer.date,
    serveAt: offer.serveAt,
    placeName: offer.placeName,
    venue: new Map(Object.entries(offer.venue)),
    style: accepted.style,
    packageName: accepted.name,
    guests: choice.guests,
    needs: new Map(Object.entries(choice.needs)),
    dishes: dishes.value,
    lines: book.proposals.get(event)?.lines ?? 1,
    buyingDay: addDays(offer.date, -book.kitchen.buying),
  });
}
