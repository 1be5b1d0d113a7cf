import { type GuestList, guestListSchema } from '../../schema/guest-list.ts';
import { readAnswer } from './read-answer.ts';
import type { Judged } from './refusal.ts';

/** A posted guest list's text, whole and unaltered (its own digest), or why it is none. */
export function readGuestList(text: string): Judged<GuestList> {
  return readAnswer(text, guestListSchema, 'guest list');
}
