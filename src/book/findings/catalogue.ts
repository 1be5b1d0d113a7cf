import { FOOD_CATALOGUE } from './food-catalogue.ts';
import { FORM_CATALOGUE } from './form-catalogue.ts';
import { type CatalogueEntry, error, note, warning } from './severity.ts';

/**
 * Every finding there is, by its permanent code. A code never changes its meaning and is never given to
 * something else, so that scripts and notes may rely on it.
 */
export const CATALOGUE = {
  ...FORM_CATALOGUE,
  ...FOOD_CATALOGUE,

  // Links between items
  'unknown-id': error('Something is named that no file defines.'),
  'ambiguous-id': error('The id names both an ingredient and a recipe.'),
  'defined-twice': error('The same id is defined in two files.'),
  'circular-recipe': error('A recipe contains itself through one of its parts.'),
  'recipe-too-deep': error('Recipes are nested in each other deeper than any kitchen cooks.'),
  'missing-column': error('A price list or the stock list lacks a column that is needed.'),
  'unknown-column': warning('A price list in Salver’s own words has a column that is not read.'),

  'price-row-misnamed': warning('A row of a price list names a food by nearly an ingredient’s id.'),
  'price-rows-unused': note(
    'Rows of a price list are left out because the kitchen does not have or use those foods.',
  ),
  'pack-slash': note('A slash in a pack could be a fraction or separate a count from a size.'),
  'price-twice': warning(
    'A price list has the same pack at two prices from the same date; only one of them counts.',
  ),
  'cans-of-two-sizes': warning(
    'A food is sold in cans of two numbers, and only one of them can be meant by “can”.',
  ),

  // Steps of recipes
  'step-place': error('Where a step is done does not match its day, its waves or the steps before it.'),
  'step-order': warning('A step in the kitchen comes after one that is done on site.'),
  'step-wait': error('A step’s food can’t wait as long as its recipe states.'),
  'line-not-used': note('Some steps of a recipe state which lines they use, and none of them uses this one.'),

  // Amounts
  'unit-not-reached': error(
    'There is no conversion from the unit of an amount to the unit it has to be counted in.',
  ),
  'unit-not-made': error('A dish is served in a unit that its recipe does not make.'),
  'conversion-slash': warning('A slash in a conversion could mean a different amount than it is read as.'),
  'conversions-disagree': warning('Two ways of converting the same food give different amounts.'),
  'yield-unsaid': warning('A food states yields, but none for the way it is prepared here.'),
  'trim-not-stated': note(
    'A food that usually loses weight in prep states no yield, so nothing extra is bought for trim.',
  ),
  'container-not-reached': warning('A container’s capacity cannot be compared with what the recipe makes.'),
  'labels-off-sheet': warning('With the label margins entered, some labels would run off their sheet.'),
  'container-temperature': warning('Hot food is served in a container meant for cold food.'),
  'pack-not-reached': warning(
    'A pack on a price list is in a unit that no recipe line of its food can reach.',
  ),
  'pinned-pack-unknown': warning('The pack that an ingredient requires is on no price list.'),
  'not-priced': warning('An ingredient is used and no price list has it.'),
  'stock-past': warning('Food in stock is past its use-by date.'),

  // What no buyer would sign unseen
  'price-nothing': warning('A pack on a price list costs nothing.'),
  'price-far-off': warning(
    'A pack costs five times what other packs of the food do for the same amount, or a fifth.',
  ),
  'price-jumped': warning('A pack costs five times what it did before, or a fifth.'),
  'price-beyond-sense': warning('One pack costs far more than any pack of food.'),
  'package-below-cost': warning('The food of a package costs more than the package is sold for.'),
  'amount-beyond-sense': warning('One guest gets more of a dish than anyone eats or drinks.'),
  'order-line-long': warning('An upcoming event’s order has more than 60 packs of one kind.'),
  'left-over-long': note(
    'More than twice what is used is left over, and other packs leave less for about the same money.',
  ),

  // Menus and prices
  'price-tiers': error('The prices by guest count skip a count or price one twice.'),
  'price-drop': warning('At some count one more guest makes the whole menu cheaper.'),
  'course-choice': error('A course’s choice can’t work as written.'),
  'defined-again': error('Two parts of one file have the same name, so neither could be identified.'),
  'card-word-twice': warning('Two dishes of a course have the same short word on place cards.'),
  'odds-unsaid': error('Some of what the odds of running short are calculated from is missing.'),
  'odds-clash': error('A dish states who takes it in two ways.'),
  'drinks-no-hours': error(
    'How long drinks are served is not stated, so nobody can tell how many are taken.',
  ),
  'drink-shares': error('The shares of the kinds of drinks can’t work as written.'),
  'alcohol-free-missing': error('A menu has drinks, and none of them is known to be free of alcohol.'),
  'alcohol-for-children': error('A drink that holds alcohol, or may, is planned for children.'),
  'drinks-beyond-sense': warning('Guests are planned to take far more or far fewer drinks than crowds do.'),
  'payments-sum': error('The payments do not add up to the total.'),

  // Proposals
  'no-guests': error('A proposal has nobody at the table.'),
  'out-of-zones': error('A proposal is farther than every delivery zone reaches.'),
  'wrong-choice': error('The dishes proposed do not fit the course’s choice.'),
  'weak-link': error('The unguessable part of an address could be guessed.'),
  'link-used-twice': error('Two proposals have the same address.'),
  'link-changed': error('An issued proposal’s address is not the one its client has.'),
  'vendors-unfed': warning('Vendor meals are promised and no dish counts vendors.'),
  'vendors-not-counted': warning(
    'Something packed per guest does not state which guests it counts, and vendor meals are promised.',
  ),
  'crew-meal-for-nobody': warning('A meal is written for the crew and no staff are counted.'),
  'crew-fed-twice': warning('The crew gets a meal of its own and dishes that count staff.'),
  'crew-meal-not-stated': note(
    'A crew is at a place for more than five hours and what it eats is not stated.',
  ),
  'valid-too-long': warning('An offer could be accepted after the event.'),
  'venue-not-understood': note(
    'A fact about the venue that the plan could use is not in a form that is understood, so it counts as not stated.',
  ),
  'site-photo-missing': warning('A site sheet names a photo that is not in the content folder.'),
  'site-not-asked': note('Something of a place that an event there depends on has not been asked yet.'),
  'unknown-need': warning('A guest need is neither a diet nor an allergen that Salver knows.'),

  // What the crew's hours come to
  'hours-not-sold': warning(
    'A proposal sells those who work at its event for less time than the event takes them.',
  ),
  'hours-agreed-short': note(
    'An open offer or an upcoming event sells those who work at it for less time than it takes them.',
  ),

  // Nothing uses it
  'recipe-unused': note('No package, add-on or other recipe uses the recipe.'),
  'ingredient-unused': note('No recipe uses the ingredient.'),

  // Offers and events
  'record-form': error('A file that Salver wrote is not as it was written.'),
  'record-name': error('The name of a file that Salver wrote does not match its contents.'),
  'record-missing': error('A file that Salver wrote and that another file needs is gone.'),
  'record-order': error('An event’s facts are not in the order they were written in.'),
  'offer-altered': error('An issued offer no longer reads or adds up as it was issued.'),
  'revision-gap': warning('An earlier revision of an offer is gone.'),
  'acceptance-waiting': note('An acceptance has come in and is waiting to be recorded.'),
  'count-change-waiting': note('A client’s new count has come in and is waiting to be recorded.'),
  'guest-list-waiting': note('A guest list has come in and is waiting to be recorded.'),
  'inbox-unusable': warning('A file in the inbox is not a client’s answer that can be recorded.'),
  'gone-in-use': error(
    'A recipe, package or add-on is gone, but an open offer or an upcoming event uses it.',
  ),
} as const satisfies Record<string, CatalogueEntry>;

/** The permanent code of a finding. */
export type FindingCode = keyof typeof CATALOGUE;
