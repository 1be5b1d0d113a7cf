import { z } from 'zod';
import { dayText, idText, oneLine } from './json-fields.ts';

const shortTexts = z.array(oneLine(80)).max(60);

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
        recipe: idText,
        dish: oneLine(200),
        contains: shortTexts.describe('allergens it contains that the offer did not say'),
        mayContain: shortTexts.describe('allergens it may contain that the offer did not say'),
        lostMarks: shortTexts.describe('diets the offer claimed that it does not suit'),
        unsaid: z.literal(true).optional().describe('nobody says any longer which allergens are in it'),
      }),
    )
    .min(1)
    .max(200),
});

/** One such record. */
export type Told = z.infer<typeof toldSchema>;
