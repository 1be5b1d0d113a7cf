import { type Offer, offerSchema } from '../schema/offer.ts';
import type { ContentText } from './content-texts.ts';
import { finding } from './finding.ts';
import type { ItemKey } from './item.ts';
import { hold, type Ledger } from './ledger.ts';
import { readJson } from './read-json.ts';

/** Why an offer's words and figures are not those that were issued; the check is the offers' own. */
export type OfferCheck = (offer: Offer) => { readonly what: string; readonly wayOut: string } | undefined;

/** Reads all issued offers, by proposal, revisions rising. One that was altered is held back. */
export function readOffers(
  ledger: Ledger,
  files: readonly ContentText[],
  checkOffer: OfferCheck | undefined,
): Map<string, Offer[]> {
  const offers = new Map<string, Offer[]>();
  for (const { id, file, text } of files) {
    const item: ItemKey = `offer/${id}`;
    const start = { file, line: 1, column: 1 };
    ledger.spots.set(item, [{ source: wholeFile(file), base: [] }]);
    const read = text === undefined ? undefined : readJson(file, text, offerSchema);
    if (!read || 'problem' in read) {
      if (read) ledger.findings.push(read.problem);
      hold(ledger, item, read ? read.problem.what : `${file} cannot be read`);
      continue;
    }
    const offer = read.value;
    const name = `${offer.proposal}-r${offer.revision}`;
    const altered = name === id ? checkOffer?.(offer) : undefined;
    if (name !== id) {
      const what = `the file holds revision ${offer.revision} of ${offer.proposal}`;
      ledger.findings.push(finding('record-name', start, what, `name it offers/${name}.json again`));
      hold(ledger, item, what);
    } else if (altered) {
      ledger.findings.push(finding('offer-altered', start, altered.what, altered.wayOut));
      hold(ledger, item, altered.what);
    } else offers.set(offer.proposal, [...(offers.get(offer.proposal) ?? []), offer]);
  }
  for (const revisions of offers.values()) revisions.sort((a, b) => a.revision - b.revision);
  return offers;
}

/** The place of anything in a file that is written whole and pointed to whole. */
export function wholeFile(file: string) {
  const place = { file, line: 1, column: 1 };
  return { file, data: undefined, placeOf: () => place, isReported: () => false };
}
