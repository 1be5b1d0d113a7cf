import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import type { PrepPlanDocument } from '../exports/form/prep-plan.ts';
import type { CurrentEvent } from '../offers/event/current-event.ts';
import type { SiteContent } from './site.ts';

/**
 * Writes down whose each file of an event or a day is: by the digest of the offer accepted, which no other kitchen's
 * event has, be its name the same.
 */
export function nameOwners(
  { pages, prints, files }: SiteContent,
  events: readonly CurrentEvent[],
  plans: readonly PrepPlanDocument[],
): void {
  const ofEvent = new Map(events.map(({ offer }) => [offer.proposal, [offer.digest]]));
  const ofDay = (date: string) => [
    ...new Set(
      plans
        .filter(({ days }) => days.some((day) => day.date === date))
        .map(({ event }) => event.offer.digest)
        .sort(),
    ),
  ];
  for (const each of [...pages, ...prints, ...files]) {
    const { kind, name } = placeOf(each.file);
    if (kind === 'events') each.of = ofEvent.get(name);
    if (kind === 'days') each.of = ofDay(name);
  }
}

/**
 * Whose a file of an event or a day that is over must be to stay; undefined for a file of neither. Recipes stay live
 * only until then, so what was cooked from is kept as it was and never made again. A day is known by any offer of this
 * kitchen, so that an event that cannot be read now takes no day away; and its own files stay, whether it is over or
 * not, since nobody knows.
 */
export function ownersOfOver(
  file: string,
  book: Book,
  past: readonly CurrentEvent[],
  today: Day,
): Pick<ReadonlySet<string>, 'has'> | undefined {
  const { kind, name } = placeOf(file);
  if (kind === 'events') {
    const event = past.find(({ offer }) => offer.proposal === name);
    if (book.held.has(`event/${name}`)) {
      const offers = new Set(book.offers.get(name)?.map(({ digest }) => digest));
      return offers.size > 0 ? offers : ANYBODY;
    }
    return event && new Set([event.offer.digest]);
  }
  if (kind !== 'days' || name >= today) return undefined;
  return new Set([...book.offers.values()].flat().map(({ digest }) => digest));
}

/** Where the offer cannot be read either, its digest is not known. */
const ANYBODY = { has: () => true };

/** Of `private/kitchen/days/2027-04-24/index.html`, `days` and the day; of an event's file, `events` and its name. */
function placeOf(file: string): { kind: string; name: string } {
  const [side, part, kind = '', name = ''] = file.split('/');
  return side === 'private' && part === 'kitchen' ? { kind, name } : { kind: '', name: '' };
}
