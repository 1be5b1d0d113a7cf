import type { Book } from './book.ts';
import { checkAllergens } from './check-allergens.ts';
import { checkAmounts } from './check-amounts.ts';
import { checkCards } from './check-cards.ts';
import { checkIngredients } from './check-ingredients.ts';
import { checkKeeping } from './check-keeping.ts';
import { checkOffers } from './check-offers.ts';
import { checkProposals } from './check-proposals.ts';
import { checkRecipes } from './check-recipes.ts';
import { checkRentals } from './check-rentals.ts';
import { checkSafety } from './check-safety.ts';
import { checkStanding } from './check-standing.ts';
import { checkUnused } from './check-unused.ts';
import type { Finding } from './finding.ts';

/** Everything that only the whole Book can tell, whatever the day. */
export function checkBook(book: Book): Finding[] {
  return [
    checkIngredients,
    checkRecipes,
    checkSafety,
    checkStanding,
    checkAllergens,
    checkKeeping,
    checkCards,
    checkProposals,
    checkRentals,
    checkOffers,
    checkAmounts,
    checkUnused,
  ].flatMap((check) => check(book));
}
