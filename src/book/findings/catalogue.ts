/** How much a finding weighs: an error holds back what depends on it, a warning asks for a look, a note informs. */
export type Severity = 'error' | 'warning' | 'note';

interface CatalogueEntry {
  readonly severity: Severity;
  /** One sentence: what the finding means whenever it appears. */
  readonly meaning: string;
}

/**
 * Every finding there is, by its permanent code. A code never changes its meaning and is never given to
 * something else, so that scripts and notes may rely on it.
 */
export const CATALOGUE = {
  // Files and folders
  'no-content-folder': error('The content folder is not where it was expected.'),
  'unreadable-file': error('The file or folder exists but can’t be read.'),
  'outside-link': error('A symbolic link points outside the content folder and is not followed.'),
  'file-too-large': error('The file is larger than any file of its kind is meant to be.'),
  'not-utf-8': error('The file is not text in UTF-8.'),
  'control-character': error('The text holds an invisible control character.'),
  'file-name': error('The name of a file or folder cannot serve as an id.'),
  'stray-file': note('The file is not one that Salver uses.'),

  // YAML
  'yaml-syntax': error('The text is not YAML.'),
  'yaml-alias': error(
    'Anchors, aliases and merge keys are not used: each value is written where it is used.',
  ),
  'yaml-tag': error('YAML tags are not used: every value is plain text.'),
  'yaml-documents': error('A file holds one YAML document, without directives.'),
  'yaml-too-deep': error('Lists and mappings are nested deeper than any content needs.'),
  'yaml-too-many': error('The file has more keys and values than any content needs.'),
  'duplicate-key': error('The same key is there twice; only the first would count.'),
  'key-form': error('A key is not a plain word or text.'),
  'no-value': error('A key or a list item has nothing after it.'),

  // Front matter
  'front-matter-missing': error('The file does not start with its data between two lines of three hyphens.'),
  'front-matter-unclosed': error('The data on top of the file has no closing line of three hyphens.'),

  // CSV
  'csv-header': error('The first line of a CSV file does not name its columns.'),
  'csv-duplicate-header': error('Two columns of a CSV file have the same name; only the first would count.'),
  'csv-quotes': error('A quotation mark in a CSV row is not closed, or is inside a field.'),
  'csv-fields': error('A CSV row has more or fewer fields than there are columns.'),
  'csv-too-many-rows': error('A CSV file has more rows than any price list should have.'),

  // Bodies: notes, stories and letters
  'body-too-large': error('The text below the data is longer than any such text is meant to be.'),
  'body-too-deep': error('Lists, quotations or components are nested deeper than a page can show.'),
  'body-html': error('Text can’t contain HTML.'),
  'body-expression': error('Text can’t contain expressions in braces.'),
  'body-import': error('Text can’t import or export anything.'),
  'body-component': error('Text can use only the listed components.'),
  'body-component-renamed': note('A component of a text has a new name; the old one is still read.'),
  'body-attribute': error('Attributes of components are plain text.'),
  'body-link': error('Links lead to http, https, mailto or tel addresses, or to a heading on the same page.'),
  'body-picture': error('Pictures are files in the content folder.'),
  'body-syntax': error('The text is not valid Markdown with components.'),
  'body-form': error('The text uses a form of Markdown that the pages do not show.'),

  'no-kitchen': error('The content folder has no kitchen.yaml, and everything needs it.'),
  'mark-missing': error(
    'The drawing that kitchen.yaml names as the kitchen’s mark is not in the content folder.',
  ),
  'mark-form': error('Pages can’t show the drawing of the kitchen’s mark.'),
  'mark-unsafe': error('The kitchen’s mark has something in it that does more than draw.'),
  'picture-undescribed': error('A picture has no description for people who can’t see it.'),
  'picture-form': error('A picture cannot be decoded, or is too large to be.'),
  'photo-gone': warning('A picture that an offer was issued with is no longer in the content folder.'),
  'picture-missing': error('A picture that a text shows is not in the content folder.'),

  // Form: which fields there are, and what they say
  'missing-field': error('A required field is missing.'),
  'older-name': note('A field has a new name; this is the old one, which still works.'),
  'unknown-field': error('There is no such field here.'),
  'wrong-form': error('There is a text, a list or a mapping where one of the other two belongs.'),
  'unknown-word': error('The field takes one of a few words, and this is not one of them.'),
  'too-long': error('A text or list is too long for its field.'),
  'bad-id': error('Ids are lower-case words joined by hyphens.'),
  'not-understood': error('The text is not in the form its field needs.'),

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
  'wrong-choice': error('The dishes proposed do not fit the course’s choice.'),
  'weak-link': error('The unguessable part of an address could be guessed.'),
  'link-used-twice': error('Two proposals have the same address.'),
  'link-changed': error('An issued proposal’s address is not the one its client has.'),
  'vendors-unfed': warning('Vendor meals are promised and no dish counts vendors.'),
  'vendors-not-counted': warning(
    'Something packed per guest does not state which guests it counts, and vendor meals are promised.',
  ),
  'valid-too-long': warning('An offer could be accepted after the event.'),
  'venue-not-understood': note(
    'A fact about the venue that the plan could use is not in a form that is understood, so it counts as not stated.',
  ),
  'unknown-need': warning('A guest need is neither a diet nor an allergen that Salver knows.'),

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

function error(meaning: string): CatalogueEntry {
  return { severity: 'error', meaning };
}

function warning(meaning: string): CatalogueEntry {
  return { severity: 'warning', meaning };
}

function note(meaning: string): CatalogueEntry {
  return { severity: 'note', meaning };
}
