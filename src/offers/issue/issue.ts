import { join } from 'node:path';
import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { Proposal } from '../../engine/menu/proposal.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { type Offer, offerSchema } from '../../schema/offer.ts';
import { digestOfRecord } from '../digest.ts';
import { heldOffer, RESTORE_OFFER } from './held-offer.ts';
import { offerContent } from './offer-content.ts';
import { offeredDishes } from './offered-dishes.ts';
import { unknownAllergens } from './unknown-allergens.ts';

/**
 * The next revision of a proposal's offer, frozen with its digest; nothing is written yet. Refused while any dish
 * has an ingredient whose allergens are not known, when the proposal is withdrawn, already accepted, past its
 * validity or its event's day, while an earlier revision cannot be read, and when nothing has changed since the last.
 */
export function nextOffer(book: Book, proposal: Proposal, today: Day): Parsed<Offer> {
  const refusal = refusalOf(book, proposal, today);
  if (refusal) return refusal;
  const content = offerContent(book, proposal);
  if (!content.ok) return content;
  const earlier = book.offers.get(proposal.id) ?? [];
  const last = earlier.at(-1);
  const revision = (last?.revision ?? 0) + 1;
  const record = { ...content.value, revision, issued: today };
  if (last && digestOfRecord({ ...record, revision: last.revision, issued: last.issued }) === last.digest) {
    return notParsed(
      `nothing has changed in ${proposal.id} since revision ${last.revision}`,
      'the current offer stays valid; change the proposal, a package or a price first',
    );
  }
  const offer = { ...record, digest: digestOfRecord(record) };
  // What could not be read back would be lost to everybody once it is written.
  const issue = offerSchema.safeParse(offer).error?.issues[0];
  return issue
    ? notParsed(`an offer can’t take its ${issue.path.join('.')}: ${issue.message}`, 'write it differently')
    : parsed(offer);
}

/** The file of an offer under the content folder. */
export function offerFile(contentDir: string, offer: Pick<Offer, 'proposal' | 'revision'>): string {
  return join(contentDir, 'offers', `${offer.proposal}-r${offer.revision}.json`);
}

function refusalOf(book: Book, proposal: Proposal, today: Day): Parsed<never> | undefined {
  const held = heldOffer(book, proposal.id);
  if (held) return notParsed(held, RESTORE_OFFER);
  if (proposal.withdrawn)
    return notParsed(`${proposal.id} is withdrawn`, 'delete `withdrawn: yes` to offer it again');
  if (book.events.has(proposal.id))
    return notParsed(
      `${proposal.id} has been accepted already`,
      'its offer stays as accepted; make a new proposal for anything more',
    );
  if (proposal.validUntil < today)
    return notParsed(
      `${proposal.id} is valid only until ${proposal.validUntil}, and today is ${today}`,
      'set a later `valid until`',
    );
  if (proposal.date <= today)
    return notParsed(
      `the event of ${proposal.id} is on ${proposal.date}, which is not in the future`,
      'set its date',
    );
  return unknownAllergens(offeredDishes(book.kitchen, proposal));
}
