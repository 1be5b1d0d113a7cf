import { dateText } from '../exports/words/date-text.ts';
import type { OfferContent } from '../offers/issue/offer-content.ts';
import type { WordKey } from '../words/catalogues.ts';
import { wordsIn } from '../words/words-in.ts';

/** What a client is written to about: a draft to look at, an offer to accept, or what was accepted. */
export type LetterKind = 'draft' | 'offered' | 'accepted';

/** A short letter that brings a proposal's address: subject and plain text. */
export function offerLetter(
  content: OfferContent,
  {
    kind,
    address,
    withPdf,
  }: { readonly kind: LetterKind; readonly address: string; readonly withPdf: boolean },
): { readonly subject: string; readonly text: string } {
  const { kitchen, client, occasion, date, terms, validUntil } = content;
  const say = wordsIn(terms.locale);
  const job = `${occasion}, ${dateText(date, terms.locale)}`;
  const until = dateText(validUntil, terms.locale);
  const { subject, opening, closing } = LETTERS[kind];
  const paragraphs = [
    say('mail.greeting', { client: client.name }),
    say(opening, { job }),
    address,
    ...(closing === null ? [] : [say(closing, { date: until })]),
    ...(withPdf ? [say('mail.pdf')] : []),
    say('mail.link'),
    [kitchen.name, kitchen.town, kitchen.phone, kitchen.email]
      .filter((line) => line !== undefined)
      .join('\n'),
  ];
  return { subject: say(subject, { job }), text: `${paragraphs.join('\n\n')}\n` };
}

/** The words of a letter: its subject, the sentence before the address and the one after it. */
interface LetterWords {
  readonly subject: WordKey;
  readonly opening: WordKey;
  readonly closing: WordKey | null;
}

const LETTERS: Readonly<Record<LetterKind, LetterWords>> = {
  draft: { subject: 'mail.subject.draft', opening: 'mail.draft', closing: 'mail.draft.closing' },
  offered: { subject: 'mail.subject.offered', opening: 'mail.offered', closing: 'mail.offered.closing' },
  accepted: { subject: 'mail.subject.accepted', opening: 'mail.accepted', closing: null },
};
