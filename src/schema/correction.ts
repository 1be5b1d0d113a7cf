import { z } from 'zod';
import { correctedFields } from './dish-correction.ts';
import { dayText, idText } from './json-fields.ts';

/**
 * What an issued offer's page was corrected by, once it was known for certain. Written by `build` under corrections/
 * before the page is published, one file each time, and never changed: what a client may have read stays on the page,
 * whatever becomes of the recipe or the ingredient later.
 */
export const correctionSchema = z.strictObject({
  version: z.literal(1),
  kind: z.literal('correction'),
  on: dayText.describe('the day of the build that published it'),
  proposal: idText,
  revision: z.int().min(1).max(999).describe('of the offer that stated something else'),
  dishes: z
    .array(
      z.strictObject({
        ...correctedFields,
        madeWith: z
          .array(idText)
          .min(1)
          .max(200)
          .optional()
          .describe('what swaps of this event had put into it; none where it was made as its recipe has it'),
      }),
    )
    .min(1)
    .max(200),
});

/** One such record. */
export type PublishedCorrection = z.infer<typeof correctionSchema>;
