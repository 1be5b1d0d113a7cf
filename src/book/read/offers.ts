import { isDeepStrictEqual } from 'node:util';
import { type Offer, offerSchema } from '../../schema/offer.ts';
import type { ContentText } from '../files/content-texts.ts';
import { readJson } from '../files/read-json.ts';
import { finding } from '../findings/finding.ts';
import type { ItemKey } from '../item.ts';
import { hold, type Ledger } from '../ledger.ts';

/** Why an offer's words and figures are not those that were issued; the check is the offers' own. */
export type OfferCheck = (offer: Offer) => { readonly what: string; readonly wayOut: string } | undefined;

/** The texts of offers' files that were found sound before and need not be checked again. */
export interface SoundOffers {
  has(text: string): boolean;
  add(text: string): void;
}

/**
 * Reads all issued offers, by proposal, revisions rising. One that was altered is held back. A text that `sound` knows
 * is taken as it is.
 */
export function readOffers(
  ledger: Ledger,
  files: Iterable<ContentText>,
  checkOffer: OfferCheck | undefined,
  sound?: SoundOffers,
): Map<string, Offer[]> {
  const offers = new Map<string, Offer[]>();
  for (const { id, file, text } of files) {
    const item: ItemKey = `offer/${id}`;
    const start = { file, line: 1, column: 1 };
    ledger.spots.set(item, [{ source: wholeFile(file), base: [] }]);
    const known = text !== undefined && sound?.has(text);
    const read =
      text === undefined
        ? undefined
        : known
          ? { value: JSON.parse(text) as Offer }
          : readJson(file, text, offerSchema);
    if (!read || 'problem' in read) {
      if (read) ledger.findings.push(read.problem);
      hold(ledger, item, read ? read.problem.what : `${file} can’t be read`);
      continue;
    }
    const offer = read.value;
    const name = `${offer.proposal}-r${offer.revision}`;
    const altered = name === id && !known ? checkOffer?.(offer) : undefined;
    if (name !== id) {
      const what = `the file holds revision ${offer.revision} of ${offer.proposal}`;
      ledger.findings.push(finding('record-name', start, what, `name it offers/${name}.json again`));
      hold(ledger, item, what);
    } else if (altered) {
      ledger.findings.push(finding('offer-altered', start, altered.what, altered.wayOut));
      hold(ledger, item, altered.what);
    } else {
      // The offer with its entries in the order of its file, so that it is published alike whether checked now or
      // before; only what its form leaves as it is may be taken from the bare text.
      const written = known || text === undefined ? offer : (JSON.parse(text) as Offer);
      const asItIs = isDeepStrictEqual(written, offer);
      offers.set(offer.proposal, [...(offers.get(offer.proposal) ?? []), asItIs ? written : offer]);
      if (asItIs && checkOffer && !known && text !== undefined) sound?.add(text);
    }
  }
  for (const revisions of offers.values()) revisions.sort((a, b) => a.revision - b.revision);
  return offers;
}

/** The place of anything in a file that is written whole and pointed to whole. */
export function wholeFile(file: string) {
  const place = { file, line: 1, column: 1 };
  return { file, data: undefined, placeOf: () => place, isReported: () => false };
}
