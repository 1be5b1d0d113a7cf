import { z } from 'zod';
import type { Choice } from '../engine/quote/choice.ts';
import { formOf } from './form-of.ts';
import { guestCounts, idText, oneLine, peopleCount } from './json-fields.ts';

const choice = z.strictObject({
  package: idText.describe('the menu chosen, by its id'),
  guests: guestCounts.describe('people by group'),
  courses: z
    .record(oneLine(120), z.array(idText).max(60))
    .describe('course → recipe ids, where some dishes are chosen for the whole party'),
  mains: z
    .record(oneLine(120), z.record(idText, peopleCount))
    .describe('course → recipe id → guests, where each guest takes one dish'),
  addOns: z
    .record(idText, z.number().min(0).max(72))
    .describe('add-on → hours of one priced by the hour, 1 of any other'),
  needs: z.record(oneLine(80), peopleCount).describe('dietary need or allergy → guests who have it'),
});

/** The form of a client's choice; whether it fits an offer's terms is `checkChoice`'s to say. */
export const choiceSchema = formOf<Choice>()(choice);
