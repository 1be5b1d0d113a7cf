import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import { type CountChange, countChangeSchema } from '../schema/count-change.ts';
import type { CurrentEvent } from './current-event.ts';
import { digestOfRecord } from './digest.ts';
import type { GuaranteeAsked } from './guarantee.ts';

/** The longest count change that is read, in characters; a real one has a thousand or two. */
const MOST_CHARACTERS = 65_536;
const ASK_AGAIN = 'ask the client to send the file again as the page made it';

/** A count change's text, whole and unaltered (its own digest), or why it is none. */
export function readCountChange(text: string): Parsed<CountChange> {
  if (text.length > MOST_CHARACTERS)
    return notParsed('this file is too long to be a count change', ASK_AGAIN);
  let record: unknown;
  try {
    record = JSON.parse(text);
  } catch {
    return notParsed('this file is no count change: it is not JSON', ASK_AGAIN);
  }
  const checked = countChangeSchema.safeParse(record);
  if (!checked.success) {
    const [issue] = checked.error.issues;
    const where = issue?.path.length ? ` at ${issue.path.join('.')}` : '';
    return notParsed(`this file is no count change that Salver knows${where}: ${issue?.message}`, ASK_AGAIN);
  }
  const digests = [digestOfRecord(record as object), digestOfRecord(checked.data)];
  return digests.every((each) => each === checked.data.digest)
    ? parsed(checked.data)
    : notParsed('this count change was altered or damaged after it was made', ASK_AGAIN);
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
