import { dateText } from '../../exports/words/date-text.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import type { EventFact } from '../../schema/event-fact.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';
import { guestsText } from '../quote-view-of.ts';

/** A fact that changes what is planned. */
export type ChangingFact = Extract<EventFact, { kind: 'guarantee' | 'substitution' | 'postponed' }>;

/** Whether a fact changes what is planned. */
export function changesPlan(fact: EventFact): fact is ChangingFact {
  return fact.kind === 'guarantee' || fact.kind === 'substitution' || fact.kind === 'postponed';
}

/** What a change is, for the head of what follows from it. `nameOf` turns an id into a name. */
export function changeText(
  fact: ChangingFact,
  before: Pick<EventStatus, 'choice'>,
  locale: string,
  nameOf: (id: string) => string,
): string {
  const say = wordsIn(locale);
  const script = scriptWordsIn(locale);
  switch (fact.kind) {
    case 'guarantee':
      return say('plan.change.guaranteed', {
        guests: guestsText(script, fact),
        before: guestsText(script, before.choice),
      });
    case 'substitution':
      return say('alerts.instead-of', { dish: nameOf(fact.to), other: nameOf(fact.from) });
    case 'postponed':
      return fact.to === null
        ? say('plan.change.postponed', { day: dateText(fact.from, locale) })
        : say('plan.change.moved', {
            day: dateText(fact.from, locale),
            to: dateText(fact.to, locale),
          });
  }
}
