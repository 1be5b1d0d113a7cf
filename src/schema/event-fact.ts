import { z } from 'zod';
import { acceptanceSchema } from './acceptance.ts';
import { dayText, digestText, idText, moneyText, oneLine } from './json-fields.ts';

const paymentReceived = z.strictObject({
  amount: moneyText.describe('what came in, in the offer’s currency'),
  on: dayText.describe('the day it came in'),
  method: oneLine(80).optional().describe('how it came: transfer, cheque, cash'),
});

const acceptedFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('accepted'),
  on: dayText.describe('the day the acceptance was taken'),
  proposal: idText,
  revision: z.int().min(1).max(999),
  digest: digestText.describe('of the offer accepted'),
  acceptance: acceptanceSchema,
});

const confirmedFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('confirmed'),
  on: dayText.describe('the day the date was confirmed to the client'),
  received: paymentReceived.describe('the deposit that confirms it'),
});

const paymentFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('payment'),
  on: dayText.describe('the day it was written down'),
  received: paymentReceived,
});

/**
 * One thing that happened to an event, in a file of its own under events/<event>/, numbered in the order written
 * and never changed. The first is always `accepted`.
 */
export const eventFactSchema = z.discriminatedUnion('kind', [acceptedFact, confirmedFact, paymentFact]);

/** One fact of an event. */
export type EventFact = z.infer<typeof eventFactSchema>;
/** The acceptance that began the event. */
export type AcceptedFact = z.infer<typeof acceptedFact>;
/** The deposit is in and the date is kept. */
export type ConfirmedFact = z.infer<typeof confirmedFact>;
/** A further payment. */
export type PaymentFact = z.infer<typeof paymentFact>;
