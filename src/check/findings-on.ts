import type { Book } from '../book/book.ts';
import { type Finding, finding } from '../book/findings/finding.ts';
import type { Day } from '../engine/calendar/day.ts';
import { offersInUse, placeOfOffer, useText } from '../offers/offer-in-use.ts';
import type { Offer } from '../schema/offer.ts';
import { needsUnfed } from './coverage.ts';
import { crewMealsOn } from './crew-meals.ts';
import { correctedSince } from './offers.ts';
import { packagesBelowCost } from './package-costs.ts';
import { photosGone } from './photos.ts';
import { placeCooking } from './place-cooking.ts';
import { pricesOff } from './prices.ts';
import { siteSheetsOn } from './site-sheets.ts';
import { stockFindingsOn } from './stock-on.ts';
import { substitutionsUntold } from './substitutions.ts';
import { correctionsKept, unknownFood } from './unknown-food.ts';

/**
 * What is wrong on a day: a recipe, package or add-on that is gone while an offer that can still be accepted, or an event
 * that is still to come, uses it (what is held back is there, and has its own findings); food in one of them that is
 * less safe than was offered, or cannot be read; substitutions that no client was told of; pictures that were offered
 * and are gone; food cooked at a place that has nothing to cook it on; guests’ needs that a proposal still to be answered
 * has nothing for; crews whose meal is not planned; what nobody has asked of a place where an event comes; and stock that is past its day; prices that are wrong by all appearances, and packages sold for less
 * than their food costs.
 */
export function findingsOn(book: Book, today: Day): Finding[] {
  const inUse = offersInUse(book, today);
  return [
    ...inUse.flatMap((offer) => [
      ...goneFrom(book, offer),
      ...correctedSince(book, offer),
      ...correctionsKept(book, offer),
      ...substitutionsUntold(book, offer),
      ...photosGone(book, offer),
      ...placeCooking(book, offer),
    ]),
    ...unknownFood(book, inUse),
    ...needsUnfed(book, today),
    ...crewMealsOn(book, today),
    ...siteSheetsOn(book, today),
    ...stockFindingsOn(book, today),
    ...pricesOff(book, today),
    ...packagesBelowCost(book, today),
  ];
}

function goneFrom(book: Book, offer: Offer): Finding[] {
  const place = placeOfOffer(offer);
  const facts = book.events.get(offer.proposal)?.facts ?? [];
  const use = useText(book, offer);
  const gone = (
    kind: 'recipe' | 'package' | 'add-on',
    id: string,
    known: ReadonlyMap<string, unknown>,
  ): Finding[] => {
    if (known.has(id) || book.held.has(`${kind}/${id}`)) return [];
    const what = `${use} uses the ${kind} “${id}”, which is gone`;
    const where = kind === 'add-on' ? 'it in kitchen.yaml' : `${kind}s/${id}.mdx`;
    return [finding('gone-in-use', place, what, `restore ${where} and keep it until the event is over`)];
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
