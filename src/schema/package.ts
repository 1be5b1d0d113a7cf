import { z } from 'zod';
import { SERVICE_STYLES } from '../engine/course/service-style.ts';
import { COOKED_FOR, COOKED_FOR_MEANING, dishSchema } from './dish.ts';
import { byId, commaLine, line, list, mappingOf, oneOf, yesNo } from './text-fields.ts';

const foodCostPrice = z.strictObject({
  kind: z.literal('food cost'),
  'food cost': line('the share of the price that the food may cost', '30 %'),
  'rounded up to': line(
    'the price goes up to a multiple of this; default: the smallest coin',
    '0.50',
  ).optional(),
  for: list('the guest counts at which a price begins', '30, 60, 120'),
});

const tierPrice = z.strictObject({
  kind: z.literal('tiers'),
  tiers: mappingOf(line('price per head', '42.50'), 'from and to how many guests → price per head'),
});

const priceSchema = z.preprocess(withKind, z.discriminatedUnion('kind', [tierPrice, foodCostPrice]));

const courseSchema = z.strictObject({
  name: line('how the menu calls it; unique in the package', 'Mains'),
  choose: line('the client chooses so many and everybody gets them; default: all', '2').optional(),
  'each guest': oneOf(['one'], 'every guest takes one of the dishes; default: everybody gets all').optional(),
  overage: line(
    'in a course whose dishes say their `first choice`: the chosen risk that a guest finds none of them',
    'short at most 1 in 50',
  ).optional(),
  dishes: byId(dishSchema, 'recipe → how much for each guest'),
});

/** The data on top of packages/<id>.mdx; the client's story follows below it. */
export const packageSchema = z.strictObject({
  name: line('how proposals call it', 'Harvest table'),
  style: oneOf(SERVICE_STYLES, 'how it is served'),
  price: priceSchema.meta({
    description: 'price per head by guest count, or from the share that the food may cost',
    examples: ['{ 20-49: 46.00, 50+: 42.50 }'],
  }),
  'price counts': commaLine(
    'which guests the price steps and the minimum count; default: adults, children',
    'adults',
  ).optional(),
  'never less in all': yesNo('yes: more guests never pay less in all; default: no').optional(),
  child: line(
    'what a child pays, a share of the adult price or a sum; default: the adult price',
    '50 %',
  ).optional(),
  vendor: line('what the client pays for a vendor’s meal; default: the adult price', '24.00').optional(),
  'minimum guests': line('billed for at least so many; default: none', '20').optional(),
  'minimum spend': line('the menu comes to at least this; default: none', '1200.00').optional(),
  hours: line('how long it is served, as proposals show it; default: not said', '5 hours').optional(),
  counts: commaLine(
    'who eats its dishes, where a dish does not say; default: adults, children',
    'adults, children, vendors',
  ).optional(),
  'cooked for': oneOf(COOKED_FOR, COOKED_FOR_MEANING).optional(),
  courses: z.array(courseSchema).min(1).max(40).meta({ description: 'the menu, in order' }),
  'add-ons': list('which of the kitchen’s add-ons suit it; default: all', 'espresso-cart').optional(),
});

/** A package as its file writes it. */
export type PackageText = z.infer<typeof packageSchema>;

/** Tells the two ways of pricing apart by their fields; one price alone holds for any count. */
function withKind(raw: unknown): unknown {
  if (typeof raw === 'string') return { kind: 'tiers', tiers: { '1+': raw } };
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return raw;
  return 'food cost' in raw ? { ...raw, kind: 'food cost' } : { kind: 'tiers', tiers: raw };
}
