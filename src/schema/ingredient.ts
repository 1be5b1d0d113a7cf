import { z } from 'zod';
import { SOLD_AS } from '../engine/food/ingredient.ts';
import { line, list, mappingOf, oneOf } from './text-fields.ts';

/**
 * One bought food in ingredients/*.yaml, under its id. Where the id is in the store-room that comes with Salver,
 * the fields written here replace the store-room's, one by one, and the others stay; so do single conversions and
 * yields that are not written here.
 */
export const ingredientSchema = z.strictObject({
  name: line('its name on pages and lists; default: its id in words', 'Potatoes').optional(),
  from: list(
    'what it comes from (plant, milk, beef, animal rennet …); if not stated, no dish with it claims a diet',
    'plant',
  ).optional(),
  contains: list(
    'allergens it contains, or none; if not stated they are unknown, and no offer with it can be issued',
    'none',
  ).optional(),
  'may contain': list('allergens it may have traces of, or none; default: not stated', 'none').optional(),
  conversions: list(
    'its own conversions, used wherever a unit has to be converted',
    '1 cup = 150 g',
  ).optional(),
  yield: line('share left after prep (EP of AP), for preparations not under `yields`', '81 %').optional(),
  yields: mappingOf(
    z.string().min(1).max(40),
    'share left after each prep, in the words of recipe lines',
  ).optional(),
  keeps: line('how long it keeps as bought', '14 days').optional(),
  storage: oneOf(['dry', 'chilled', 'frozen'], 'where it is kept').optional(),
  'sold as': oneOf(
    SOLD_AS,
    'state of an animal food: `ready to eat` needs no cooking (cured, smoked, canned, pasteurized); default: raw, in whole pieces',
  ).optional(),
  parts: z.string().min(1).max(4000).meta({ description: 'its parts, or its label, as text' }).optional(),
  buy: line('the only pack to buy: supplier and pack as on the price list', 'green-quay 50 lb').optional(),
  source: z.string().min(1).max(1000).meta({ description: 'where the figures come from' }).optional(),
});

/** One bought food as its file writes it. */
export type IngredientText = z.infer<typeof ingredientSchema>;
