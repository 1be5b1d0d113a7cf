import { textsOf } from '../book/files/content-texts.ts';
import { listContent } from '../book/files/list-content.ts';
import { openLedger } from '../book/ledger.ts';
import { readKitchen } from '../book/read/kitchen.ts';

/** What serving needs of a kitchen: where else its pages are, and its locale. */
export interface ServedKitchen {
  readonly site: string | undefined;
  readonly locale: string;
}

/**
 * What a content folder's kitchen.yaml says of it, without reading the rest of the Book. Undefined where kitchen.yaml
 * cannot be read: what was built before is served all the same.
 */
export function servedKitchen(contentDir: string): ServedKitchen | undefined {
  const read = readKitchen(openLedger(), textsOf(listContent(contentDir), 'kitchen', []));
  return read && { site: read.frame.site, locale: read.frame.locale };
}
