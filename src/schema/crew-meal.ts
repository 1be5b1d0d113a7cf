import { z } from 'zod';
import { byId, line } from './text-fields.ts';

/** What the crew eats: words, or dishes with the amount for one person. */
export const crewMealSchema = z.preprocess(
  byForm,
  z.strictObject({
    eats: line('`none`, `the menu`, or a share of the menu', '75 % of the menu').optional(),
    dishes: byId(
      line('the amount for one person', '6 oz'),
      'recipe → the amount for one person, in a unit that it makes or converts to',
    ).optional(),
  }),
);

/** What the crew eats as a file writes it. */
export type CrewMealText = z.infer<typeof crewMealSchema>;

/** Words stand for what is eaten, a mapping for dishes. */
function byForm(raw: unknown): unknown {
  if (typeof raw === 'string') return { eats: raw };
  return typeof raw === 'object' && raw !== null ? { dishes: raw } : raw;
}
