import { describe, expect, test } from 'vitest';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { digestOfRecord } from '../../../src/offers/digest.ts';
import type { Offer } from '../../../src/schema/offer.ts';
import { offerOf, secondKitchen } from './second-kitchen.ts';

const anOffer = async () => offerOf(await secondKitchen());
/** An offer whose digest fits what it says now, as if it had been issued so. */
const sealed = (offer: Offer): Offer => ({ ...offer, digest: digestOfRecord(offer) });

describe('an issued offer', () => {
  test('is sound as it was issued', async () => {
    expect(offerProblem(await anOffer())).toBeUndefined();
  });

  test('is told as changed where anything in it was edited', async () => {
    const offer = await anOffer();
    expect(offerProblem({ ...offer, letter: `${offer.letter} ` })?.what).toMatch(
      /was changed after it was issued$/,
    );
  });

  test('is told where any one of its sample totals comes out as another sum, also the last by a cent', async () => {
    const offer = await anOffer();
    expect(offer.samples.length).toBeGreaterThan(1);
    for (const at of offer.samples.keys()) {
      const samples = offer.samples.map((sample, index) =>
        index === at
          ? { ...sample, total: sample.total.replace(/\d$/, (digit) => String((Number(digit) + 1) % 10)) }
          : sample,
      );
      const euros = new Intl.NumberFormat('en-IE', { style: 'currency', currency: 'EUR' });
      const [was, now] = [samples, offer.samples].map((each) => euros.format(Number(each[at]!.total)));
      expect(offerProblem(sealed({ ...offer, samples }))?.what).toContain(
        `was issued with a total of ${was}, but it now comes to ${now}`,
      );
    }
  });

  test('is told, not thrown, where a sample’s choice can no longer be priced', async () => {
    const offer = await anOffer();
    const [first, ...rest] = offer.samples;
    const samples = [{ ...first!, choice: { ...first!.choice, package: 'gone' } }, ...rest];
    expect(offerProblem(sealed({ ...offer, samples }))?.what).toContain('but it can’t be priced now');
  });
});
