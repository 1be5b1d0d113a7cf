import { z } from 'zod';
import { DISH_ROLES } from '../engine/course/dish-role.ts';
import { SERVICE_STYLES } from '../engine/course/service-style.ts';
import { LINE_CLASSES } from '../engine/quote/line-class.ts';
import type { Terms } from '../engine/quote/terms.ts';
import { formOf } from './form-of.ts';
import { dayText, decimalText, idText, moneyText, oneLine, rateText } from './json-fields.ts';

const lineClass = z.enum(LINE_CLASSES);
const lineClasses = z.array(lineClass).max(LINE_CLASSES.length);
const weight = z.string().regex(/^\d{1,2}( \d{1,2})?([./]\d{1,4})?$/, 'must be a weight such as 1 or 1/2');
const counts = z.strictObject({
  adults: weight.optional(),
  children: weight.optional(),
  vendors: weight.optional(),
  staff: weight.optional(),
});
const wholeNumber = z.int().min(0).max(100_000);
const guestRate = z.strictObject({ rate: rateText.optional(), price: moneyText.optional() });
const minimumSpend = z.strictObject({ amount: moneyText, base: lineClasses, class: lineClass });
const due = z.union([z.literal('accepted'), z.int().min(-9999).max(9999)]);

/** The most dishes that a course or an add-on of an offer holds. */
export const MOST_DISHES = 60;

const dish = z.strictObject({
  recipe: idText,
  name: oneLine(200),
  perGuest: oneLine(80),
  counts,
  role: z.enum(DISH_ROLES).optional(),
  insteadOf: z
    .strictObject({ recipe: idText, needs: z.array(oneLine(80)).min(1).max(40).optional() })
    .optional(),
  marks: z.array(oneLine(80)).max(40),
  contains: z.array(oneLine(80)).max(100),
  mayContain: z.array(oneLine(80)).max(100),
  onRequest: z.array(oneLine(80)).max(40).optional(),
  unsaid: z.literal(true).optional(),
  supplement: moneyText.optional(),
});

const course = z.strictObject({
  name: oneLine(120),
  choose: z.int().min(1).max(MOST_DISHES).nullable(),
  eachGuest: z.boolean(),
  dishes: z.array(dish).min(1).max(MOST_DISHES),
});

const packageTerms = z.strictObject({
  id: idText,
  name: oneLine(200),
  style: z.enum(SERVICE_STYLES),
  tiers: z
    .array(z.strictObject({ from: wholeNumber, to: wholeNumber.nullable(), perHead: moneyText }))
    .min(1)
    .max(100),
  neverLessInAll: z.boolean(),
  floorTiers: z.literal('reached').optional(),
  tierCounts: counts,
  child: guestRate,
  vendor: guestRate,
  minimumGuests: wholeNumber,
  minimumCounts: counts.optional(),
  minimumSpend: minimumSpend.optional(),
  hours: oneLine(80).optional(),
  courses: z.array(course).min(1).max(40),
  addOns: z.array(idText).max(100).optional(),
});

const addOn = z.strictObject({
  id: idText,
  name: oneLine(200),
  class: lineClass,
  price: moneyText,
  per: z.enum(['guest', 'hour', 'guests', 'flat']),
  guests: z.int().min(1).max(100_000).optional(),
  counts,
  dishes: z.array(dish).min(1).max(MOST_DISHES).optional(),
});

const staff = z.strictObject({
  role: idText,
  name: oneLine(200),
  rate: moneyText,
  hours: decimalText,
  one: z.int().min(1).max(1000),
  per: z.int().min(1).max(100_000),
  counts,
  atLeast: wholeNumber,
  packages: z.array(idText).max(40).optional(),
});

const discount = z.strictObject({
  label: oneLine(120),
  rate: rateText.optional(),
  amount: moneyText.optional(),
  base: lineClasses,
});

const serviceCharge = z.strictObject({
  label: oneLine(120),
  rate: rateText,
  base: lineClasses,
  afterDiscount: z.boolean(),
});

const instalment = z.discriminatedUnion('of', [
  z.strictObject({ of: z.literal('rate'), rate: rateText, due }),
  z.strictObject({ of: z.literal('amount'), amount: moneyText, due }),
  z.strictObject({ of: z.literal('balance'), due }),
]);

const terms = z.strictObject({
  version: z.literal(1),
  perGuest: counts.optional(),
  currency: z.string().regex(/^[A-Z]{3}$/),
  locale: z.string().regex(/^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/),
  taxBy: z.enum(['invoice', 'line']),
  place: z.strictObject({
    id: idText,
    name: oneLine(200),
    taxIncluded: z.boolean(),
    tax: z.strictObject({
      food: rateText,
      drink: rateText,
      'service charge': rateText,
      rental: rateText,
      labour: rateText,
      delivery: rateText,
    }),
  }),
  exempt: z.boolean(),
  eventDate: dayText,
  packages: z.array(packageTerms).min(1).max(40),
  addOns: z.array(addOn).max(100),
  staff: z.array(staff).max(40),
  delivery: z.strictObject({ label: oneLine(200), price: moneyText }).nullable(),
  discount: discount.nullable(),
  serviceCharge: serviceCharge.nullable(),
  minimumSpend: minimumSpend.nullable(),
  payments: z.array(instalment).max(40),
  guarantee: z.strictObject({ daysBefore: z.int().min(0).max(9999), floorRate: rateText }),
});

/** The sell-side terms as an offer freezes them; `Terms` says what each field means. */
export const termsSchema = formOf<Terms>()(terms);
