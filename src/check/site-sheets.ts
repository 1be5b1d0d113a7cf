import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import type { Day } from '../engine/calendar/day.ts';
import type { KitVenue } from '../engine/kitchen/kit.ts';
import { notAsked, type SiteQuestion, siteFacts } from '../engine/menu/site-sheet.ts';
import { currentEvent } from '../offers/event/current-event.ts';

/** What is asked of a place for kit that goes by it. */
const ASKED_FOR_KIT: Readonly<Record<KitVenue, SiteQuestion>> = {
  water: 'water',
  power: 'power',
  cover: 'cover',
  cold: 'cold space',
  stairs: 'stairs',
};

/** Nobody gets in without these, whatever is cooked. */
const ALWAYS: readonly SiteQuestion[] = ['way in', 'parking', 'contact', 'phone'];

/**
 * What the site sheet of a coming event’s place does not say although the event depends on it: how to get in and whom to call, and
 * what the kitchen’s kit goes by. One note for each event; a place where none is coming is left alone.
 */
export function siteSheetsOn(book: Book, today: Day): Finding[] {
  const byKit = [...(book.kitchen.kit?.values() ?? [])].flatMap(({ venue }) => venue);
  const asked = new Set<SiteQuestion>([...ALWAYS, ...byKit.map((each) => ASKED_FOR_KIT[each])]);
  return [...book.events.keys()].flatMap((id) => {
    const event = currentEvent(book, id);
    const proposal = book.proposals.get(id);
    const sheet = proposal?.siteSheet;
    if (!event.ok || !sheet) return [];
    const { date } = event.value.status;
    if (date === null || date < today) return [];
    const missing = notAsked(siteFacts(sheet, proposal.venue)).filter((each) => asked.has(each));
    if (missing.length === 0) return [];
    const what = `nobody has asked about ${missing.join(', ')} at ${sheet.name}, where ${id} takes place on ${date}`;
    const wayOut = 'print the form from its page in the kitchen’s site, ask, and write the answers here';
    return [findingAt(book, 'site-not-asked', `site-sheet/${sheet.id}`, [], what, wayOut)];
  });
}
