import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { amountSchema, text, texts, whole, why } from './text.ts';

export const drinksSchema = z
  .object({
    high: text('The day’s expected high; empty where it is not stated.'),
    hot: z.boolean().describe('Whether more is planned because the day is hot.'),
    total: whole('Drinks in all, up to a whole one.'),
    kinds: z
      .array(
        z.object({
          name: text('Name of the drink.'),
          recipe: text('Id of its recipe; empty for plain water.'),
          drinks: whole('How many are taken, up to a whole one.'),
          glass: text('What one drink is.'),
          amount: amountSchema.describe('What is carried, overage in it.'),
          ice: amountSchema
            .optional()
            .describe('Ice for it, before what melts; left out where it takes none.'),
          why: why(),
        }),
      )
      .describe('The kinds, plain water last.'),
    ice: z
      .object({
        inGlasses: amountSchema.describe('Ice that goes into glasses.'),
        inTubs: amountSchema.describe('Ice that cools bottles and cans.'),
        total: amountSchema.describe('Both, and what melts unused.'),
        ingredient: text('Id of what it is bought as; left out where the kitchen makes its own.').optional(),
        why: why(),
      })
      .nullable()
      .describe('The ice to bring; null where no drink takes any.'),
    cautions: texts('What the law asks where alcohol is served; empty where none is.'),
  })
  .meta({
    id: 'drinks',
    description: 'What guests drink, and the ice for it. Left out where a menu has no drinks.',
  });

/** What guests drink, and the ice for it. */
export type PlanDrinks = Fixed<z.infer<typeof drinksSchema>>;
