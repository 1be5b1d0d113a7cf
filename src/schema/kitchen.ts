import { z } from 'zod';
import { FONT_PAIRS } from '../engine/kitchen/font-pair.ts';
import { addOnSchema } from './add-on.ts';
import { carrierSchema } from './carrier.ts';
import { crewMealSchema } from './crew-meal.ts';
import { COOKED_FOR, COOKED_FOR_MEANING } from './dish.ts';
import { drinksHabitsSchema } from './drinks.ts';
import { foodSafetySchema } from './food-safety.ts';
import { containerSchema, equipmentSchema, stationSchema, vehicleSchema } from './gear.ts';
import { kitItemSchema } from './kit.ts';
import { guaranteeSchema, paymentsSchema, serviceChargeSchema } from './money-rules.ts';
import { returnFields } from './return-facts.ts';
import { crewSchema, staffSchema } from './staff.ts';
import { byId, byStyle, commaLine, line, list, oneOf, orPlain, prose, yesNo } from './text-fields.ts';

const rate = (what: string) => line(`tax on ${what}; default: 0 %`, '7 %').optional();

const placeSchema = z.strictObject({
  name: line('its name in proposals', 'Maren Falls'),
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
  delivery: line('what delivery there costs the client; default: nothing', '85.00').optional(),
  minimum: line('the least that the food of an order there comes to; default: none', '1500.00').optional(),
  'delivery cost': line(
    'what delivery there costs the kitchen; never shown to a client; default: not stated',
    '46.00',
  ).optional(),
});

const deliveryZoneSchema = z.strictObject({
  name: line('its name, as clients read it; default: its id in words', 'Lake road').optional(),
  'up to': line(
    'how far by road it reaches, for proposals that state their distance; default: only by its name',
    '20 mi',
  ).optional(),
  price: line('what delivery there costs the client', '95.00'),
  minimum: line('the least that the food of an order there comes to; default: none', '1500.00').optional(),
});

const dayTimesSchema = z.strictObject({
  pack: line('time to pack the food before it is loaded; default: 60 min', '60 min').optional(),
  load: line('time to load before leaving; default: 30 min', '30 min').optional(),
  clear: line('time to clear after serving; default: 75 min', '75 min').optional(),
  unload: line('time to unload the truck back at the kitchen; default: 30 min', '30 min').optional(),
});

const rentalSchema = z.strictObject({
  name: line('its name on the pack-out list; default: its id in words', 'Dinner plates').optional(),
  amount: line('how many per guest, or per drink', '1 each per guest'),
  spare: line('extra packed; default: 0 %', '5 %').optional(),
  counts: commaLine(
    'which guests get it, with a weight after “at”; default: the kitchen’s `counts`',
    'adults, children, vendors',
  ).optional(),
  for: list('the service styles it goes with; default: all', 'plated, buffet').optional(),
  cost: line(
    'what one piece costs the kitchen; never shown to a client; default: not stated',
    '0.45',
  ).optional(),
  weighs: line('what one piece weighs, for the van; default: not stated', '1½ lb').optional(),
  ...returnFields,
});

const labelsSchema = z.strictObject({
  above: line('from the sheet’s top edge to the first label; default: by the paper', '6 mm').optional(),
  beside: line('from the sheet’s left edge to the first label; default: by the paper', '4.65 mm').optional(),
  between: line('between the two columns; default: by the paper', '2.5 mm').optional(),
  'nudge right': line(
    'how much further right to print, if the printer feeds its paper off center; -0.8 mm for left; default: 0',
    '0.8 mm',
  ).optional(),
  'nudge down': line('how much further down to print; -0.8 mm for up; default: 0', '0.8 mm').optional(),
});

const acceptancesSchema = orPlain(
  'by',
  z.strictObject({
    by: oneOf(
      ['download', 'mail', 'post'],
      'as a file the client sends you, as an email draft, or posted to an address',
    ),
    to: line(
      'the email address (default: the kitchen’s own), or the address to post to (default: /acceptances on the same site)',
      'https://quillwater.example/acceptances',
    ).optional(),
  }),
);

/** kitchen.yaml: the caterer's name, rates and defaults, from which every proposal and plan starts. */
export const kitchenSchema = z.strictObject({
  name: line('the kitchen’s name, as clients see it', 'Quillwater Kitchen'),
  town: line('where it is', 'Maren Falls').optional(),
  email: line('email address for clients', 'hello@quillwater.example').optional(),
  phone: line('phone number for clients', '555-0142').optional(),
  site: line('address of the public site', 'https://quillwater.example').optional(),
  acceptances: acceptancesSchema
    .optional()
    .meta({ description: 'how a client’s acceptance comes back; default: download', examples: ['mail'] }),
  'tell clients of price steps': yesNo(
    'yes: a proposal’s page shows the guest counts at which more guests cost less in total; default: no',
  ).optional(),
  locale: line('language and country of pages and prints', 'en-US'),
  currency: line('ISO 4217 code of every amount of money', 'USD'),
  measures: oneOf(['us', 'metric'], 'which measures the kitchen cooks in; default: by locale').optional(),
  'time zone': line('the time zone that decides deadlines and today’s date', 'America/New_York'),
  paper: oneOf(['letter', 'a4'], 'paper of prints; default: by locale').optional(),
  labels: labelsSchema.optional().meta({
    description:
      'the sheet of labels, ten to a sheet: 4 × 2 in on Letter, 99.1 × 57 mm on A4; default: the usual margins',
  }),
  accent: line(
    'the brand’s one color, # and six hexadecimal digits; default: #5a4632',
    '"#7a4a2b"',
  ).optional(),
  fonts: oneOf(
    FONT_PAIRS,
    'the pair of typefaces of all pages and prints, as they are today also on offers issued before: source (clear), garamond (classic) or bitter (sturdy); default: source',
  ).optional(),
  mark: line(
    'the kitchen’s own drawing, an SVG file in the content folder, shown as it is today also on offers issued before; default: none',
    'brand/mark.svg',
  ).optional(),
  buying: line(
    'when food is bought; the prices valid on that day are used; default: 3 days before',
    '3 days before',
  ).optional(),
  'second supplier saves': line(
    'the least that each extra supplier must save on an order; default: nothing',
    '20.00',
  ).optional(),
  allergens: list('whose allergen law the names follow: us, eu or both', 'us'),
  overage: byStyle('extra carried over the per-guest amount', '8 %')
    .optional()
    .meta({ description: 'extra carried over the per-guest amount by service style; default: none' }),
  'set-up': line('from arrival to service; default: not stated', '1 h 30 min').optional(),
  day: dayTimesSchema
    .optional()
    .meta({ description: 'how long packing, loading and clearing take on an event’s day' }),
  crew: crewSchema
    .optional()
    .meta({ description: 'who cooks on a prep day; default: not stated, and no day counts as too full' }),
  'crew meal': crewMealSchema.optional().meta({
    description:
      'what the crew eats at events whose proposal does not state it: `none`, `the menu`, `75 % of the menu`, or recipe → amount for one person; default: not stated, and nothing is planned for them beyond what the menu counts',
    examples: ['the menu'],
  }),
  'food safety': foodSafetySchema
    .optional()
    .meta({ description: 'the food code the kitchen works by; default: FDA Food Code 2022' }),
  'gluten free': line(
    'states that dishes without gluten-containing ingredients are lab-tested, and to what level; pages say gluten-free only with it; default: not stated',
    'tested below 20 mg/kg',
  ).optional(),
  'cooked for': oneOf(COOKED_FOR, COOKED_FOR_MEANING).optional(),
  'no meat': line(
    'share of guests planned as eating no meat if the client has not stated it; default: 8 %',
    '8 %',
  ).optional(),
  'no-shows': line(
    'share of the counted guests who do not show up, for the odds of running short; default: everybody comes',
    '3 %',
  ).optional(),
  'parties of': line('how many come, or stay away, together; default: 1', '2').optional(),
  'tip line': yesNo(
    'yes: an invoice has a line on which the client may write a tip for the crew, in none of its sums; default: no',
  ).optional(),
  tax: orPlain(
    'by',
    z.strictObject({ by: oneOf(['invoice', 'line'], 'where tax is rounded: once, or on each line') }),
  )
    .optional()
    .meta({ description: 'how tax is rounded; default: by invoice' }),
  places: byId(placeSchema, 'where events take place; one entry per tax rate and delivery price'),
  'delivery zones': byId(
    deliveryZoneSchema,
    'what delivery costs by zone or distance, in place of the place’s; default: the place’s',
  ).optional(),
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
    'which guests count wherever something is divided by people and states no `counts`: staff, rentals, add-ons, per-guest amounts; dishes and price steps follow their package; default: adults, children',
    'adults, children at 1/2',
  ).optional(),
  capacity: z
    .strictObject({
      'guests a day': line('the most adults and children on one day; default: no limit', '260').optional(),
      'events a day': line('the most events on one day; default: no limit', '3').optional(),
    })
    .optional()
    .meta({ description: 'what the kitchen can do in a day; `confirm` warns above it' }),
  stations: byId(stationSchema, 'where the work is done'),
  staff: byId(staffSchema, 'who serves').optional(),
  'hours quoted': oneOf(
    ['all', 'service'],
    'which of the hours at an event a quote is meant to sell: all, from truck to truck, or those of service alone; `check` and plans tell what is missing of these; default: all',
  ).optional(),
  containers: byId(containerSchema, 'pans, tubs, bowls, bags and trays').optional(),
  equipment: byId(
    equipmentSchema,
    'equipment for cooking and keeping; finished food is kept in the one called cold-room, and days show how full that is',
  ).optional(),
  carriers: byId(
    carrierSchema,
    'what containers travel in; default: none, so that each goes as it is',
  ).optional(),
  vehicles: byId(
    vehicleSchema,
    'what the food travels in: each event takes one from loading until it is unloaded back at the kitchen; default: not stated, and never too few',
  ).optional(),
  rentals: byId(rentalSchema, 'things packed per guest or per drink, for the pack-out list').optional(),
  drinks: drinksHabitsSchema.optional().meta({
    description: 'how drinks are planned wherever a package or an add-on has some; default: as usual',
    examples: ['{ ice: bagged-ice, ice per glass: 4 oz }'],
  }),
  'usual kit': yesNo(
    'yes: the kit list that comes with Salver goes along by its rules, and `kit` adds to it, changes it or leaves some out; default: no',
  ).optional(),
  kit: byId(kitItemSchema, 'what goes along by rule, whatever is on the menu').optional(),
  'add-ons': byId(addOnSchema, 'what a client may add').optional(),
});

/** kitchen.yaml as it is written. */
export type KitchenText = z.infer<typeof kitchenSchema>;
