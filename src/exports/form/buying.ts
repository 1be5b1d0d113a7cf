import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { amountSchema, text, whole, why } from './text.ts';

export const purchaseSchema = z
  .object({
    ingredient: text('Id of the ingredient.'),
    name: text('Its name.'),
    need: amountSchema.describe('What is needed as purchased, unrounded.'),
    usedBy: z
      .array(
        z.object({
          recipe: text('Name of the recipe.'),
          need: amountSchema.describe('What it takes as purchased.'),
          why: why(),
        }),
      )
      .describe('What needs it.'),
    stock: amountSchema.nullable().describe('What of the need is taken from stock; null for nothing.'),
    packs: z
      .array(
        z.object({
          supplier: text('Id of the supplier.'),
          supplierName: text('Name of the supplier.'),
          pack: text('The pack as its price list writes it.'),
          itemNumber: text('The supplier’s number for it; empty for none.'),
          count: whole('How many packs.'),
          price: text('Price of one pack.'),
          cost: text('Price of all.'),
        }),
      )
      .describe('Whole packs to buy; empty where nothing is bought or no price is known.'),
    bought: amountSchema
      .nullable()
      .describe('What the packs hold with the stock; null where no price is known.'),
    left: amountSchema.nullable().describe('What is left over; null for nothing.'),
    leftWorth: text('Value of what is left over, at pack prices.').nullable(),
    cost: text('Cost of the packs.').nullable(),
    why: why(),
  })
  .meta({ id: 'purchase', description: 'A food to buy. Money is in the currency of the event.' });

/** A food to buy, and the packs that cover it. */
export type PlanPurchase = Fixed<z.infer<typeof purchaseSchema>>;

export const orderSchema = z
  .object({
    supplier: text('Id of the supplier.'),
    name: text('Name of the supplier.'),
    goods: text('Cost of the packs.'),
    minimumOrder: text('The supplier’s minimum order.'),
    deliveryFee: text('What delivery costs.'),
    total: text('Goods and delivery.'),
    deliverOn: text('The day of delivery, ISO 8601.'),
    deliverOnText: text('The same in words.'),
    orderBy: text('The last day to order, so that the goods are there when the first task needs them.'),
    orderByText: text('The same in words.'),
    short: text('How far the order is below the minimum; empty when it is reached.'),
  })
  .meta({ id: 'order', description: 'What is ordered from one supplier.' });

/** What is ordered from one supplier. */
export type PlanOrder = Fixed<z.infer<typeof orderSchema>>;
