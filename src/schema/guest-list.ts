import { z } from 'zod';
import { boundedText, dayText, digestText, idText } from './json-fields.ts';

/**
 * A guest list on its way to the kitchen's address; as a download or in a mail the CSV goes by itself. The CSV has
 * the columns name, table, main and need, and one more before need for each further course that guests choose in.
 */
export const guestListSchema = z.strictObject({
  version: z.literal(1),
  kind: z.literal('guest list'),
  event: idText.describe('the event whose guests these are'),
  offer: digestText.describe('the digest of the offer accepted'),
  made: dayText.describe('the day it was made, in the kitchen’s time zone'),
  csv: boundedText(48_000).describe('RFC 4180, UTF-8, one row per guest'),
  digest: digestText.describe('over the rest of the record, so that any damage in transit shows'),
});

/** A guest list as it is posted. */
export type GuestList = z.infer<typeof guestListSchema>;
