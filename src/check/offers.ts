import type { Book } from '../book/book.ts';
import { type Finding, finding, type Place } from '../book/findings/finding.ts';
import { allergenText } from '../engine/food/allergen.ts';
import { allergensOf } from '../engine/food/allergens-of.ts';
import type { DishCorrection } from '../offers/corrections/corrections.ts';
import { correctionsToTell } from '../offers/corrections/told.ts';
import { placeOfOffer, useText } from '../offers/offer-in-use.ts';
import type { Offer } from '../schema/offer.ts';

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
 * issued: whoever was told otherwise must be told, and `told` records it. It stands where the allergen comes in,
 * at the ingredient, else at the recipe.
 */
export function correctedSince(book: Book, offer: Offer): Finding[] {
  const { untold, told } = correctionsToTell(book, offer);
  const { name, email } = offer.client;
  const whom = `${name}${email === undefined ? '' : ` (${email})`}`;
  const again = book.events.has(offer.proposal) ? '' : `, and issue ${offer.proposal} again`;
  const has = (each: DishCorrection) =>
    `${useText(book, offer)} has “${each.dish}”, which now ${nowText(each)}`;
  return [
    ...untold.map((each) => {
      const wayOut = `tell ${whom} at once; the page already shows it${again}; then run: told ${offer.proposal}`;
      const what = `${has(each)}; its client was told something else`;
      return finding('food-facts-changed', placeOfChange(book, each, offer), what, wayOut);
    }),
    ...told.map((each) => {
      const what = `${has(each)}; ${name} was told on ${each.toldOn}`;
      const wayOut = `nothing more to do${again === '' ? '' : ` but to issue ${offer.proposal} again`}`;
      return finding('food-facts-told', placeOfChange(book, each, offer), what, wayOut);
    }),
  ];
}

function nowText({ contains, mayContain, lostMarks, unsaid }: DishCorrection): string {
  return [
    contains.length > 0 ? `contains ${contains.join(', ')}` : '',
    mayContain.length > 0 ? `may contain ${mayContain.join(', ')}` : '',
    unsaid ? 'has ingredients whose allergens are unknown' : '',
    lostMarks.length > 0 ? `can no longer be called ${lostMarks.join(', ')}` : '',
  ]
    .filter((text) => text !== '')
    .join(' and ');
}

function placeOfChange(
  book: Book,
  { recipe: offered, instead: recipe = offered, contains, mayContain }: DishCorrection,
  offer: Offer,
): Place {
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
