import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { type CountChange, countChangeSchema } from '../../schema/count-change.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import type { CurrentEvent } from '../event/current-event.ts';
import type { GuaranteeAsked } from '../event/guarantee.ts';
import { droppedWords, problemWords } from '../problem-words.ts';
import { answerProblems, needsDropped } from './client-may.ts';
import { readAnswer } from './read-answer.ts';

/** A count change's text, whole and unaltered (its own digest), or why it is none. */
export function readCountChange(text: string): Parsed<CountChange> {
  return readAnswer(text, countChangeSchema, 'count change');
}

/**
 * What a client's count change asks for of an event: all counts, needs and mains as they are now, the caterer's own
 * people left as they are. Refused where it is meant for another offer than the one accepted, says more than a client
 * may, or takes off a need on record while `dropNeeds` does not say that somebody has asked.
 */
export function askedBy(
  change: CountChange,
  { offer, status }: CurrentEvent,
  { dropNeeds }: { readonly dropNeeds: boolean },
): Parsed<Omit<GuaranteeAsked, 'belowFloor'>> {
  if (change.offer !== offer.digest)
    return notParsed(
      `this count change is for another offer than ${change.event} accepted`,
      'send the client the page again; it shows what was accepted',
    );
  const { guests, mains } = change;
  const recorded = status.choice;
  const asked = { ...recorded, guests, mains, needs: change.needs };
  const say = scriptWordsIn(offer.terms.locale);
  const held = { terms: offer.terms, proposed: offer.proposed.guests };
  const [problem] = answerProblems(held, asked, recorded.guests);
  if (problem)
    return notParsed(
      `it does not fit the offer at ${problem.path}: ${problemWords(say, problem).replace(/\.$/, '')}`,
      'ask the client to send the counts again from the page',
    );
  const taken = needsDropped(recorded.needs, change.needs);
  if (taken.length > 0 && !dropNeeds)
    return notParsed(
      `it drops the need on record for ${droppedWords(say, taken)}, so nothing would be cooked for them`,
      'ask the client; if it is right, record it with --drop-needs',
    );
  const { adults, children, vendors } = guests;
  const dropped = Object.keys(status.choice.needs).filter((need) => !Object.hasOwn(change.needs, need));
  const needs = { ...Object.fromEntries(dropped.map((need) => [need, 0])), ...change.needs };
  return parsed({ adults, children, vendors, needs, needsAsWritten: true, mains });
}
