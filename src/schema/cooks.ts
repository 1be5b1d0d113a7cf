import { z } from 'zod';
import { byId, line } from './text-fields.ts';

/** Who cooks on a day: the kitchen’s crew on any day of preparation, or a proposal’s on the event’s own. */
export const cooksSchema = z.strictObject({
  people: line('how many people cook in the kitchen that day', '4'),
  hours: line('how long each of them works', '8 hours'),
  from: line(
    'when they start; default: not stated, and times count from the start of the day',
    '7:00 am',
  ).optional(),
  skills: byId(
    line('how many of these people have the skill', '1'),
    'skill → how many of these people have it; a recipe’s step with that `skill` waits for one of them; default in a proposal: the crew’s, as far as there are people',
  ).optional(),
});

/** It as a file writes it. */
export type CooksText = z.infer<typeof cooksSchema>;
