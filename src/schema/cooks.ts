import { z } from 'zod';
import { line } from './text-fields.ts';

/** Who cooks on a day: the kitchen’s crew on any day of preparation, or a proposal’s on the event’s own. */
export const cooksSchema = z.strictObject({
  people: line('how many people cook in the kitchen that day', '4'),
  hours: line('how long each of them works', '8 hours'),
  from: line(
    'when they start; default: not stated, and times count from the start of the day',
    '7:00 am',
  ).optional(),
});

/** It as a file writes it. */
export type CooksText = z.infer<typeof cooksSchema>;
