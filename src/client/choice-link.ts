import { SIGNATURE_FIELDS } from '../views/client/proposal-choice-fields.ts';
import type { Texts } from './form-texts.ts';

/** Says that a fragment holds a choice, and in which form. */
const MARK = 'choice';
const FORM = '1';
/** The most characters of a fragment that are read. */
const MOST_CHARACTERS = 20_000;
const PRIVATE: readonly string[] = [...SIGNATURE_FIELDS, 'guest-list'];

/** A choice as a link brought it. */
export interface LinkedChoice {
  readonly texts: Texts;
  /** False where the link was made for another offer or revision, so that the choice may no longer fit. */
  readonly sameOffer: boolean;
}

/**
 * The part of an address after `#` that reopens the page with a choice. A browser never sends it to a server, and who
 * answers is not in it.
 */
export function choiceFragment(texts: Texts, digest: string): string {
  const parts = new URLSearchParams([
    [MARK, FORM],
    ['offer', digest.slice(0, 12)],
  ]);
  for (const [name, text] of texts) if (!PRIVATE.includes(name)) parts.append(name, text.toWellFormed());
  return `#${parts}`;
}

/** The choice in a fragment; null where it holds none. Names and values are whatever somebody wrote into the link. */
export function linkedChoice(fragment: string, digest: string): LinkedChoice | null {
  if (!fragment.startsWith(`#${MARK}=${FORM}&`) || fragment.length > MOST_CHARACTERS) return null;
  const parts = new URLSearchParams(fragment.slice(1));
  const offer = parts.get('offer');
  const texts = [...parts].filter(([name]) => name !== MARK && name !== 'offer' && !PRIVATE.includes(name));
  return { texts: new Map(texts), sameOffer: offer === digest.slice(0, 12) };
}
