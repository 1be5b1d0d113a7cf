import { type CatalogueEntry, error, note, warning } from './severity.ts';

/** What may be wrong with the food: what is in it, whom it suits, how it is cooked, kept and told of. */
export const FOOD_CATALOGUE = {
  // Food facts and safety
  'allergens-unsaid': warning('The allergens of an ingredient in use are not stated.'),
  'origin-unsaid': warning('What an ingredient in use comes from is not stated.'),
  'allergen-not-named': warning(
    'A food comes from an allergen, but its “contains” does not list it, so its allergens count as unknown.',
  ),
  'change-no-help': warning('Leaving out or swapping something for a need does not make the dish suit it.'),
  'instead-no-help': warning('A dish takes the place of another for a need that it does not suit itself.'),
  'need-not-fed': warning(
    'A course has nothing for guests with a need that the proposal names, or not enough.',
  ),
  'role-unknown': warning(
    'Whether guests with a need are fed depends on what a dish is in its course, which is not stated.',
  ),
  'needs-too-many': warning('A proposal names more guests with needs than there are guests.'),
  'food-facts-changed': error(
    'A dish of an open offer or an upcoming event has an allergen its client was not told about, or has lost a diet.',
  ),
  'food-facts-told': note(
    'A dish of an open offer or an upcoming event is less safe than was offered, and its client has been told.',
  ),
  'food-unknown': warning(
    'A dish of an open offer or an upcoming event can’t be read right now, so its page says “ask us” and claims nothing.',
  ),
  'correction-kept': warning('A page still shows a published correction that its recipe no longer supports.'),
  'substitution-untold': warning(
    'An upcoming event has a substitution the client must be told about, and no one has recorded doing so.',
  ),
  'substitution-allergen-untold': error(
    'A substitution brings in an allergen, or takes away a diet that a guest on record keeps, and no one has recorded telling the client.',
  ),
  'keeps-not-stated': warning('How long a recipe keeps is not stated, so a label has no use-by.'),
  'keeps-too-long': warning('Cold food is kept longer than a food code allows.'),
  'edition-unknown': warning(
    'Salver does not have the figures of the food code edition that the kitchen names.',
  ),
  'cook-to-low': warning('Raw animal food is cooked to less than a food code requires.'),
  'cook-to-missing': warning('Raw animal food is served and no step says to what temperature it is cooked.'),
  'hot-plant-food-low': warning(
    'No step brings plant food that is held hot to the temperature a food code requires.',
  ),
  'reheat-low': warning('Food is cooked ahead and no later step heats it as a food code requires.'),
  'reheat-slow': warning('Food that is cooked ahead takes longer to reheat than a food code allows.'),
  'cooling-unsaid': warning('Food is cooked and then kept cold, and no container is named to cool it in.'),
  'chill-too-deep': warning('Food is too deep in its container to cool in time.'),
  'chill-too-long': error('A recipe takes longer to cool than a food code allows.'),
  'chill-first-too-long': error('A recipe takes longer to cool to 70 °F than a food code allows.'),
  'room-too-long': warning('Food is at room temperature longer than a food code allows.'),

  // Cooking at the event's place
  'place-cannot-cook': error(
    'A dish is cooked on site, but the place has nothing to cook it on, and nothing is brought.',
  ),
  'place-not-stated': warning(
    'A dish is cooked on site, but nothing states that the place has the equipment for it, and none is brought.',
  ),
  'circuits-too-few': warning('Equipment brought to a place draws more than its circuits carry.'),
} as const satisfies Record<string, CatalogueEntry>;
