import { statement } from '../../engine/text/statement.ts';
import { type CountChange, countChangeSchema } from '../../schema/count-change.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import type { CurrentEvent } from '../event/current-event.ts';
import type { GuaranteeAsked } from '../event/guarantee.ts';
import { droppedWords, problemClause } from '../problem-words.ts';
import { answerProblems, needsDropped } from './client-may.ts';
import { readAnswer } from './read-answer.ts';
import { type Judged, refusal } from './refusal.ts';

/** A count change's text, whole and unaltered (its own digest), or why it is none. */
export function readCountChange(text: string): Judged<CountChange> {
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
): Judged<Omit<GuaranteeAsked, 'belowFloor'>> {
  if (change.offer !== offer.digest)
    return refusal(
      statement('answers.count-other-offer', { event: change.event }),
      statement('answers.other-offer.way'),
    );
  const { guests, mains } = change;
  const recorded = status.choice;
  const asked = { ...recorded, guests, mains, needs: change.needs };
  const say = scriptWordsIn(offer.terms.locale);
  const held = { terms: offer.terms, proposed: offer.proposed.guests };
  const [problem] = answerProblems(held, asked, recorded.guests);
  if (problem)
    return refusal(
      statement('answers.count-misfit', { path: problem.path, problem: problemClause(say, problem) }),
      statement('answers.count-misfit.way'),
    );
  const taken = needsDropped(recorded.needs, change.needs);
  if (taken.length > 0 && !dropNeeds)
    return refusal(
      statement('answers.drops-recorded', { needs: droppedWords(say, taken) }),
      statement('answers.drops-recorded.way'),
    );
  const { adults, children, vendors } = guests;
  const dropped = Object.keys(status.choice.needs).filter((need) => !Object.hasOwn(change.needs, need));
  const needs = { ...Object.fromEntries(dropped.map((need) => [need, 0])), ...change.needs };
  return { ok: true, value: { adults, children, vendors, needs, needsAsWritten: true, mains } };
}
