import { z } from 'zod';
import { SOLD_AS } from '../engine/food/ingredient.ts';
import { line, list, mappingOf, oneOf } from './text-fields.ts';

/**
 * One bought food in ingredients/*.yaml, under its id. Where the id is in the store-room that comes with Salver,
 * the fields written here replace the store-room's, one by one, and the others stay; so do single conversions and
 * yields that are not written here.
 */
export const ingredientSchema = z.strictObject({
  name: line('how pages and lists call it; default: its id in words', 'Potatoes').optional(),
  from: list(
    'what it comes from (plant, milk, beef, animal rennet …); unsaid, no diet is claimed for any dish with it',
    'plant',
  ).optional(),
  contains: list(
    'allergens it contains, or none; unsaid is unknown and keeps an offer from being issued',
    'none',
  ).optional(),
  'may contain': list('allergens it may hold traces of, or none; unsaid: nothing is said', 'none').optional(),
  conversions: list('its own measures, used wherever units have to meet', '1 cup = 150 g').optional(),
  yield: line('share left when made ready, for preparations not under `yields`', '81 %').optional(),
  yields: mappingOf(
    z.string().min(1).max(40),
    'share left by preparation, in the words of recipe lines',
  ).optional(),
  keeps: line('how long it keeps as bought', '14 days').optional(),
  storage: oneOf(['dry', 'chilled', 'frozen'], 'where it is kept').optional(),
  'sold as': oneOf(
    SOLD_AS,
    'state of an animal food: `ready to eat` needs no cooking (cured, smoked, canned, pasteurized); default: raw, in whole pieces',
  ).optional(),
  parts: z.string().min(1).max(4000).meta({ description: 'its parts, or its label, as text' }).optional(),
  buy: line('the one pack to buy: supplier and pack as on the price list', 'green-quay 50 lb').optional(),
  source: z.string().min(1).max(1000).meta({ description: 'where the figures come from' }).optional(),
});

/** One bought food as its file writes it. */
export type IngredientText = z.infer<typeof ingredientSchema>;
