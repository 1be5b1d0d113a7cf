import type { Day } from '../../engine/calendar/day.ts';
import { allergenAsRead } from '../../exports/words/allergen-as-read.ts';
import { dateText } from '../../exports/words/date-text.ts';
import type { EventFact } from '../../schema/event-fact.ts';
import { wordsIn } from '../../words/words-in.ts';

/** Something that has changed since a client accepted, and the day it did. */
export interface EventChange {
  readonly on: Day;
  readonly text: string;
}

/** What a client is told on the page of what they accepted: other dishes and allergens, another day, the end of it. */
export function eventChanges(facts: readonly EventFact[], locale: string): EventChange[] {
  const say = wordsIn(locale);
  return facts.flatMap((fact): EventChange[] => {
    const { on } = fact;
    if (fact.kind === 'substitution')
      return fact.tell.map((text) => ({ on, text: allergenAsRead(text, locale) }));
    if (fact.kind === 'cancelled') return [{ on, text: say('changes.since.cancelled') }];
    if (fact.kind !== 'postponed') return [];
    const from = dateText(fact.from, locale);
    if (fact.to === null) return [{ on, text: say('changes.since.postponed', { from }) }];
    const words = fact.hold ? 'changes.since.moved-held' : 'changes.since.moved';
    return [{ on, text: say(words, { from, to: dateText(fact.to, locale) }) }];
  });
}
