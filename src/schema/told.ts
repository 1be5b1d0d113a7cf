import { z } from 'zod';
import { correctedFields } from './dish-correction.ts';
import { dayText, idText } from './json-fields.ts';

/**
 * What a client was told of dishes whose food has become less safe than offered. Written by `told` under told/, one
 * file each time, and never changed: what is found out later has to be told again.
 */
export const toldSchema = z.strictObject({
  version: z.literal(1),
  kind: z.literal('told'),
  on: dayText.describe('the day the client was told'),
  proposal: idText,
  revision: z.int().min(1).max(999).describe('of the offer that said otherwise'),
  dishes: z
    .array(
      z.strictObject({
        ...correctedFields,
        unsaid: z.literal(true).optional().describe('nobody says any longer which allergens are in it'),
      }),
    )
    .min(1)
    .max(200),
});

/** One such record. */
export type Told = z.infer<typeof toldSchema>;
