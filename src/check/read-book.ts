import type { Book } from '../book/book.ts';
import type { Finding } from '../book/findings/finding.ts';
import type { KeptReading } from '../book/kept-reading.ts';
import type { OfferCheck, SoundOffers } from '../book/read/offers.ts';
import { readContent } from '../book/read-content.ts';
import { checkBook } from './book.ts';

/** A content folder, read and checked. */
export interface ReadBook {
  /** undefined where kitchen.yaml cannot be used: everything rests on it. */
  readonly book: Book | undefined;
  /** All findings of all files, in no order; those that depend on the day are `findingsOn`'s. */
  readonly findings: Finding[];
}

/** `readContent`, with everything that sound files together give reason to tell the author of. */
export async function readBook(
  contentDir: string,
  checkOffer?: OfferCheck,
  sound?: SoundOffers,
  kept?: KeptReading,
): Promise<ReadBook> {
  const { book, findings } = await readContent(contentDir, checkOffer, sound, kept);
  return { book, findings: book ? [...findings, ...checkBook(book)] : findings };
}
