import type { Day } from '../engine/calendar/day.ts';
import { dateText } from '../exports/words/date-text.ts';
import type { OfferContent } from '../offers/issue/offer-content.ts';

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
  const { kitchen, client, occasion, date, terms } = content;
  const day = (each: Day) => dateText(each, terms.locale);
  const job = `${occasion}, ${day(date)}`;
  const paragraphs = [
    `Dear ${client.name},`,
    OPENINGS[kind](job),
    address,
    ...CLOSINGS[kind](day(content.validUntil)),
    ...(withPdf ? ['A printable copy is attached.'] : []),
    'Whoever has the address can open the page, so please pass it on only to those who should see it.',
    [kitchen.name, kitchen.town, kitchen.phone, kitchen.email]
      .filter((line) => line !== undefined)
      .join('\n'),
  ];
  return { subject: `${SUBJECTS[kind]}: ${job}`, text: `${paragraphs.join('\n\n')}\n` };
}

const SUBJECTS: Readonly<Record<LetterKind, string>> = {
  draft: 'First draft',
  offered: 'Our proposal',
  accepted: 'Your event',
};

const OPENINGS: Readonly<Record<LetterKind, (job: string) => string>> = {
  draft: (job) => `Here is a first draft of our proposal for you (${job}):`,
  offered: (job) => `Our proposal for you is ready (${job}):`,
  accepted: (job) => `Thank you for accepting our proposal (${job}). Its page shows what was agreed:`,
};

const CLOSINGS: Readonly<Record<LetterKind, (validUntil: string) => string[]>> = {
  draft: () => ['It is not an offer yet: prices and menus may change, and it cannot be accepted.'],
  offered: (validUntil) => [
    `You can accept it on the page until ${validUntil}. Please tell us about every allergy among your guests.`,
  ],
  accepted: () => [],
};
