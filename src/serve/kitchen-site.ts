import { textsOf } from '../book/files/content-texts.ts';
import { listContent } from '../book/files/list-content.ts';
import { openLedger } from '../book/ledger.ts';
import { readKitchen } from '../book/read/kitchen.ts';

/**
 * The `site` of a content folder's kitchen.yaml, without reading the rest of the Book. Null where kitchen.yaml cannot
 * be read: what was built before is served all the same.
 */
export function kitchenSite(contentDir: string): string | undefined | null {
  const kitchen = readKitchen(openLedger(), textsOf(listContent(contentDir), 'kitchen', []));
  return kitchen ? kitchen.frame.site : null;
}
