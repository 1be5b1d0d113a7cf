import type { Book } from '../../../src/book/book.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { Proposal } from '../../../src/engine/menu/proposal.ts';
import type { Parsed } from '../../../src/engine/parsed.ts';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { takeAcceptance } from '../../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import type { Judged } from '../../../src/offers/answers/refusal.ts';
import { nextOffer } from '../../../src/offers/issue/issue.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import type { Offer } from '../../../src/schema/offer.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';
import { type Change, copyOf, SECOND_KITCHEN } from '../../commands/kitchen-copy.ts';

export const EVENING = 'lifeboat-evening';
export const day = (text: string) => text as Day;
export const ISSUED = day('2027-04-26');
export const ACCEPTED = day('2027-04-28');

let unchanged: Promise<Book> | undefined;

/** The second kitchen's Book, with some files changed; what is changed must leave no error behind. */
export function secondKitchen(...changes: readonly Change[]): Promise<Book> {
  if (changes.length > 0) return soundBook(copyOf(SECOND_KITCHEN, changes));
  unchanged ??= soundBook(SECOND_KITCHEN);
  return unchanged;
}

async function soundBook(dir: string): Promise<Book> {
  const { book, findings } = await readBook(dir);
  const errors = findings.filter(({ severity }) => severity === 'error');
  if (!book || errors.length > 0) throw new Error(errors.map(({ what }) => what).join('; '));
  return book;
}

/** The value of what must have gone well. */
export function must<T>(read: Parsed<T> | Judged<T>): T {
  if (!read.ok) throw new Error(JSON.stringify(read));
  return read.value;
}

export function eveningOf(book: Book): Proposal {
  const proposal = book.proposals.get(EVENING);
  if (!proposal) throw new Error(book.held.get(`proposal/${EVENING}`) ?? 'the evening is gone');
  return proposal;
}

export function offerOf(book: Book): Offer {
  return must(nextOffer(book, eveningOf(book), ISSUED));
}

/** The Book once its evening was issued. */
export function issued(book: Book): Book {
  return { ...book, offers: new Map([[EVENING, [offerOf(book)]]]) };
}

/**
 * The Book once its evening was issued and accepted: as proposed, or with another choice. Needs given here stand in
 * place of those proposed, as after the kitchen has asked the client.
 */
export function accepted(book: Book, change: Partial<Choice> = {}): Book {
  const open = issued(book);
  const offer = offerOf(book);
  const signature = { name: 'Aine Trask', email: 'aine@lifeboat.example', note: '', accepted: ACCEPTED };
  const acceptance = makeAcceptance(offer, { ...offer.proposed, ...change }, signature);
  return withFacts(
    open,
    must(
      takeAcceptance(open, JSON.stringify(acceptance), ACCEPTED, { dropNeeds: change.needs !== undefined }),
    ),
  );
}

export function withFacts(book: Book, ...facts: readonly EventFact[]): Book {
  const before = book.events.get(EVENING)?.facts ?? [];
  return { ...book, events: new Map([[EVENING, { id: EVENING, facts: [...before, ...facts] }]]) };
}

/** The prep plan of the evening accepted. */
export async function planOf(book: Book): Promise<PrepPlanDocument> {
  return must(must(await plannedEvent(book, EVENING, ACCEPTED)).plan);
}
