import type { Book } from '../../book/book.ts';
import { readBook } from '../../check/read-book.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { offerProblem } from '../../offers/check-offer.ts';
import { type NextFact, withFact } from '../../offers/event/current-event.ts';
import { recordFact } from '../../offers/event/record-fact.ts';
import type { EventFact } from '../../schema/event-fact.ts';
import type { Call } from './command.ts';
import type { OpenBook } from './open-book.ts';

/** What was recorded, and the Book as it was before and is since. */
export interface Recorded<F extends EventFact> {
  readonly fact: F;
  readonly before: Book;
  readonly after: Book;
}

/** So many others in a row may be faster; more than ever write to one event at once. */
const MOST_TRIES = 20;

/**
 * Records the fact that `next` makes of what is known. Where another fact takes its number meanwhile, the content is
 * read again and `next` decides again, so that two changes at once either both stand or the later is refused for
 * what the earlier says.
 */
export async function recordInto<F extends EventFact>(
  call: Pick<Call, 'contentDir'>,
  open: Pick<OpenBook, 'book'>,
  event: string,
  next: (book: Book) => Parsed<NextFact<F>>,
): Promise<Parsed<Recorded<F>>> {
  let { book } = open;
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const made = next(book);
    if (!made.ok) return made;
    const { fact } = made.value;
    if (await recordFact(call.contentDir, event, made.value))
      return parsed({ fact, before: book, after: withFact(book, event, fact) });
    const again = (await readBook(call.contentDir, offerProblem)).book;
    if (!again)
      return notParsed('the content can’t be read any more', 'run `check`, then this command again');
    book = again;
  }
  return notParsed(
    `someone else keeps recording changes to ${event}`,
    'run this command again when they are done',
  );
}
