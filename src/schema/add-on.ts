import { z } from 'zod';
import { dishSchema } from './dish.ts';
import { drinksSchema } from './drinks.ts';
import { byId, commaLine, line, oneOf } from './text-fields.ts';

/** What a client may add to a menu for a price of its own. */
export const addOnSchema = z.strictObject({
  name: line('its name in proposals', 'Espresso cart'),
  price: line(
    '`6.50 per guest`, `240.00 per hour`, `180.00 per 50 guests`, or a sum alone',
    '6.50 per guest',
  ),
  class: oneOf(
    ['food', 'drink', 'rental', 'labour', 'delivery'],
    'its class for tax, service charge and discounts',
  ),
  counts: commaLine(
    'which guests a per-guest price counts; default: the kitchen’s `counts`',
    'adults',
  ).optional(),
  dishes: byId(dishSchema, 'food that comes with it: recipe → amount per guest').optional(),
  drinks: drinksSchema.optional().meta({
    description: 'drinks that come with it, as in a package, with `hours`; default: none',
    examples: ['{ hours: 4 hours, per guest: 1 per hour, kinds: { pear-ginger-cordial: 100 % } }'],
  }),
  cost: line(
    'what it costs the kitchen on top of that food, written like a price; never shown to a client; default: not stated',
    '3.10 per guest',
  ).optional(),
});
