import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { text } from './text.ts';

const pieces = z.array(
  z.object({
    item: text('Name of the equipment.'),
    amperes: text('What one draws: `13 A`.'),
    from: text('HH:MM by the clock of the place.'),
    until: text('HH:MM.'),
  }),
);

export const powerSchema = z
  .object({
    stated: z.boolean().describe('False: nobody has stated the venue’s circuits.'),
    most: text('The most that all of it draws at once: `15.5 A`.'),
    circuits: z
      .array(
        z.object({
          name: text('`Circuit 1, 20 A`.'),
          most: text('The most that is drawn from it at once.'),
          pieces: pieces.describe('What is plugged into it, the largest first.'),
        }),
      )
      .describe('The venue’s circuits, in the order they are stated.'),
    off: pieces.describe('What finds no circuit.'),
  })
  .meta({ id: 'power', description: 'What is plugged in at the place, circuit by circuit.' });

/** What is plugged in at the place, circuit by circuit. */
export type PlanPower = Fixed<z.infer<typeof powerSchema>>;
