import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { orderSchema, purchaseSchema } from './buying.ts';
import { carrierSchema } from './carriers.ts';
import { planChangesSchema } from './changes.ts';
import { daySchema, timelineEntrySchema } from './day.ts';
import { drinksSchema } from './drinks.ts';
import { alertSchema, coverageSchema, eventSchema } from './event.ts';
import { dishSchema, recipeSchema } from './food.ts';
import { keptBackSchema } from './kept-back.ts';
import { leaderSchema } from './leader.ts';
import { oddsSchema } from './odds.ts';
import { powerSchema } from './power.ts';
import { returnLineSchema } from './return-list.ts';
import { labelSchema, packOutLineSchema, safetySheetSchema } from './sheets.ts';
import { tablesSchema } from './tables.ts';
import { text, texts } from './text.ts';
import { vanSchema } from './van.ts';

/** The form of the prep-plan document. Its type follows from it, and so does the form published for other programs. */
export const prepPlanSchema = z.object({
  version: z.literal(1).describe('Version of this form.'),
  kind: z.literal('prep plan').describe('What this document is.'),
  event: eventSchema,
  alerts: z
    .array(alertSchema)
    .describe('What must be read before anything is cooked, the most dangerous first.'),
  coverage: z.array(coverageSchema).describe('What each course and the whole meal have for each need.'),
  dishes: z.array(dishSchema).describe('Every dish, and beside it the portions that are made separately.'),
  crewMeals: z
    .array(dishSchema)
    .describe('What the crew eats, for no guest; left out where nothing is planned for them.')
    .optional(),
  keptBack: z
    .array(keptBackSchema)
    .describe('What is kept back at the place for second helpings and late guests; left out for nothing.')
    .optional(),
  odds: oddsSchema.optional(),
  drinks: drinksSchema.optional(),
  tables: tablesSchema.nullable().describe('From the guest list; null while there is none.'),
  recipes: z.array(recipeSchema).describe('Every recipe that is made, scaled for this event.'),
  shopping: z.array(purchaseSchema).describe('Every food that is needed, and the packs that cover it.'),
  orders: z.array(orderSchema).describe('The same by supplier.'),
  foodCost: text('Cost of the whole packs without delivery; null while a price is missing.').nullable(),
  deliveryFees: text('Delivery fees of all orders.'),
  foodUsed: text('What the food needed costs at pack prices, stock included.').nullable(),
  timeline: z.array(timelineEntrySchema).describe('The event’s day worked back from serving.'),
  days: z.array(daySchema).describe('The days of work.'),
  packOut: z.array(packOutLineSchema).describe('What goes to the event.'),
  leader: leaderSchema.optional(),
  power: powerSchema.optional(),
  carriers: z
    .array(carrierSchema)
    .describe('What is in each carrier; left out where the kitchen states no carriers.')
    .optional(),
  van: vanSchema.optional(),
  returns: z
    .array(returnLineSchema)
    .describe('What comes back; missing in plans made before it was listed.')
    .optional(),
  labels: z.array(labelSchema).describe('One label for each container that leaves the kitchen.'),
  // On no load list; left out where nothing is made ahead, and in plans made before such food had labels.
  prepLabels: z
    .array(labelSchema)
    .describe(
      'One label for each container of a part made ahead, which waits in the kitchen for what it goes into.',
    )
    .optional(),
  findings: z
    .array(
      z.object({
        about: text('What it is about.'),
        what: text('What does not fit.'),
        wayOut: text('What can be done.'),
      }),
    )
    .describe('What does not fit, with a way out.'),
  safetySheet: safetySheetSchema,
  cautions: texts('Standing cautions on allergens and food safety.'),
  lastChange: planChangesSchema
    .nullable()
    .describe('What the last change of the event made of this plan; null where nothing has changed.'),
});

/**
 * `prep-plan.json`: everything the kitchen needs for one event, as text that people and programs read alike.
 * The kitchen's pages, papers and lists show this document and nothing else, so that a figure is the same
 * everywhere. Exact figures are fractions as text (`25/16 gal`), printed ones are kitchen amounts.
 */
export type PrepPlanDocument = Fixed<z.infer<typeof prepPlanSchema>>;

/** The name of the published form, and where an event's own file finds it. */
export const PREP_PLAN_SCHEMA_FILE = 'prep-plan.schema.json';
export const PREP_PLAN_SCHEMA_FROM_EVENT = `../../${PREP_PLAN_SCHEMA_FILE}`;

/**
 * The published form: JSON Schema, draft 2020-12. A file may name it as its `$schema`, so that an editor explains each
 * field. A field that the form does not know is an error, since form and files are written together.
 */
export function prepPlanJsonSchema(): object {
  const file = prepPlanSchema.extend({
    $schema: text('This form, from where the file lies.').optional(),
  });
  return {
    title: 'Prep plan',
    description:
      'Everything a kitchen needs for one event. Exact figures are fractions as text, money is text at the minor unit of the event’s currency. Allergens follow what the kitchen states about its ingredients; the local food code and a licensed food-safety manager have the last word.',
    ...z.toJSONSchema(file),
  };
}
