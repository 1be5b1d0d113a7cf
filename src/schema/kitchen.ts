import { z } from 'zod';
import { FONT_PAIRS } from '../engine/kitchen/font-pair.ts';
import { COOKED_FOR, COOKED_FOR_MEANING, dishSchema } from './dish.ts';
import { foodSafetySchema } from './food-safety.ts';
import { guaranteeSchema, paymentsSchema, serviceChargeSchema } from './money-rules.ts';
import { byId, commaLine, line, list, oneOf, orPlain, prose, yesNo } from './text-fields.ts';

/** A value for each service style that has one. */
function byStyle(meaning: string, example: string) {
  const value = line(meaning, example).optional();
  return z.strictObject({ plated: value, buffet: value, 'family style': value, stations: value });
}

const rate = (what: string) => line(`tax on ${what}; default: 0 %`, '7 %').optional();

const placeSchema = z.strictObject({
  name: line('how proposals call it', 'Maren Falls'),
  tax: z
    .strictObject({
      food: rate('food'),
      drink: rate('drink'),
      'service charge': rate('the service charge'),
      rental: rate('rentals'),
      labour: rate('labour'),
      delivery: rate('delivery'),
    })
    .optional()
    .meta({ description: 'tax rates by class of line; default: no tax' }),
  'prices include tax': yesNo('whether the prices are shown with the tax in them; default: no').optional(),
  delivery: line('what delivery there costs; default: nothing', '85.00').optional(),
  'delivery cost': line(
    'what delivery there costs the kitchen itself; never shown to a client; default: not said',
    '46.00',
  ).optional(),
});

const staffSchema = z.strictObject({
  name: line('how quotes call the role', 'Servers'),
  price: line('what the client pays for one, by the hour', '38.00 per hour'),
  pay: line('what one earns, by the hour; never shown to a client', '24.00 per hour'),
  'one per': byStyle('guests for one of them', '15 guests').meta({
    description: 'guests for one of them by service style; a style left out needs none',
    examples: ['{ plated: 15 guests }'],
  }),
  hours: line('hours of each, where a proposal says none', '6 hours'),
  'at least': line('never fewer; default: 0', '2').optional(),
  counts: commaLine(
    'which guests they serve, a weight behind “at”; default: the kitchen’s `counts`',
    'adults, children, vendors',
  ).optional(),
});

const containerSchema = orPlain(
  'holds',
  z.strictObject({
    name: line('how lists and labels call it; default: its id in words', 'Half sheet pan').optional(),
    holds: line('what goes in, by volume, weight or count', '240 fl oz'),
    fill: line('share of that to which it is filled; default: 100 %', '90 %').optional(),
    over: line(
      'how much more goes into one before another is begun, as a share of what it is filled with: one piece more on a tray, a ladle more in a tub, never to the brim and never where food is chilled deep; up to 25 %, default: 5 %',
      '0 %',
    ).optional(),
    depth: line('how deep it is inside, for cooling; default: not said', '2½ in').optional(),
    for: oneOf(
      ['hot', 'cold'],
      'for hot or for cold food only; hot food served in one for cold is warned of; default: both',
    ).optional(),
  }),
);

const equipmentSchema = z.strictObject({
  name: line('how plans call it; default: its id in words', 'Convection oven').optional(),
  count: line('how many there are; default: 1', '2').optional(),
  holds: list(
    'how many of which container one holds, for each kind that goes in; default: not said',
    '5 full-pan-2, 10 half-sheet',
  ).optional(),
  station: line(
    'the station it stands at; default: the one with its own id, if there is one',
    'oven',
  ).optional(),
});

const dayTimesSchema = z.strictObject({
  pack: line('time to pack the food before it is loaded; default: 60 min', '60 min').optional(),
  load: line('time to load before leaving; default: 30 min', '30 min').optional(),
  clear: line('time to clear after serving; default: 75 min', '75 min').optional(),
});

const crewSchema = z.strictObject({
  people: line('how many are in the kitchen on a day of preparation', '4'),
  hours: line('how long each of them works', '8 hours'),
  from: line(
    'when they begin; default: not said, and times count from the day’s beginning',
    '7:00',
  ).optional(),
  pay: line(
    'what one earns, by the hour; never shown to a client; default: not said',
    '22.00 per hour',
  ).optional(),
});

const rentalSchema = z.strictObject({
  name: line('how the pack-out list calls it; default: its id in words', 'Dinner plates').optional(),
  amount: line('how many for each guest', '1 each per guest'),
  spare: line('extra packed; default: 0 %', '5 %').optional(),
  counts: commaLine(
    'which guests get it, a weight behind “at”; default: the kitchen’s `counts`',
    'adults, children, vendors',
  ).optional(),
  for: list('the service styles it goes with; default: all', 'plated, buffet').optional(),
  cost: line(
    'what one piece costs the kitchen; never shown to a client; default: not said',
    '0.45',
  ).optional(),
});

const labelsSchema = z.strictObject({
  above: line('from the sheet’s upper edge to the first label; default: by the paper', '6 mm').optional(),
  beside: line('from the sheet’s left edge to the first label; default: by the paper', '4.65 mm').optional(),
  between: line('between the two columns; default: by the paper', '2.5 mm').optional(),
  'nudge right': line(
    'how much further right to print, where a printer pulls its paper askew; -0.8 mm for left; default: 0',
    '0.8 mm',
  ).optional(),
  'nudge down': line('how much further down to print; -0.8 mm for up; default: 0', '0.8 mm').optional(),
});

const addOnSchema = z.strictObject({
  name: line('how proposals call it', 'Espresso cart'),
  price: line(
    '`6.50 per guest`, `240.00 per hour`, `180.00 per 50 guests`, or a sum alone',
    '6.50 per guest',
  ),
  class: oneOf(
    ['food', 'drink', 'rental', 'labour', 'delivery'],
    'what tax, service charge and discount take it for',
  ),
  counts: commaLine(
    'which guests a price per guest counts; default: the kitchen’s `counts`',
    'adults',
  ).optional(),
  dishes: byId(dishSchema, 'food that comes with it: recipe → how much for each guest').optional(),
  cost: line(
    'what it costs the kitchen besides that food, written as a price; never shown to a client; default: not said',
    '3.10 per guest',
  ).optional(),
});

const acceptancesSchema = orPlain(
  'by',
  z.strictObject({
    by: oneOf(
      ['download', 'mail', 'post'],
      'as a file the client sends on, as a mail draft, or posted to an address',
    ),
    to: line(
      'the mail address, by default the kitchen’s own; or the address posted to, by default /acceptances of the same site',
      'https://quillwater.example/acceptances',
    ).optional(),
  }),
);

/** kitchen.yaml: the caterer's name, rates and defaults, from which every proposal and plan starts. */
export const kitchenSchema = z.strictObject({
  name: line('the kitchen’s name, as clients see it', 'Quillwater Kitchen'),
  town: line('where it is', 'Maren Falls').optional(),
  email: line('where clients write to', 'hello@quillwater.example').optional(),
  phone: line('where clients call', '555-0142').optional(),
  site: line('where the public site is served', 'https://quillwater.example').optional(),
  acceptances: acceptancesSchema
    .optional()
    .meta({ description: 'how a client’s acceptance comes back; default: download', examples: ['mail'] }),
  'tell clients of price steps': yesNo(
    'yes: a proposal’s page tells at which guest counts more guests cost less in all; default: no',
  ).optional(),
  locale: line('language and country of pages and prints', 'en-US'),
  currency: line('ISO 4217 code of every sum', 'USD'),
  measures: oneOf(['us', 'metric'], 'which measures the kitchen cooks in; default: by locale').optional(),
  'time zone': line('where deadlines and days are judged', 'America/New_York'),
  paper: oneOf(['letter', 'a4'], 'paper of prints; default: by locale').optional(),
  labels: labelsSchema.optional().meta({
    description:
      'the sheet of labels, ten to a sheet: 4 × 2 in on Letter, 99.1 × 57 mm on A4; default: the usual margins',
  }),
  accent: line(
    'the brand’s one colour, # and six hexadecimal digits; default: #5a4632',
    '"#7a4a2b"',
  ).optional(),
  fonts: oneOf(
    FONT_PAIRS,
    'the pair of typefaces of all pages and prints, as they are today also on offers issued before: source (clear), garamond (classic) or bitter (sturdy); default: source',
  ).optional(),
  mark: line(
    'the kitchen’s own drawing, an SVG file of the content folder, shown as it is today also on offers issued before; default: none',
    'brand/mark.svg',
  ).optional(),
  buying: line(
    'when food is bought: the prices valid on that day count; default: 3 days before',
    '3 days before',
  ).optional(),
  'second supplier saves': line(
    'what each supplier beyond the first must save more than on an order; default: nothing',
    '20.00',
  ).optional(),
  allergens: list('which allergen law’s names are used: us, eu or both', 'us'),
  overage: byStyle('extra carried over the per-guest amount', '8 %')
    .optional()
    .meta({ description: 'extra carried over the per-guest amount by service style; default: none' }),
  'set-up': line('from arriving to serving; default: not said', '1 h 30 min').optional(),
  day: dayTimesSchema
    .optional()
    .meta({ description: 'how long packing, loading and clearing take on an event’s day' }),
  crew: crewSchema
    .optional()
    .meta({ description: 'who cooks on a day of preparation; default: not said, and no day is too full' }),
  'food safety': foodSafetySchema
    .optional()
    .meta({ description: 'the food code the kitchen works by; default: FDA Food Code 2022' }),
  'gluten free': line(
    'the statement that dishes without gluten-containing ingredients are tested in a laboratory, and below what; only with it do pages say gluten-free; default: not stated',
    'tested below 20 mg/kg',
  ).optional(),
  'cooked for': oneOf(COOKED_FOR, COOKED_FOR_MEANING).optional(),
  'no meat': line(
    'share of guests planned as eating no meat where the client has not said; default: 8 %',
    '8 %',
  ).optional(),
  'no-shows': line(
    'share of the guests counted who do not come, for the odds of running short; default: everybody comes',
    '3 %',
  ).optional(),
  'parties of': line('how many come, or stay away, together; default: 1', '2').optional(),
  tax: orPlain(
    'by',
    z.strictObject({ by: oneOf(['invoice', 'line'], 'where tax is rounded: once, or on each line') }),
  )
    .optional()
    .meta({ description: 'how tax is rounded; default: by invoice' }),
  places: byId(placeSchema, 'where events take place, as far as tax and delivery differ'),
  'service charge': serviceChargeSchema
    .optional()
    .meta({ description: 'the mandatory charge; default: none' }),
  guarantee: guaranteeSchema.optional().meta({ description: 'the count the client is held to' }),
  payments: paymentsSchema.optional(),
  'not included': list(
    'what the prices do not include, item by item, told to the client; default: nothing is listed',
    'tables and chairs, linen, glasses',
  ).optional(),
  terms: prose('terms and conditions, Markdown: what is included, cancellation, postponement').optional(),
  counts: commaLine(
    'which guests count wherever something divides by people and states no `counts`: staff, rentals, add-ons, sums per guest; what dishes and price steps count, their package states; default: adults, children',
    'adults, children at 1/2',
  ).optional(),
  capacity: z
    .strictObject({
      'guests a day': line('the most adults and children on one day; default: no limit', '260').optional(),
      'events a day': line('the most events on one day; default: no limit', '3').optional(),
    })
    .optional()
    .meta({ description: 'what the kitchen can do in a day; over it, confirming warns' }),
  stations: byId(line('the station’s name', 'Cold bench'), 'where the work is done'),
  staff: byId(staffSchema, 'who serves').optional(),
  containers: byId(containerSchema, 'pans, tubs, bowls, bags and trays').optional(),
  equipment: byId(
    equipmentSchema,
    'what cooks and keeps; what is called cold-room is where finished food stands, and days say how full it is',
  ).optional(),
  rentals: byId(rentalSchema, 'things packed per guest, for the pack-out list').optional(),
  'add-ons': byId(addOnSchema, 'what a client may add').optional(),
});

/** kitchen.yaml as it is written. */
export type KitchenText = z.infer<typeof kitchenSchema>;
