import { z } from 'zod';

/**
 * A row of prices/<supplier>.csv. Its first line names the columns; a supplier's own names for them are given once in
 * suppliers.yaml.
 */
export const priceRowSchema = z.strictObject({
  ingredient: z.string().min(1).max(300).describe('the food, by its id or the supplier’s own name for it'),
  pack: z
    .string()
    .min(1)
    .max(80)
    .describe('what one pack holds: 50 lb sack, 2/10 lb, 6/#10, 6 x 1 can, about 12 lb piece'),
  price: z.string().min(1).max(80).describe('of the pack, 31.50, or by weight, 8.40 per lb'),
  'item number': z.string().max(80).describe('the supplier’s item number; may be empty'),
  'valid from': z.string().min(1).max(40).describe('the day the price starts, 2027-04-26'),
});

/** A column that Salver reads in a price list, by its own name for it. */
export type PriceColumn = keyof z.infer<typeof priceRowSchema>;

/** All of them, in the order in which the demo's lists have them. */
export const PRICE_COLUMNS = Object.keys(priceRowSchema.shape) as PriceColumn[];
