import type { Book } from './book.ts';
import type { Finding } from './finding.ts';

/** Everything that only the whole Book can tell. */
export function checkBook(_book: Book): Finding[] {
  return [];
}
