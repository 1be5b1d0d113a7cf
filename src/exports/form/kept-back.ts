import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { amountSchema, text, whole } from './text.ts';

export const keptBackSchema = z
  .object({
    dish: text('Name of the dish.'),
    seconds: whole('Portions kept for second helpings.'),
    late: whole('Portions kept for guests who come late.'),
    amount: amountSchema.describe('What these come to.'),
    hold: text('How it is kept: `hot`, `cold`, `frozen` or `room`.'),
    until: text('HH:MM until when it is kept; empty where the hours of service are not stated.'),
    why: text('What ends it.'),
  })
  .meta({ id: 'kept-back', description: 'What of a dish is kept back at the place.' });

/** What of a dish is kept back at the place. */
export type PlanKeptBack = Fixed<z.infer<typeof keptBackSchema>>;
