import type { Day } from '../../engine/calendar/day.ts';
import type { Parsed } from '../../engine/parsed.ts';
import type { ClientAnswer } from '../../schema/client-answer.ts';
import { readAcceptance } from './accept.ts';
import { readCountChange } from './read-count-change.ts';
import { readGuestList } from './read-guest-list.ts';

/**
 * Whatever a client's page made, whole and unaltered, or why it is none. What does not say its kind is read as an
 * acceptance, the first that a page makes.
 */
export function readClientAnswer(text: string): Parsed<ClientAnswer> {
  switch (kindIn(text)) {
    case 'count change':
      return readCountChange(text);
    case 'guest list':
      return readGuestList(text);
    default:
      return readAcceptance(text);
  }
}

/** The day an answer was made, in the kitchen's time zone. */
export function madeOn(answer: ClientAnswer): Day {
  return answer.kind === 'acceptance' ? answer.accepted : answer.made;
}

/** The proposal that an answer is about, whose name its event bears. */
export function answersTo(answer: ClientAnswer): string {
  return answer.kind === 'acceptance' ? answer.proposal : answer.event;
}

/** What a text says of itself; nothing of it is checked. */
function kindIn(text: string): unknown {
  try {
    const record: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    return typeof record === 'object' && record !== null && 'kind' in record ? record.kind : undefined;
  } catch {
    return undefined;
  }
}
