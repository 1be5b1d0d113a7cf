/** The kinds of things that content files describe and that others refer to. */
export type ItemKind =
  | 'kitchen'
  | 'place'
  | 'staff'
  | 'station'
  | 'skill'
  | 'container'
  | 'equipment'
  | 'carrier'
  | 'vehicle'
  | 'delivery-zone'
  | 'rental'
  | 'kit-item'
  | 'add-on'
  | 'crew-meal'
  | 'supplier'
  | 'prices'
  | 'ingredient'
  | 'recipe'
  | 'recipe-notes'
  | 'package'
  | 'site-sheet'
  | 'proposal'
  | 'offer'
  | 'event'
  | 'corrections';

/** What names an item in `Book.held`: `recipe/herb-dressing`. */
export type ItemKey = `${ItemKind}/${string}`;

/** The crew's meal of kitchen.yaml, which is read once the recipes are. */
export const KITCHENS_CREW_MEAL: ItemKey = 'crew-meal/kitchen';

/** How sentences call each kind. */
const WORDS: Readonly<Record<ItemKind, string>> = {
  kitchen: 'kitchen',
  place: 'place',
  staff: 'staff role',
  station: 'station',
  skill: 'skill',
  container: 'container',
  equipment: 'piece of equipment',
  carrier: 'carrier',
  vehicle: 'vehicle',
  'delivery-zone': 'delivery zone',
  rental: 'rental',
  'kit-item': 'piece of kit',
  'add-on': 'add-on',
  'crew-meal': 'crew meal',
  supplier: 'supplier',
  prices: 'price list',
  ingredient: 'ingredient',
  recipe: 'recipe',
  'recipe-notes': 'cook’s notes',
  package: 'package',
  'site-sheet': 'site sheet',
  proposal: 'proposal',
  offer: 'offer',
  event: 'event',
  corrections: 'record of published corrections',
};

/** The word for a kind in a sentence: `add-on`, `role of staff`. */
export function kindWord(kind: ItemKind): string {
  return WORDS[kind];
}

/** An item in a sentence: `recipe “herb-dressing”`. */
export function itemWords(item: ItemKey): string {
  const slash = item.indexOf('/');
  return `${WORDS[item.slice(0, slash) as ItemKind]} “${item.slice(slash + 1)}”`;
}
