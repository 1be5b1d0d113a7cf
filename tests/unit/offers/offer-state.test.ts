import { describe, expect, test } from 'vitest';
import { offerState } from '../../../src/offers/offer-state.ts';
import { accepted, day, eveningOf, issued, secondKitchen } from './second-kitchen.ts';

describe('where a proposal stands', () => {
  test('is a draft until it is issued, whatever the day', async () => {
    const book = await secondKitchen();
    expect(offerState(book, eveningOf(book), day('2027-12-31'))).toBe('draft');
  });

  test('is offered to the end of the last day of validity, and expired from the next', async () => {
    const book = issued(await secondKitchen());
    const on = (date: string) => offerState(book, eveningOf(book), day(date));
    expect([on('2027-05-09'), on('2027-05-10'), on('2027-05-11')]).toEqual(['offered', 'offered', 'expired']);
  });

  test('is judged by the offer, not by a validity edited since', async () => {
    const book = issued(await secondKitchen());
    const edited = { ...eveningOf(book), validUntil: day('2027-05-20') };
    expect(offerState(book, edited, day('2027-05-11'))).toBe('expired');
  });

  test('is withdrawn when it says so, and accepted whatever it says later', async () => {
    const book = issued(await secondKitchen());
    const withdrawn = { ...eveningOf(book), withdrawn: true };
    expect(offerState(book, withdrawn, day('2027-05-01'))).toBe('withdrawn');
    const event = accepted(await secondKitchen());
    expect(offerState(event, withdrawn, day('2027-06-01'))).toBe('accepted');
  });
});
