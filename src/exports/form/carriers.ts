import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { text, texts } from './text.ts';

export const carrierSchema = z
  .object({
    number: z.number().describe('1 for what is needed first.'),
    name: text('The kind of carrier.'),
    hold: text('How the food in it travels: `hot`, `cold`, `frozen` or `room`.'),
    raw: z.boolean().describe('True: raw food alone; it stands below what is ready to eat.'),
    foods: z
      .array(
        z.object({
          item: text('Name of the dish or food.'),
          container: text('What it is in.'),
          count: z.number().describe('How many of these.'),
          needed: text('HH:MM at which it is needed at the place.'),
        }),
      )
      .describe('What is needed first comes first.'),
    needed: text('HH:MM at which something in it is first needed.'),
    emptied: text('HH:MM at which the last of it is needed.'),
    weight: text('Carrier, containers, food and ice together; empty where one of them is not known.'),
    foodWeighs: text('What the food in it weighs, as far as that is known; empty where nothing is.'),
    unweighed: texts('Foods whose weight nothing tells.'),
    ice: z
      .object({
        amount: text('Ice for it, with some to spare.'),
        packs: z.number().nullable().describe('How many of its ice packs that is; null for loose ice.'),
        why: text('How it comes about.'),
      })
      .nullable()
      .describe('For cold food; null for other food.'),
    warmth: z
      .object({
        after: text('How warm the food still is when the last of it is needed.'),
        enough: z.boolean().describe('Whether that is as hot as hot food is held.'),
        why: text('How it comes about.'),
      })
      .nullable()
      .describe('For hot food whose weight is known; null for other food.'),
  })
  .meta({ id: 'carrier', description: 'A carrier and what is in it.' });

/** A carrier and what is in it. */
export type PlanCarrier = Fixed<z.infer<typeof carrierSchema>>;
