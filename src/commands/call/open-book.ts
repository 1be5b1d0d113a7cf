import type { Book } from '../../book/book.ts';
import type { Finding } from '../../book/findings/finding.ts';
import { readBook } from '../../check/read-book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { offerProblem } from '../../offers/check-offer.ts';
import type { Call } from './command.ts';
import { sayFindings } from './say-findings.ts';
import { todayFor } from './today.ts';

/** The content read for a command, and the day it works from. */
export interface OpenBook {
  readonly book: Book;
  readonly findings: readonly Finding[];
  readonly today: Day;
}

/**
 * Reads the caterer's content. Where kitchen.yaml itself cannot be read there is no Book: the findings are printed
 * and the answer is undefined, exit code 1.
 */
export async function openBook(call: Call): Promise<OpenBook | undefined> {
  const { book, findings } = await readBook(call.contentDir, offerProblem);
  if (!book) {
    sayFindings(call, findings);
    return undefined;
  }
  call.locale = book.kitchen.locale;
  return { book, findings, today: todayFor(call, book.kitchen.timeZone) as Day };
}
