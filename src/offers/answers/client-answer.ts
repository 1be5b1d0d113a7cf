import type { Day } from '../../engine/calendar/day.ts';
import type { ClientAnswer } from '../../schema/client-answer.ts';
import { readAcceptance } from './accept.ts';
import { readCountChange } from './read-count-change.ts';
import { readGuestList } from './read-guest-list.ts';
import type { Judged } from './refusal.ts';

/**
 * Whatever a client's page made, whole and unaltered, or why it is none. What does not say its kind is read as an
 * acceptance, the first that a page makes.
 */
export function readClientAnswer(text: string): Judged<ClientAnswer> {
  switch (kindOf(text)) {
    case 'count change':
      return readCountChange(text);
    case 'guest list':
      return readGuestList(text);
    case 'acceptance':
      return readAcceptance(text);
  }
}

/** The kind that a text is read as. */
export function kindOf(text: string): ClientAnswer['kind'] {
  const kind = kindIn(text);
  return kind === 'count change' || kind === 'guest list' ? kind : 'acceptance';
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
