import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import { type CountChange, countChangeSchema } from '../schema/count-change.ts';
import type { CurrentEvent } from './current-event.ts';
import type { GuaranteeAsked } from './guarantee.ts';
import { readAnswer } from './read-answer.ts';

/** A count change's text, whole and unaltered (its own digest), or why it is none. */
export function readCountChange(text: string): Parsed<CountChange> {
  return readAnswer(text, countChangeSchema, 'count change');
}

/**
 * What a client's count change asks for of an event: all counts, needs and mains as they are now, the caterer's own
 * people left as they are. Refused where it is meant for another offer than the one accepted.
 */
export function askedBy(
  change: CountChange,
  { offer, status }: CurrentEvent,
): Parsed<Omit<GuaranteeAsked, 'belowFloor'>> {
  if (change.offer !== offer.digest)
    return notParsed(
      `this count change is for another offer than ${change.event} accepted`,
      'send the client the page again; it shows what was accepted',
    );
  const { adults, children, vendors } = change.guests;
  const dropped = Object.keys(status.choice.needs).filter((need) => !Object.hasOwn(change.needs, need));
  const needs = { ...Object.fromEntries(dropped.map((need) => [need, 0])), ...change.needs };
  return parsed({ adults, children, vendors, needs, needsAsWritten: true, mains: change.mains });
}
