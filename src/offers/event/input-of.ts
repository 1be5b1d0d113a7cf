import type { Book } from '../../book/book.ts';
import { addDays } from '../../engine/calendar/day.ts';
import { menuDishes } from '../../engine/menu/fillers.ts';
import type { KeepBack } from '../../engine/menu/keep-back.ts';
import { siteFacts } from '../../engine/menu/site-sheet.ts';
import { timeAway } from '../../engine/menu/time-away.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { EventDish, EventInput } from '../../engine/plan/event-input.ts';
import { callChangedIn } from './call-changed.ts';
import { clockFacts } from './clock-facts.ts';
import { crewDishes, crewMealOf } from './crew-dishes.ts';
import { currentEvent } from './current-event.ts';
import { eventDishes } from './dishes.ts';
import { eventDrinks, onHotDay } from './drinks.ts';

/**
 * All that planning an event needs, from what the client accepted and guaranteed and the kitchen as it is now, on the
 * day it takes place. Fails where there is no such event, it is cancelled or has no day, or a recipe it serves is
 * gone or held back.
 */
export function eventInputOf(book: Book, event: string): Parsed<EventInput> {
  const found = currentEvent(book, event);
  if (!found.ok) return found;
  const { offer, status } = found.value;
  const { choice, date } = status;
  if (date === null)
    return status.state === 'cancelled'
      ? notParsed(`${event} is canceled, so nothing is cooked for it`, 'its history is kept under events')
      : notParsed(`${event} is postponed without a new date`, 'set the new date with `postpone` --to');
  const accepted = offer.terms.packages.find((each) => each.id === choice.package);
  if (!accepted)
    throw new Error(`a checked acceptance of ${event} chooses a package that is not in its offer`);
  const dishes = eventDishes(book, accepted, choice, status.substitutions);
  if (!dishes.ok) return dishes;
  const crew = crewDishes(book, event, dishes.value, choice.guests, status.substitutions);
  if (!crew.ok) return crew;
  const proposal = book.proposals.get(event);
  const drinks = eventDrinks(book, accepted, choice, dishes.value, proposal?.weather?.high);
  const planned = withSeconds(dishes.value, proposal?.keepBack);
  return parsed({
    id: event,
    occasion: offer.occasion,
    client: offer.client.name,
    date,
    serveAt: offer.serveAt,
    placeName: offer.placeName,
    venue: proposal?.siteSheet
      ? siteFacts(proposal.siteSheet, proposal.venue)
      : new Map(Object.entries(offer.venue)),
    ...(proposal?.siteSheet && { siteSheet: proposal.siteSheet.id }),
    style: accepted.style,
    packageName: accepted.name,
    packageId: accepted.id,
    guests: choice.guests,
    needs: new Map(Object.entries(choice.needs)),
    noMeat: book.kitchen.noMeat,
    alternatives: menuDishes(book.packages.values()),
    callChanged: callChangedIn(book.kitchen.locale),
    dishes: drinks?.hotDay ? onHotDay(planned, drinks.hotDay) : planned,
    ...(crew.value.length > 0 && { crewDishes: crew.value }),
    ...(crewMealOf(book, proposal)?.kind === 'none' && { crewBringsOwn: true as const }),
    ...(proposal?.keepBack && { keepBack: proposal.keepBack }),
    ...(drinks && { drinks }),
    lines: proposal?.lines ?? 1,
    attendance: proposal ? proposal.attendance : book.kitchen.attendance,
    ...(proposal && { away: timeAway(proposal, accepted.hours ?? null) }),
    ...clockFacts(book, offer, accepted, choice),
    buyingDay: addDays(date, -book.kitchen.buying),
  });
}

/** The menu's dishes with what is cooked on top of them for second helpings, as so much more overage. */
function withSeconds(
  dishes: readonly EventDish[],
  { share, inAddition }: KeepBack = {},
): readonly EventDish[] {
  if (!share || !inAddition) return dishes;
  return dishes.map((dish) =>
    dish.extra || dish.drink ? dish : { ...dish, overage: dish.overage.add(share) },
  );
}
