import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { figuresSchema, text, texts } from './text.ts';

export const planChangesSchema = z
  .object({
    what: text('The change itself: `92 guests at the table instead of 84`.'),
    on: text('The day it was recorded, ISO 8601.'),
    dishes: z
      .array(figuresSchema.extend({ course: text('Name of the course.'), dish: text('Name of the dish.') }))
      .describe('What is served.'),
    batches: z
      .array(figuresSchema.extend({ recipe: text('Name of the recipe.') }))
      .describe('How many times recipes are made.'),
    packs: z
      .array(
        figuresSchema.extend({
          ingredient: text('Name of the ingredient.'),
          supplier: text('Name of the supplier.'),
          pack: text('The pack.'),
        }),
      )
      .describe('Whole packs to add or take back.'),
    // Add-ons too; in older plans also staff.
    packOut: z
      .array(
        figuresSchema.extend({
          group: text('What it is.'),
          item: text('Name of the dish, thing or role.'),
          container: text('Container of a dish; empty for none.'),
        }),
      )
      .describe('What goes to the event.'),
    // Orders, fees, staff, payments and the balance are missing in older plans.
    orders: z
      .array(figuresSchema.extend({ supplier: text('Name of the supplier.') }))
      .optional()
      .describe('Goods ordered, money text; empty on a side without an order.'),
    deliveryFees: z
      .array(figuresSchema.extend({ supplier: text('Name of the supplier.') }))
      .optional()
      .describe('Delivery fees, money text; empty on a side without an order.'),
    staff: z
      .array(
        figuresSchema.extend({
          role: text('Name of the role.'),
          hours: figuresSchema.describe('Hours of all of them together.'),
        }),
      )
      .optional()
      .describe('People who serve.'),
    payments: z
      .array(
        figuresSchema.extend({
          label: text('The payment, as in the terms.'),
          due: text('When it falls due, in words; empty while the event has no day.'),
        }),
      )
      .optional()
      .describe('What is still open of the client’s payments, money text.'),
    balance: figuresSchema
      .optional()
      .describe('The client’s total less what came in; negative where money is to be paid back.'),
    days: z
      .array(figuresSchema.extend({ date: text('ISO 8601.'), dateText: text('The same in words.') }))
      .describe('Hands-on time day by day.'),
    handsOn: figuresSchema.describe('Hands-on time over all days.'),
    total: figuresSchema.describe('What the client pays.'),
    foodCost: figuresSchema.describe('Food in whole packs; empty on a side where a price is missing.'),
    late: texts('What comes too late to be done as planned, a sentence each.'),
  })
  .meta({
    id: 'plan-changes',
    description: 'What a change of the event made of its plan. What stays is not in it.',
  });

/**
 * What a change of an event (another count, a substitution, a new day) makes of its plan, as the command line prints
 * it and the event's page shows it. What stays as it was is not in it. Empty text stands for nothing. Sums are in the
 * kitchen's currency; the client's total is what is billed by what is known now.
 */
export type PlanChangesDocument = Fixed<z.infer<typeof planChangesSchema>>;
