import type { Book } from '../../book/book.ts';

/**
 * Why an offer of a proposal is held back, or undefined. While one is, nobody can tell which revision stands: an
 * earlier one may have been replaced by the one that cannot be read.
 */
export function heldOffer(book: Pick<Book, 'held'>, proposal: string): string | undefined {
  for (const [item, reason] of book.held)
    if (/^offer\/(.+)-r\d+$/.exec(item)?.[1] === proposal) return `${item.slice(6)} can’t be used: ${reason}`;
  return undefined;
}

/** What gets a held offer read again. */
export const RESTORE_OFFER = 'restore the file under offers as `issue` wrote it; `check` shows its place';
