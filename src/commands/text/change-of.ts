import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { PlanChangesDocument } from '../../exports/form/changes.ts';
import { plannedEvent } from '../../views/kitchen/planned-event.ts';
import { changeAsRead } from '../../views/sums-as-read.ts';
import { wordsIn } from '../../words/words-in.ts';
import { changesText } from './changes-text.ts';

/** What the last change of an event made of its plan, as data and for a terminal. */
export interface ChangeOfPlan {
  /** A sentence where there is none to show. */
  readonly data: PlanChangesDocument | string;
  readonly text: string;
}

/** What the last change of an event made of its plan, or the sentence that says why there is none to show. */
export async function changeOf(book: Book, event: string, today: Day): Promise<ChangeOfPlan> {
  const { locale } = book.kitchen;
  const say = wordsIn(locale);
  const planned = await plannedEvent(book, event, today);
  if (!planned.ok) return sentence(planned.what);
  const { plan } = planned.value;
  if (!plan.ok) return sentence(say('terminal.not-planned', { what: plan.what, way: plan.wayOut }));
  const { lastChange, event: facts } = plan.value;
  if (!lastChange) return sentence(say('terminal.no-earlier-plan'));
  const text = changesText(changeAsRead(lastChange, { currency: facts.currency, locale }), locale);
  return { data: lastChange, text };
}

function sentence(text: string): ChangeOfPlan {
  return { data: text, text };
}
