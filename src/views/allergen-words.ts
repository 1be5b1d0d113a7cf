import type { AllergenCellView } from './client/proposal-view.ts';

/**
 * What a cell of the table says in a narrow column, and words all the same. Never “yes”, which could be read as “may
 * be eaten”.
 */
export const ALLERGEN_WORDS: Readonly<Record<AllergenCellView['says'], string>> = {
  contains: 'has',
  'may contain': 'may',
  'not known': '?',
  '': '',
};
