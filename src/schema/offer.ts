import { z } from 'zod';
import { choiceSchema } from './choice.ts';
import {
  boundedText,
  clockText,
  dayText,
  digestText,
  guestCounts,
  idText,
  linkText,
  moneyText,
  oneLine,
  peopleCount,
} from './json-fields.ts';
import { termsSchema } from './terms.ts';

const answerWaySchema = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('download') }),
  z.strictObject({ by: z.literal('mail'), to: z.email().max(254) }),
  z.strictObject({
    by: z.literal('post'),
    to: z
      .url({ protocol: /^https?$/ })
      .max(2000)
      .nullable(),
  }),
]);

/** What the client sees of the kitchen, as it was when the offer was issued. */
const brandSchema = z.strictObject({
  name: oneLine(200),
  town: oneLine(200).optional(),
  email: oneLine(254).optional(),
  phone: oneLine(60).optional(),
  locale: z.string().regex(/^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/),
  measures: z.enum(['us', 'metric']),
  paper: z.enum(['letter', 'a4']),
  accent: z.string().regex(/^#[0-9a-f]{6}$/),
  allergenLaws: z
    .array(z.enum(['us', 'eu']))
    .min(1)
    .max(2),
  timeZone: oneLine(60),
  acceptances: answerWaySchema.optional().describe('how an acceptance comes back; left out: by download'),
  glutenTested: oneLine(40)
    .optional()
    .describe(
      'the level that dishes without gluten-containing ingredients are tested to; left out: they are not tested',
    ),
  tellPriceSteps: z
    .literal(true)
    .optional()
    .describe(
      'the page shows the guest counts at which more guests cost less in total; left out: it does not',
    ),
});

/**
 * An issued revision of a proposal: all that its page is made from, and nothing a client may not see.
 * Written once by `issue` to offers/<proposal>-r<revision>.json and never changed.
 */
export const offerSchema = z.strictObject({
  version: z.literal(1),
  kind: z.literal('offer'),
  proposal: idText.describe('the proposal it was issued from'),
  revision: z.int().min(1).max(999).describe('1, 2, …; a later revision replaces the earlier ones'),
  issued: dayText.describe('the day it was issued'),
  link: linkText.describe('the unguessable part of its address'),
  digest: digestText.describe('over the offer without this field; an acceptance names it'),
  kitchen: brandSchema,
  client: z.strictObject({ name: oneLine(200), email: oneLine(254).optional() }),
  occasion: oneLine(200),
  date: dayText.describe('the day of the event'),
  serveAt: clockText.describe('when the food is served, in the kitchen’s time zone'),
  placeName: oneLine(200),
  venue: z.record(oneLine(80), boundedText(500)).describe('facts about the venue, as written'),
  validUntil: dayText.describe('the last day on which it can be accepted, in the kitchen’s time zone'),
  guests: guestCounts.describe('people by group as proposed'),
  needs: z.record(oneLine(80), peopleCount).describe('dietary need or allergy → guests, as known'),
  letter: boundedText(65_536).describe('the letter, Markdown'),
  legal: boundedText(65_536).describe('terms and conditions, Markdown; empty where the kitchen has none'),
  notIncluded: z
    .array(oneLine(300))
    .max(200)
    .optional()
    .describe('what the prices do not include, item by item; left out: nothing is listed'),
  terms: termsSchema.describe('what every price is computed from'),
  proposed: choiceSchema.describe('the choice whose total the page shows first'),
  stories: z.record(idText, boundedText(262_144)).describe('package id → its story for the client, Markdown'),
  samples: z
    .array(z.strictObject({ choice: choiceSchema, total: moneyText }))
    .min(1)
    .max(40)
    .describe('choices with their totals, recomputed whenever the offer is read'),
  notices: z.array(boundedText(2000)).max(40).describe('cautions that the law or the kitchen wants shown'),
});

/** An issued offer. */
export type Offer = z.infer<typeof offerSchema>;
