import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { nearest } from '../book/findings/nearest.ts';
import { DIETS } from '../engine/food/diet.ts';
import { NEED_WORDS, parseNeed } from '../engine/food/need.ts';
import { dishesOf } from '../engine/menu/dishes-of.ts';
import type { Proposal } from '../engine/menu/proposal.ts';
import { counted } from '../engine/text/counted.ts';
import { crewMealOf } from '../offers/event/crew-dishes.ts';

/** What a proposal promises that its menus or its dates do not bear out. */
export function checkProposals(book: Book): Finding[] {
  return [...book.proposals.values()].flatMap((proposal) => [
    ...unfedVendors(book, proposal),
    ...lateAcceptance(book, proposal),
    ...unknownNeeds(book, proposal),
    ...changedLink(book, proposal),
  ]);
}

function unfedVendors(book: Book, proposal: Proposal): Finding[] {
  const { id, guests, packages } = proposal;
  const { kind = 'none' } = crewMealOf(book, proposal) ?? {};
  // Where no dish counts them, they eat with the crew.
  if (guests.vendors === 0 || kind !== 'none') return [];
  return packages.flatMap((chosen, index) => {
    if (dishesOf(chosen).some(({ counts }) => counts.vendors !== undefined)) return [];
    const what = `${counted(guests.vendors, 'vendor meal')} ${guests.vendors === 1 ? 'is' : 'are'} promised, but no dish of ${chosen.id} counts vendors`;
    const wayOut =
      'write “counts: adults, children, vendors” in the package, or on the dishes they get; or write a “crew meal”, which they then share';
    return [findingAt(book, 'vendors-unfed', `proposal/${id}`, ['packages', index], what, wayOut)];
  });
}

function lateAcceptance(book: Book, { id, date, validUntil }: Proposal): Finding[] {
  if (validUntil <= date) return [];
  const what = `it could be accepted until ${validUntil}, after the event on ${date}`;
  return [findingAt(book, 'valid-too-long', `proposal/${id}`, ['valid until'], what, 'write an earlier day')];
}

function unknownNeeds(book: Book, { id, needs }: Proposal): Finding[] {
  return [...needs.keys()].flatMap((text) => {
    if (parseNeed(text).ok) return [];
    const unknown = text.split('+').find((part) => !parseNeed(part).ok) ?? text;
    const word = unknown.trim().toLowerCase();
    // Short words are close to too many others: “nuts” is no slip for “oats”.
    const near = word.length < 6 ? undefined : nearest(word.slice(0, 80), NEED_WORDS);
    const wayOut =
      near === undefined
        ? `write a diet (${DIETS.join(', ')}) or an allergen, such as tree nuts`
        : `did you mean ${near}?`;
    const what = `“${text}” is not a diet or an allergen that Salver knows, so no dish is checked for it`;
    return [findingAt(book, 'unknown-need', `proposal/${id}`, ['needs', text], what, wayOut, 'key')];
  });
}

/** The client has the old address: what is offered now is at the one that was issued. */
function changedLink(book: Book, { id, link }: Proposal): Finding[] {
  const issued = book.offers.get(id)?.at(-1);
  if (!issued || issued.link === link) return [];
  const what = `revision ${issued.revision} was issued under another link, and that is the link the client has`;
  return [
    findingAt(book, 'link-changed', `proposal/${id}`, ['link'], what, `write “link: ${issued.link}” again`),
  ];
}
