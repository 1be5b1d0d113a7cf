import { allergenText } from '../engine/food/allergen.ts';
import { allergensOf } from '../engine/food/allergens-of.ts';
import { correctionsTo, type DishCorrection } from '../offers/corrections.ts';
import type { Offer } from '../schema/offer.ts';
import type { Book } from './book.ts';
import { type Finding, finding, type Place } from './finding.ts';
import { placeOfOffer, useText } from './offer-in-use.ts';

/** Earlier revisions that are gone: what a client was offered before can no longer be shown. */
export function checkOffers(book: Book): Finding[] {
  return [...book.offers].flatMap(([proposal, revisions]) => {
    const newest = revisions.at(-1)?.revision ?? 0;
    const missing = Array.from({ length: newest }, (_, index) => index + 1).filter(
      (each) =>
        !revisions.some(({ revision }) => revision === each) && !book.held.has(`offer/${proposal}-r${each}`),
    );
    return missing.map((revision) => {
      const place = { file: `offers/${proposal}-r${newest}.json`, line: 1, column: 1 };
      const what = `revision ${revision} of ${proposal} is gone`;
      return finding('revision-gap', place, what, `restore offers/${proposal}-r${revision}.json`);
    });
  });
}

/**
 * The dishes of an offer in use that have gained an allergen, or lost a diet they were offered for, since it was
 * issued: whoever was told otherwise must be told. Of an accepted offer only what was accepted counts. It stands
 * where the allergen comes in, at the ingredient, else at the recipe.
 */
export function correctedSince(book: Book, offer: Offer): Finding[] {
  return correctionsTo({ terms: acceptedTerms(book, offer) }, book).map((correction) => {
    const { dish, contains, mayContain, lostMarks, unsaid } = correction;
    const said = [
      contains.length > 0 ? `contains ${contains.join(', ')}` : '',
      mayContain.length > 0 ? `may contain ${mayContain.join(', ')}` : '',
      unsaid ? 'has ingredients of which nobody says the allergens any longer' : '',
      lostMarks.length > 0 ? `is no longer to be taken as ${lostMarks.join(', ')}` : '',
    ].filter((text) => text !== '');
    const { name, email } = offer.client;
    const what = `${useText(book, offer)} has “${dish}”, which now ${said.join(' and ')}; its client was told otherwise`;
    const wayOut = `tell ${name}${email === undefined ? '' : ` (${email})`} at once; the page shows it already${
      book.events.has(offer.proposal) ? '' : `, and issue ${offer.proposal} again`
    }`;
    return finding('food-facts-changed', placeOfChange(book, correction, offer), what, wayOut);
  });
}

/** The terms with the package and add-ons that the client took, where the offer is accepted. */
function acceptedTerms(book: Book, { proposal, terms }: Offer): Offer['terms'] {
  const [accepted] = book.events.get(proposal)?.facts ?? [];
  if (accepted?.kind !== 'accepted') return terms;
  const { choice } = accepted.acceptance;
  return {
    ...terms,
    packages: terms.packages.filter(({ id }) => id === choice.package),
    addOns: terms.addOns.filter(({ id }) => (choice.addOns[id] ?? 0) > 0),
  };
}

function placeOfChange(book: Book, { recipe, contains, mayContain }: DishCorrection, offer: Offer): Place {
  const now = book.recipes.get(recipe);
  const facts = now && allergensOf(now);
  const changed = [...contains, ...mayContain];
  const source = [...(facts?.contains ?? []), ...(facts?.mayContain ?? [])].find(({ allergen }) =>
    changed.includes(allergenText(allergen)),
  );
  const ingredient = (source?.paths[0] ?? facts?.unsaid[0])?.at(-1);
  const field = contains.length > 0 ? 'contains' : 'may contain';
  return (
    (ingredient === undefined ? undefined : book.placeOf(`ingredient/${ingredient}`, [field])) ??
    book.placeOf(`recipe/${recipe}`, [], 'key') ??
    placeOfOffer(offer)
  );
}
