import { z } from 'zod';
import { cooksSchema } from './cooks.ts';
import { crewMealSchema } from './crew-meal.ts';
import { guaranteeSchema, paymentsSchema, serviceChargeSchema } from './money-rules.ts';
import { byId, line, list, mappingOf, oneOf, orPlain, yesNo } from './text-fields.ts';

const clientSchema = orPlain(
  'name',
  z.strictObject({
    name: line('who the proposal is for', 'Idony Farrowick'),
    email: line('the client’s email address', 'idony@example.org').optional(),
    exempt: yesNo('whether the client pays no tax; default: no').optional(),
  }),
);

const guestsSchema = orPlain(
  'adults',
  z.strictObject({
    adults: line('adults at the table; default: 0', '84').optional(),
    children: line('children at the table; default: 0', '6').optional(),
    vendors: line('people working for the client who are fed; default: 0', '4').optional(),
    staff: line('the crew to be fed; default: 0', '9').optional(),
  }),
);

const courseChoiceSchema = z.preprocess(
  apartByForm,
  z.strictObject({
    chosen: list('the dishes for everybody', 'roast-squash, hake-parcels').optional(),
    counts: byId(line('how many guests take it', '50'), 'dish → how many guests take it').optional(),
  }),
);

const discountSchema = z.strictObject({
  label: line('its name in the quote; default: Discount', 'Early booking').optional(),
  rate: line('a percentage of what it applies to', '5 %').optional(),
  amount: line('or an amount off', '150.00').optional(),
  on: list('the classes of lines it is taken from; default: food, drink', 'food').optional(),
});

/** The data on top of proposals/<id>.md; the letter follows below it. */
export const proposalSchema = z.strictObject({
  link: line('the secret part of its address: at least 20 random characters from a–z and 2–7', 'k7mv…'),
  share: oneOf(['draft'], 'a draft goes public only with this').optional(),
  withdrawn: yesNo('whether the offer is withdrawn; default: no').optional(),
  client: clientSchema.meta({ description: 'who it is for', examples: ['{ name: Idony Farrowick }'] }),
  occasion: line('the occasion', 'Wedding supper'),
  date: line('the day of the event', '2027-05-15'),
  'serve at': line('when the food is served', '6:00 pm'),
  place: line('which of the kitchen’s places, for tax and delivery', 'maren-falls'),
  venue: orPlain(
    'name',
    mappingOf(
      z.string().min(1).max(500),
      'facts about the venue for the kitchen; `name` and `address` are shown to the client; understood are `ovens` and `burners` (2, none), `power` (two 20 A circuits, none), `water`, `cold space` and `cover` (yes, no), `stairs` (14 steps, none); default: not stated, and never taken for a yes',
    ),
  ).optional(),
  'site sheet': line(
    'the venue’s site sheet, by its id in `site-sheets`; what `venue` states wins; default: none',
    'old-ropeworks',
  ).optional(),
  weather: orPlain(
    'high',
    z.strictObject({
      high: line('the warmest it is expected to be where food and guests are', '86 °F').optional(),
      rain: yesNo('whether rain is planned for; default: not stated').optional(),
      wind: yesNo('whether strong wind is planned for; default: not stated').optional(),
    }),
  )
    .optional()
    .meta({
      description: 'the weather to plan for; a temperature alone is the day’s high; default: not stated',
      examples: ['{ high: 86 °F, rain: yes }'],
    }),
  travel: line('time on the road', '35 min').optional(),
  vehicle: line(
    'which of the kitchen’s vehicles it takes, by its id; default: any that is free',
    'big-van',
  ).optional(),
  'set-up': line('from arrival to service; default: the kitchen’s', '1 h 30 min').optional(),
  'valid until': line('the last day on which it can be accepted', '2027-05-01'),
  guests: guestsSchema.meta({ description: 'people by group', examples: ['{ adults: 84, children: 6 }'] }),
  needs: mappingOf(
    line('how many guests', '2'),
    'diet or allergy → how many guests; count each guest once, under all of that guest’s needs: `vegan + no gluten: 1`',
  ).optional(),
  'no-shows': line(
    'share of the counted guests who do not show up, for the odds of running short; default: the kitchen’s',
    '3 %',
  ).optional(),
  'parties of': line('how many come, or stay away, together; default: the kitchen’s', '2').optional(),
  packages: list('the menus offered; the first is the proposed one', 'harvest-table, quay-supper'),
  choices: byId(
    mappingOf(courseChoiceSchema, 'course → dishes'),
    'package → the dishes proposed where a course has a choice',
  ).optional(),
  'add-ons': list('the kitchen’s add-ons offered; default: none', 'espresso-cart').optional(),
  include: byId(
    line('how much of it: hours, or 1', '1'),
    'add-on → how much of it the quote already includes',
  ).optional(),
  lines: line('buffet lines; default: 1', '2').optional(),
  cooks: cooksSchema.optional().meta({
    description: 'who cooks in the kitchen on the event’s own day; default: the kitchen’s `crew`',
    examples: ['{ people: 3, from: 5:00 am, hours: 9 hours }'],
  }),
  'crew meal': crewMealSchema.optional().meta({
    description:
      'what the crew eats there: `none`, `the menu`, `75 % of the menu`, or recipe → amount for one person; never shown to the client; default: the kitchen’s',
    examples: ['{ braised-lamb: 6 oz }'],
  }),
  'keep back': line(
    'share of each dish kept back at the place for second helpings, out of what is planned, or cooked on top of it “in addition”; default: none',
    '5 % in addition',
  ).optional(),
  'late guests': line(
    'how many of the guests come late, and until when their portions are kept; default: none',
    '4 until 9:00 pm',
  ).optional(),
  hours: line(
    'how long the crew works, and the longest it serves; default: each role’s own hours',
    '5 hours',
  ).optional(),
  discount: discountSchema.optional().meta({ description: 'money off; default: none' }),
  'not included': list(
    'what the prices do not include; default: the kitchen’s list; `nothing` for an empty one',
    'tables and chairs, glasses',
  ).optional(),
  distance: line(
    'how far by road it is from the kitchen, which tells the delivery zone; default: not stated',
    '14 mi',
  ).optional(),
  zone: line(
    'which of the kitchen’s delivery zones it is in; default: by `distance`',
    'lake-road',
  ).optional(),
  delivery: line(
    'what delivery costs; default: the place’s, or its zone’s where it is in one',
    '120.00',
  ).optional(),
  'service charge': serviceChargeSchema.optional().meta({ description: 'default: the kitchen’s' }),
  guarantee: guaranteeSchema.optional().meta({ description: 'default: the kitchen’s' }),
  payments: paymentsSchema.optional(),
});

/** A proposal as its file writes it. */
export type ProposalText = z.infer<typeof proposalSchema>;

/** A list of dishes is a choice for everybody, a mapping gives counts by dish. */
function apartByForm(raw: unknown): unknown {
  if (typeof raw === 'string' || Array.isArray(raw)) return { chosen: raw };
  return typeof raw === 'object' && raw !== null ? { counts: raw } : raw;
}
