import type { Book } from '../../book/book.ts';
import { lossesOf } from '../../offers/event/charges.ts';
import { currentEvent } from '../../offers/event/current-event.ts';
import { wordsIn } from '../../words/words-in.ts';
import { shown } from '../quote-view-of.ts';

/** What was broken at an event or did not come back, as a crew reads it. */
export interface LossView {
  /** `2 × Plates, broken`. */
  readonly what: string;
  /** What each is billed at, or that nothing is charged. */
  readonly charged: string;
  /** How it came about; empty where nobody stated it. */
  readonly why: string;
}

/** What is recorded as broken or missing by now, also of an event whose plan is a record from before. */
export function lossesOfEvent(book: Book, event: string): LossView[] {
  const found = currentEvent(book, event);
  if (!found.ok) return [];
  const { facts, offer } = found.value;
  const say = wordsIn(book.kitchen.locale);
  return lossesOf(facts).map(({ what, name, count, each, why }) => ({
    what: say('returns.loss', { n: count, item: say('bill.loss', { what, item: name }) }),
    charged: say('returns.charged', {
      charged: each === null ? 'no' : 'yes',
      price: each === null ? '' : shown(each, offer.terms),
    }),
    why: why.join('; '),
  }));
}
