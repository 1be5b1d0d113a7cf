import { z } from 'zod';
import { SERVICE_STYLES } from '../engine/course/service-style.ts';
import { DESTINIES } from '../engine/learning/destiny.ts';
import { parseExactText } from '../engine/measure/quantity.ts';
import { LINE_CLASSES } from '../engine/quote/line-class.ts';
import { acceptanceSchema } from './acceptance.ts';
import {
  boundedText,
  clockText,
  dayText,
  digestText,
  guestCounts,
  idText,
  moneyText,
  oneLine,
  optionalLine,
  peopleCount,
  signedMoneyText,
} from './json-fields.ts';

const paymentReceived = z.strictObject({
  amount: moneyText.describe('what came in, in the offer’s currency'),
  on: dayText.describe('the day it came in'),
  method: oneLine(80).optional().describe('how it was paid: transfer, check, cash'),
});

const acceptedFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('accepted'),
  on: dayText.describe('the day the acceptance was taken'),
  proposal: idText,
  revision: z.int().min(1).max(999),
  digest: digestText.describe('of the offer accepted'),
  acceptance: acceptanceSchema,
});

const confirmedFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('confirmed'),
  on: dayText.describe('the day the date was confirmed to the client'),
  received: paymentReceived
    .optional()
    .describe(
      'the deposit that confirms it; missing if a new date is confirmed and the deposit was already in',
    ),
});

const paymentFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('payment'),
  on: dayText.describe('the day it was recorded'),
  received: paymentReceived.extend({
    amount: signedMoneyText.describe(
      'what came in, in the offer’s currency; negative: a refund, paid back to the client',
    ),
  }),
});

const tipFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('tip'),
  on: dayText.describe('the day it was recorded'),
  received: paymentReceived.extend({
    amount: signedMoneyText.describe('the tip, in the offer’s currency; negative: taken back'),
  }),
});

const guaranteeFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('guarantee'),
  on: dayText.describe('the day it was recorded'),
  given: dayText.optional().describe('the day the client gave the count, if that was earlier'),
  guests: guestCounts.describe('people by group that the client guaranteed'),
  needs: z.record(oneLine(80), peopleCount).describe('dietary need or allergy → guests who have it'),
  mains: z
    .record(oneLine(120), z.record(idText, peopleCount))
    .describe('course → recipe id → guests, where each guest takes one dish'),
  belowFloor: z
    .literal(true)
    .optional()
    .describe('fewer will eat than the contract’s minimum, which is still billed'),
});

const servedFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('served'),
  on: dayText.describe('the day it was recorded'),
  guests: guestCounts.describe('people by group who were actually served'),
});

const shortTexts = z.array(oneLine(80)).max(60);

const substitutionFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('substitution'),
  on: dayText.describe('the day it was decided'),
  what: z.enum(['dish', 'ingredient']).describe('a dish on the menu, or an ingredient of its recipes'),
  from: idText.describe('the recipe or ingredient replaced'),
  to: idText.describe('what replaces it, for this event only'),
  name: oneLine(200)
    .optional()
    .describe('the name of what replaces it, as of that day; missing in older facts'),
  perGuest: oneLine(120).optional().describe('for a dish: its per-guest amount, `1 piece per guest`'),
  contains: shortTexts.describe('allergens that a dish contains since then'),
  mayContain: shortTexts.describe('allergens that a dish may contain since then'),
  without: shortTexts.describe('allergens that a dish no longer contains'),
  dietsLost: shortTexts.describe('diets that a dish no longer suits'),
  tell: z
    .array(boundedText(600))
    .max(60)
    .describe('what to tell the client, one sentence each; empty for nothing'),
});

const postponedFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('postponed'),
  on: dayText.describe('the day it was postponed'),
  from: dayText.describe('the day it was set for'),
  to: dayText.nullable().describe('the new day; null while there is none'),
  hold: z.boolean().describe('true: the new date is on hold and must be confirmed again'),
});

const cancelledFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('cancelled'),
  on: dayText.describe('the day it was canceled'),
  reason: oneLine(300).optional(),
});

const guestListFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('guest list'),
  on: dayText.describe('the day it was recorded'),
  given: dayText.optional().describe('the day the client gave it, if that was earlier'),
  guests: z
    .array(
      z.strictObject({
        name: oneLine(80),
        table: optionalLine(20).describe('number or name of the table; empty if not stated'),
        mains: z
          .record(oneLine(120), idText)
          .describe('course → recipe id, where each guest takes one dish and this guest has chosen'),
        need: optionalLine(120).describe('dietary need or allergy, `vegan + tree nuts`; empty for none'),
      }),
    )
    .min(1)
    .max(1000)
    .describe('all guests, in the order of the list; a later list replaces this one'),
});

/** Far above what any kitchen carries; what guests ate is calculated in floating-point numbers, which end somewhere. */
const MOST_CARRIED = 10n ** 15n;

const brokenFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('broken'),
  on: dayText.describe('the day it was recorded'),
  what: z.enum(['broken', 'missing']).describe('what became of it'),
  item: idText.describe('the thing, by its id in kitchen.yaml'),
  name: oneLine(200).describe('its name as of that day'),
  count: z
    .int()
    .min(-100_000)
    .max(100_000)
    .refine((count) => count !== 0, 'must not be 0')
    .describe('how many; negative takes back what was recorded by mistake'),
  each: moneyText
    .nullable()
    .describe('what the client is charged for each, in the offer’s currency; null for nothing'),
  class: z.enum(LINE_CLASSES).describe('what it is taxed as'),
  why: oneLine(300).optional().describe('how it came about'),
});

const exactAmount = boundedText(2100)
  .refine((text) => {
    const read = parseExactText(text);
    return read.ok && read.value.amount.abs().compare(MOST_CARRIED) < 0;
  }, 'must be an exact amount such as 25/16 gal')
  .describe('an exact amount, `94 piece`, `25/16 gal`');

const exactCount = z
  .string()
  .regex(/^\d{1,40}(\/[1-9]\d{0,40})?$/, 'must be an exact count such as 94 or 175/2')
  .describe('an exact count, `94`, `175/2`');

const leftDish = z.strictObject({
  course: oneLine(120),
  recipe: idText.describe('the recipe it was cooked by'),
  name: oneLine(200).describe('as the menu called it'),
  perGuest: oneLine(120).describe('the amount it was planned by, `1 piece per guest`'),
  counted: exactCount.describe('guests it was planned for, weighted'),
  came: exactCount.describe('guests who came, counted the same way'),
  planned: exactAmount.describe('what these guests were planned to eat, without overage'),
  carried: exactAmount.describe('what went out, with overage, whole units and whole batches'),
  back: exactAmount.describe('what came back; none where it ran out'),
  ranOut: z.literal(true).optional().describe('it ran out, so that more would have been eaten'),
  at: clockText.optional().describe('when it ran out, if someone noticed'),
  cost: moneyText
    .nullable()
    .describe('food cost of what went out at the prices of the plan; null where not known'),
  destiny: z.enum(DESTINIES).optional().describe('where what came back went; missing where nobody stated it'),
  said: oneLine(120).describe('what came back, as it was typed in'),
  note: oneLine(300).optional(),
});

const leftoversFact = z.strictObject({
  version: z.literal(1),
  kind: z.literal('leftovers'),
  on: dayText.describe('the day it was recorded'),
  plan: z
    .enum(['kept', 'made anew'])
    .describe(
      'where the amounts that went out come from: the plan saved on the day, or one made from today’s recipes',
    ),
  package: idText,
  style: z.enum(SERVICE_STYLES).describe('how it was served'),
  came: guestCounts.describe('people by group who came'),
  dishes: z
    .array(leftDish)
    .min(1)
    .max(200)
    .describe('the dishes with an entry; a later fact of this kind replaces this one'),
});

/**
 * One thing that happened to an event, in a file of its own under events/<event>/, numbered in the order written
 * and never changed. The first is always `accepted`.
 */
export const eventFactSchema = z.discriminatedUnion(
  'kind',
  [
    acceptedFact,
    confirmedFact,
    paymentFact,
    guaranteeFact,
    servedFact,
    substitutionFact,
    postponedFact,
    cancelledFact,
    guestListFact,
    leftoversFact,
    brokenFact,
    tipFact,
  ],
  {
    error: (issue) =>
      issue.code === 'invalid_union'
        ? 'this version of Salver does not know this kind of fact; a newer one may have written it'
        : undefined,
  },
);

/** One fact of an event. */
export type EventFact = z.infer<typeof eventFactSchema>;
/** The acceptance that began the event. */
export type AcceptedFact = z.infer<typeof acceptedFact>;
/** The date is kept: the deposit is in, or was in when the date was moved. */
export type ConfirmedFact = z.infer<typeof confirmedFact>;
/** A further payment, or a refund where its sum is negative. */
export type PaymentFact = z.infer<typeof paymentFact>;
/** A tip for the crew, in no sum that is billed. */
export type TipFact = z.infer<typeof tipFact>;
/** The count the client is held to, from this fact on. */
export type GuaranteeFact = z.infer<typeof guaranteeFact>;
/** How many were really served. */
export type ServedFact = z.infer<typeof servedFact>;
/** A dish or an ingredient swapped for this event. */
export type SubstitutionFact = z.infer<typeof substitutionFact>;
/** The event was moved, or postponed without a new day. */
export type PostponedFact = z.infer<typeof postponedFact>;
/** The event was called off. */
export type CancelledFact = z.infer<typeof cancelledFact>;
/** Who comes, where each sits, what each takes and needs; from this fact on. */
export type GuestListFact = z.infer<typeof guestListFact>;
/** What came back of an event's dishes. */
export type LeftoversFact = z.infer<typeof leftoversFact>;
/** A thing of the kitchen's, or one that it hired, that was broken or did not come back. */
export type BrokenFact = z.infer<typeof brokenFact>;
/** What came back of one dish. */
export type LeftDish = LeftoversFact['dishes'][number];
/** One guest of the list. */
export type ListedGuest = GuestListFact['guests'][number];

/** The name of a fact's file in the event's folder: its number from 001 and its kind, `003-guest-list.json`. */
export function factFileName(number: number, kind: string): string {
  return `${String(number).padStart(3, '0')}-${kind.replaceAll(' ', '-')}.json`;
}
