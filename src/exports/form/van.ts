import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { text, texts } from './text.ts';

const zone = (where: string) =>
  z.array(z.number()).describe(`Numbers of the carriers ${where}, in the order in which they are loaded.`);

export const vanSchema = z
  .object({
    vehicle: text('What the food travels in.'),
    weight: text('What is known to go along, in all.'),
    payload: text('The most that it may carry; empty where that is not stated.'),
    floor: text('The share of its floor that carriers take; empty where no size is stated.'),
    runs: z.number().describe('Runs, or vehicles like it, that take what is known; 1 where it fits.'),
    unweighed: texts('What goes along and whose weight nobody has stated.'),
    unsized: texts('Carriers whose size nobody has stated.'),
    zones: z
      .object({ cab: zone('behind the cab'), middle: zone('in the middle'), doors: zone('at the doors') })
      .describe('Needed last stands behind the cab, needed first at the doors; raw food lowest.'),
  })
  .meta({ id: 'van', description: 'How the load fits the vehicle, and where its carriers stand.' });

/** How the load fits the vehicle, and where its carriers stand. */
export type PlanVan = Fixed<z.infer<typeof vanSchema>>;
