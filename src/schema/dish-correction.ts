import { z } from 'zod';
import { idText, oneLine } from './json-fields.ts';

const shortTexts = z.array(oneLine(80)).max(60);

/** How much less safe a dish is than an offer says: the part that every record of it has. */
export const correctedFields = {
  recipe: idText,
  dish: oneLine(200),
  contains: shortTexts.describe('allergens it contains that the offer did not list'),
  mayContain: shortTexts.describe('allergens it may contain that the offer did not list'),
  lostMarks: shortTexts.describe('diets the offer claimed but it does not suit'),
  instead: idText
    .optional()
    .describe('the recipe served instead of it, which the rest of this entry is about'),
} as const;
