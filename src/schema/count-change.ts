import { z } from 'zod';
import {
  boundedText,
  dayText,
  digestText,
  guestCounts,
  idText,
  oneLine,
  peopleCount,
} from './json-fields.ts';

/**
 * A client's new counts for an accepted event, made by the proposal page up to the guarantee's deadline. Like an
 * acceptance it shows which offer is meant, not who wrote it; the kitchen takes it in as the guarantee.
 */
export const countChangeSchema = z.strictObject({
  version: z.literal(1),
  kind: z.literal('count change'),
  event: idText.describe('the event whose counts change'),
  offer: digestText.describe('the digest of the offer accepted'),
  made: dayText.describe('the day it was made, in the kitchen’s time zone'),
  guests: guestCounts.describe('all people by group as of now, not the difference'),
  needs: z.record(oneLine(80), peopleCount).describe('dietary need or allergy → guests, all of them'),
  withoutNeeds: z
    .array(oneLine(80))
    .max(60)
    .optional()
    .describe('needs on record that no guest has any more, confirmed by the client; left out: none'),
  mains: z
    .record(oneLine(120), z.record(idText, peopleCount))
    .describe('course → recipe id → guests, where each guest takes one dish'),
  name: oneLine(200).describe('who writes'),
  note: boundedText(4000).describe('a note from the client; empty for none'),
  digest: digestText.describe('over the rest of the record, so that any damage in transit shows'),
});

/** A client's new counts. */
export type CountChange = z.infer<typeof countChangeSchema>;
