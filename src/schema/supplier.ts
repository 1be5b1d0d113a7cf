import { z } from 'zod';
import { SLASH_MEANINGS } from '../engine/purchase/pack-slash.ts';
import { line, list, mappingOf, oneOf } from './text-fields.ts';

/** One supplier in suppliers.yaml, under the id that also names its price list, prices/<id>.csv. */
export const supplierSchema = z.strictObject({
  name: line('its name on orders', 'Green Quay Produce'),
  'lead days': line('days from order to delivery; default 1', '1').optional(),
  'delivery days': list('days on which it delivers; default: every day', 'mon, wed, fri').optional(),
  'minimum order': line('the least an order must come to; default: none', '150.00').optional(),
  'delivery fee': line('what a delivery costs; default: nothing', '25.00').optional(),
  'slash in packs': oneOf(
    SLASH_MEANINGS,
    'what 1/2 LB means on its price list: fraction, half a pound, or count/size, one pack of 2 lb; default: fraction, and `check` notes where it matters; 2/10 LB is two of 10 lb either way',
  ).optional(),
  columns: z
    .strictObject({
      ingredient: line('the list’s own name for the food column', 'Item').optional(),
      pack: line('the list’s own name for the pack column', 'Pack Size').optional(),
      price: line('the list’s own name for the price column', 'Case Price').optional(),
      'item number': line('the list’s own name for the item number column', 'Code').optional(),
      'valid from': line('the list’s own name for the date column', 'Since').optional(),
    })
    .optional()
    .meta({ description: 'its price list’s column names, where they differ from Salver’s' }),
  names: mappingOf(
    line('the ingredient’s id', 'potato'),
    'its list’s name for a food → the ingredient’s id',
  ).optional(),
});

/** One supplier as suppliers.yaml writes it. */
export type SupplierText = z.infer<typeof supplierSchema>;
