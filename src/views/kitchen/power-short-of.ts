import type { Book } from '../../book/book.ts';
import type { Finding } from '../../book/findings/finding.ts';
import { atVenue } from '../../check/at-venue.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { servedOf } from '../../engine/plan/clock/event-work.ts';
import { broughtTo } from '../../engine/plan/load/brought.ts';
import { powerPlan } from '../../engine/plan/load/power.ts';
import { offText, wayOutText } from '../../exports/words/power-words.ts';
import { offerInUse, useText } from '../../offers/offer-in-use.ts';
import { wordsIn } from '../../words/words-in.ts';
import { plannedTogether } from './schedule-for.ts';

/** Coming events at whose venues what is lit at the same time draws more than the circuits carry. */
export function powerShortOf(book: Book, today: Day): Finding[] {
  const { plans, schedule } = plannedTogether(book, today);
  const say = wordsIn(book.kitchen.locale);
  return [...plans].flatMap(([id, { input }]): Finding[] => {
    const offer = offerInUse(book, id, today);
    const served = servedOf(input, schedule);
    const power = served && powerPlan(broughtTo(served, book.kitchen.equipment), input.venueKit?.circuits);
    if (!offer || !power?.stated || power.off.length === 0) return [];
    const what = say('power.for', { event: useText(book, offer), what: offText(power, say) });
    return [atVenue(book, offer, 'circuits-too-few', 'power', what, wayOutText(power, say))];
  });
}
