import type { Book } from '../book/book.ts';
import { type Finding, finding } from '../book/findings/finding.ts';
import type { DishCorrection } from '../offers/corrections/corrections.ts';
import { knownSince } from '../offers/corrections/known-since.ts';
import { asNow } from '../offers/corrections/statements.ts';
import { acceptedTerms } from '../offers/corrections/told.ts';
import { placeOfOffer } from '../offers/offer-in-use.ts';
import type { SubstitutionFact } from '../schema/event-fact.ts';
import type { Offer } from '../schema/offer.ts';

/**
 * Dishes of offers in use that cannot be read now, one finding for each recipe: what is wrong with it has a finding of
 * its own, and this says which clients’ pages claim nothing of it any longer.
 */
export function unknownFood(book: Book, inUse: readonly Offer[]): Finding[] {
  const found = inUse.flatMap((offer) => unreadableIn(book, offer).map((each) => ({ ...each, offer })));
  return [...Map.groupBy(found, ({ recipe }) => recipe)].flatMap(([recipe, each]) => {
    const [first] = each;
    if (!first) return [];
    const pages = each.map(({ offer }) => offer.proposal);
    const which = pages.length === 1 ? `the page of ${pages[0]}` : `the pages of ${pages.join(', ')}`;
    const why = book.held.get(`recipe/${recipe}`) ?? book.held.get(`corrections/${first.offer.proposal}`);
    // That a recipe is gone while it is used has a finding of its own.
    if (why === undefined) return [];
    const what = `what is in “${first.dish}” is unknown right now, so ${which} ${pages.length === 1 ? 'says' : 'say'} “ask us”: ${why}`;
    const wayOut = 'fix that and build again; until then no guest is told that the dish suits them';
    const place = book.placeOf(`recipe/${recipe}`, [], 'key') ?? placeOfOffer(first.offer);
    return [finding('food-unknown', place, what, wayOut)];
  });
}

/** A dish that was replaced is no longer cooked; what replaced it is, and goes by its own recipe here. */
function unreadableIn(book: Book, offer: Offer): DishCorrection[] {
  const substitutions = substitutionsOf(book, offer);
  const accepted = { ...offer, terms: acceptedTerms(book, offer) };
  return knownSince(accepted, book, substitutions, asNow).corrections.flatMap((each) =>
    each.unreadable ? [{ ...each, recipe: each.instead ?? each.recipe }] : [],
  );
}

/** Corrections that a page keeps because they were published, although the recipe no longer bears them out. */
export function correctionsKept(book: Book, offer: Offer): Finding[] {
  const substitutions = substitutionsOf(book, offer);
  const now = knownSince(offer, book, substitutions, asNow).corrections;
  const again = book.events.has(offer.proposal) ? '' : `issue ${offer.proposal} again, or `;
  return knownSince(offer, book, substitutions).corrections.flatMap((shown) => {
    if (shown.unreadable) return [];
    const is = (each: Pick<DishCorrection, 'recipe' | 'instead'>) =>
      each.recipe === shown.recipe && each.instead === shown.instead;
    const borneOut = now.find(is);
    const rest = (field: 'contains' | 'mayContain' | 'lostMarks') =>
      shown[field].filter((word) => !borneOut?.[field].includes(word));
    const kept = {
      contains: rest('contains'),
      mayContain: rest('mayContain').filter((word) => !borneOut?.contains.includes(word)),
      lostMarks: rest('lostMarks'),
    };
    const says = [
      kept.contains.length > 0 ? `contains ${kept.contains.join(', ')}` : '',
      kept.mayContain.length > 0 ? `may contain ${kept.mayContain.join(', ')}` : '',
      kept.lostMarks.length > 0 ? `can’t be called ${kept.lostMarks.join(', ')}` : '',
    ].filter((text) => text !== '');
    if (says.length === 0) return [];
    const files = (book.corrections.get(offer.proposal) ?? []).filter(
      ({ revision, dishes }) => revision === offer.revision && dishes.some(is),
    );
    const names = files.map(({ file }) => file);
    const what = `the page of ${offer.proposal} says that “${shown.dish}” ${says.join(' and ')}, as published, but the recipe no longer does`;
    const wayOut = `if that was removed by mistake, put it back; if the dish is right as it is, ${again}delete ${names.join(', ')}`;
    return [finding('correction-kept', { file: names[0] ?? '', line: 1, column: 1 }, what, wayOut)];
  });
}

function substitutionsOf(book: Book, { proposal }: Offer): SubstitutionFact[] {
  const facts = book.events.get(proposal)?.facts ?? [];
  return facts.filter((fact) => fact.kind === 'substitution');
}
