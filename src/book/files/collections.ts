/** The kinds of content files. */
export type Collection =
  | 'kitchen'
  | 'suppliers'
  | 'stock'
  | 'ingredients'
  | 'prices'
  | 'recipes'
  | 'packages'
  | 'site-sheets'
  | 'proposals'
  | 'offers'
  | 'events'
  | 'plans'
  | 'told'
  | 'corrections'
  | 'inbox'
  | 'taken';

/** Single files, by their names in the content folder. */
export const SINGLE_FILES: Readonly<Record<string, Collection>> = {
  'kitchen.yaml': 'kitchen',
  'suppliers.yaml': 'suppliers',
  'stock.csv': 'stock',
};

/**
 * Folders of files with one ending each, by their paths in the content folder. Events have a folder each within.
 * The inbox holds acceptances that wait to be taken, named as they came; those that were taken lie in it below.
 */
export const FOLDERS: Readonly<Record<string, { readonly collection: Collection; readonly ending: string }>> =
  {
    ingredients: { collection: 'ingredients', ending: '.yaml' },
    prices: { collection: 'prices', ending: '.csv' },
    recipes: { collection: 'recipes', ending: '.mdx' },
    packages: { collection: 'packages', ending: '.mdx' },
    'site-sheets': { collection: 'site-sheets', ending: '.yaml' },
    proposals: { collection: 'proposals', ending: '.md' },
    offers: { collection: 'offers', ending: '.json' },
    events: { collection: 'events', ending: '.json' },
    told: { collection: 'told', ending: '.json' },
    corrections: { collection: 'corrections', ending: '.json' },
    inbox: { collection: 'inbox', ending: '.json' },
    'inbox/taken': { collection: 'taken', ending: '.json' },
  };

/** The order in which collections are listed. */
export const COLLECTIONS: readonly Collection[] = [
  ...Object.values(SINGLE_FILES),
  ...Object.values(FOLDERS).map(({ collection }) => collection),
  // Beside the facts of their events.
  'plans',
];
