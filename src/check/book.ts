import type { Book } from '../book/book.ts';
import type { Finding } from '../book/findings/finding.ts';
import { checkAllergens } from './allergens.ts';
import { checkAmounts } from './amounts.ts';
import { checkCards } from './cards.ts';
import { checkDrinks } from './drinks.ts';
import { checkIngredients } from './ingredients.ts';
import { checkKeeping } from './keeping.ts';
import { checkOffers } from './offers.ts';
import { checkProposals } from './proposals.ts';
import { checkRecipes } from './recipes.ts';
import { checkRentals } from './rentals.ts';
import { checkSafety } from './safety.ts';
import { checkTimeOut } from './time-out.ts';
import { checkUnused } from './unused.ts';

/** Everything that only the whole Book can tell, whatever the day. */
export function checkBook(book: Book): Finding[] {
  return [
    checkIngredients,
    checkRecipes,
    checkSafety,
    checkTimeOut,
    checkAllergens,
    checkKeeping,
    checkCards,
    checkProposals,
    checkRentals,
    checkDrinks,
    checkOffers,
    checkAmounts,
    checkUnused,
  ].flatMap((check) => check(book));
}
