import { z } from 'zod';
import { SERVICE_STYLES } from '../engine/course/service-style.ts';
import { COOKED_FOR, COOKED_FOR_MEANING, dishSchema } from './dish.ts';
import { drinksSchema } from './drinks.ts';
import { byId, commaLine, line, list, mappingOf, oneOf, yesNo } from './text-fields.ts';

const foodCostPrice = z.strictObject({
  kind: z.literal('food cost'),
  'food cost': line('the share of the price that the food may cost', '30 %'),
  'rounded up to': line(
    'the price is rounded up to a multiple of this; default: the smallest coin',
    '0.50',
  ).optional(),
  for: list('the guest counts at which a new price starts', '30, 60, 120'),
});

const tierPrice = z.strictObject({
  kind: z.literal('tiers'),
  tiers: mappingOf(line('price per guest', '42.50'), 'guest counts from and to → price per guest'),
});

const priceSchema = z.preprocess(withKind, z.discriminatedUnion('kind', [tierPrice, foodCostPrice]));

const courseSchema = z.strictObject({
  name: line('its name on the menu; unique in the package', 'Mains'),
  choose: line('the client chooses this many and everybody gets them; default: all', '2').optional(),
  'each guest': oneOf(['one'], 'each guest takes one of the dishes; default: everybody gets all').optional(),
  overage: line(
    'in a course whose dishes state a `first choice`: the chosen risk that a guest finds the dish gone',
    'short at most 1 in 50',
  ).optional(),
  begins: line(
    'when its first plate is served, counted from the time of serving; default: when a plated course before it ends, else at once',
    '45 min after',
  ).optional(),
  lasts: line(
    'from its first plate to its last; default: 30 min where plated, else as long as food is served',
    '30 min',
  ).optional(),
  dishes: byId(dishSchema, 'recipe → amount per guest'),
});

/** The data on top of packages/<id>.mdx; the client's story follows below it. */
export const packageSchema = z.strictObject({
  name: line('its name in proposals', 'Harvest table'),
  style: oneOf(SERVICE_STYLES, 'how it is served'),
  price: priceSchema.meta({
    description: 'price per guest by guest count, or set from the share that the food may cost',
    examples: ['{ 20-49: 46.00, 50+: 42.50 }'],
  }),
  'price counts': commaLine(
    'which guests the price steps and the minimum count; default: adults, children',
    'adults',
  ).optional(),
  'never less in all': yesNo('yes: more guests never pay less in total; default: no').optional(),
  child: line(
    'what a child pays, as a percentage of the adult price or an amount; default: the adult price',
    '50 %',
  ).optional(),
  vendor: line('what the client pays for a vendor’s meal; default: the adult price', '24.00').optional(),
  'minimum guests': line('the least number billed; default: none', '20').optional(),
  'minimum spend': line('the least the menu comes to; default: none', '1200.00').optional(),
  hours: line('how long service lasts, as proposals show it; default: not stated', '5 hours').optional(),
  counts: commaLine(
    'who eats its dishes, unless a dish states otherwise; default: adults, children',
    'adults, children, vendors',
  ).optional(),
  'cooked for': oneOf(COOKED_FOR, COOKED_FOR_MEANING).optional(),
  courses: z.array(courseSchema).min(1).max(40).meta({ description: 'the menu, in order' }),
  drinks: drinksSchema.optional().meta({
    description:
      'what guests drink, by kinds with shares: a course of its own, with ice, glasses and plain water planned and on no menu; default: none',
    examples: ['{ name: Drinks, per guest: 1 per hour, kinds: { pear-ginger-cordial: 100 % } }'],
  }),
  'add-ons': list('which of the kitchen’s add-ons suit it; default: all', 'espresso-cart').optional(),
});

/** A package as its file writes it. */
export type PackageText = z.infer<typeof packageSchema>;

/** Tells the two ways of pricing from their fields; one price alone holds for any count. */
function withKind(raw: unknown): unknown {
  if (typeof raw === 'string') return { kind: 'tiers', tiers: { '1+': raw } };
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return raw;
  return 'food cost' in raw ? { ...raw, kind: 'food cost' } : { kind: 'tiers', tiers: raw };
}
