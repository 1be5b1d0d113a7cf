import type { Book } from './book.ts';
import type { Path } from './files/place-of.ts';
import type { FindingCode } from './findings/catalogue.ts';
import { type Finding, finding } from './findings/finding.ts';
import type { ItemKey } from './item.ts';

/** A finding about an item of the Book, at a path in it. */
export function findingAt(
  book: Book,
  code: FindingCode,
  item: ItemKey,
  path: Path,
  what: string,
  wayOut: string,
  part?: 'key' | 'value',
): Finding {
  const place = book.placeOf(item, path, part) ?? { file: 'kitchen.yaml', line: 1, column: 1 };
  return finding(code, place, what, wayOut);
}
