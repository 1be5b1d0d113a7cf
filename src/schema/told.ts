import { z } from 'zod';
import { correctedFields } from './dish-correction.ts';
import { dayText, idText } from './json-fields.ts';

/**
 * What a client was told of dishes whose food has become less safe than offered, and of substitutions. Written by
 * `told` under told/, one file each time, and never changed: what is found out later has to be told again.
 */
export const toldSchema = z.strictObject({
  version: z.literal(1),
  kind: z.literal('told'),
  on: dayText.describe('the day the client was told'),
  proposal: idText,
  revision: z.int().min(1).max(999).describe('of the offer that stated something else'),
  dishes: z
    .array(
      z.strictObject({
        ...correctedFields,
        unsaid: z.literal(true).optional().describe('the allergens in it are no longer stated'),
      }),
    )
    .max(200),
  substitutions: z
    .array(z.int().min(1).max(999))
    .max(200)
    .optional()
    .describe('the event’s substitutions that the client was told about, by the numbers of their facts'),
});

/** One such record. */
export type Told = z.infer<typeof toldSchema>;
