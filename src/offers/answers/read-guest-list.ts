import type { Parsed } from '../../engine/parsed.ts';
import { type GuestList, guestListSchema } from '../../schema/guest-list.ts';
import { readAnswer } from './read-answer.ts';

/** A posted guest list's text, whole and unaltered (its own digest), or why it is none. */
export function readGuestList(text: string): Parsed<GuestList> {
  return readAnswer(text, guestListSchema, 'guest list');
}
