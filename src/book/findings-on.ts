import type { Day } from '../engine/calendar/day.ts';
import type { Offer } from '../schema/offer.ts';
import type { Book } from './book.ts';
import { eventDate } from './event-date.ts';
import { type Finding, finding } from './finding.ts';

/**
 * What is wrong on a day: a recipe, package or add-on that is gone while an offer that can still be accepted, or an event
 * that is still to come, uses it. What is held back is there, and has its own findings.
 */
export function findingsOn(book: Book, today: Day): Finding[] {
  return [...book.offers].flatMap(([proposal, revisions]) => {
    const newest = revisions.at(-1);
    const offer = inUse(book, proposal, newest, today);
    return offer ? goneFrom(book, offer) : [];
  });
}

/** The offer by which somebody may still be fed: the accepted one, else the newest while it is open. */
function inUse(book: Book, proposal: string, newest: Offer | undefined, today: Day): Offer | undefined {
  const facts = book.events.get(proposal)?.facts ?? [];
  const [accepted] = facts;
  if (accepted?.kind === 'accepted') {
    const offer = book.offers.get(proposal)?.find(({ revision }) => revision === accepted.revision);
    const date = offer && eventDate(offer.date, facts).date;
    return date && date >= today ? offer : undefined;
  }
  const withdrawn = book.proposals.get(proposal)?.withdrawn === true;
  return newest && newest.validUntil >= today && !withdrawn ? newest : undefined;
}

function goneFrom(book: Book, offer: Offer): Finding[] {
  const place = { file: `offers/${offer.proposal}-r${offer.revision}.json`, line: 1, column: 1 };
  const facts = book.events.get(offer.proposal)?.facts ?? [];
  const use = book.events.has(offer.proposal)
    ? `the event ${offer.proposal} on ${eventDate(offer.date, facts).lastDate}`
    : `the open offer ${offer.proposal} revision ${offer.revision}`;
  const gone = (
    kind: 'recipe' | 'package' | 'add-on',
    id: string,
    known: ReadonlyMap<string, unknown>,
  ): Finding[] => {
    if (known.has(id) || book.held.has(`${kind}/${id}`)) return [];
    const what = `${use} uses the ${kind} “${id}”, which is gone`;
    const where = kind === 'add-on' ? 'it in kitchen.yaml' : `${kind}s/${id}.mdx`;
    return [finding('gone-in-use', place, what, `restore ${where} until it is over`)];
  };
  const recipes = new Set(
    offer.terms.packages.flatMap(({ courses }) =>
      courses.flatMap(({ dishes }) => dishes.map(({ recipe }) => recipe)),
    ),
  );
  // A dish that was replaced is no longer cooked; what replaced it is.
  for (const fact of facts) {
    if (fact.kind !== 'substitution' || fact.what !== 'dish') continue;
    recipes.delete(fact.from);
    recipes.add(fact.to);
  }
  return [
    ...offer.terms.packages.flatMap(({ id }) => gone('package', id, book.packages)),
    ...[...recipes].flatMap((id) => gone('recipe', id, book.recipes)),
    ...offer.terms.addOns.flatMap(({ id }) => gone('add-on', id, book.kitchen.addOns)),
  ];
}
