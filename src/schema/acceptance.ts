import { z } from 'zod';
import { choiceSchema } from './choice.ts';
import { boundedText, dayText, digestText, idText, moneyText, oneLine } from './json-fields.ts';

/**
 * A client's answer to an offer, made by the proposal page. It proves which offer was accepted and what was
 * chosen from it, not who chose: whoever holds the link can write one.
 */
export const acceptanceSchema = z.strictObject({
  version: z.literal(1),
  kind: z.literal('acceptance'),
  proposal: idText.describe('the proposal accepted'),
  revision: z.int().min(1).max(999).describe('the revision accepted'),
  offer: digestText.describe('the offer’s digest, which shows exactly which offer was accepted'),
  accepted: dayText.describe('the day of acceptance'),
  choice: choiceSchema.describe('what was chosen'),
  total: moneyText.describe('the total that the client saw; recomputed before it is taken'),
  name: oneLine(200).describe('who accepts'),
  email: z.email().max(254).describe('where the answer goes'),
  note: boundedText(4000).describe('a note from the client; empty for none'),
  agreed: z.literal(true).describe('the client agreed to the terms shown'),
  digest: digestText.describe('over the rest of the acceptance, so that any damage in transit shows'),
});

/** A client's acceptance of an offer. */
export type Acceptance = z.infer<typeof acceptanceSchema>;
