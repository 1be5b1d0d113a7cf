import { z } from 'zod';
import { LIMIT_KINDS, type LimitName } from '../engine/safety/limit.ts';
import { line, list } from './text-fields.ts';

/** What each limit means in kitchen.yaml; the figure of the edition counts where it is left out. */
const MEANINGS: Readonly<Record<LimitName, readonly [meaning: string, example: string]>> = {
  receiving: ['warmest that chilled food may arrive', '41 °F'],
  'receiving eggs': ['warmest air that raw eggs may arrive in', '45 °F'],
  'intact meat and fish': ['raw meat and fish in whole pieces are cooked to this', '145 °F for 15 s'],
  'ground or injected meat': [
    'raw meat and fish that is ground, injected or tenderized; several ways to cook it, any one is enough',
    '155 °F for 17 s, 145 °F for 3 min',
  ],
  poultry: ['raw poultry is cooked to this', '165 °F'],
  'stuffed food': ['stuffed meat, fish, poultry and pasta are cooked to this', '165 °F'],
  eggs: ['raw eggs that are held hot, or pooled for several orders, are cooked to this', '155 °F for 17 s'],
  'eggs to order': ['raw eggs cooked to one guest’s order are cooked to this', '145 °F for 15 s'],
  'whole roasts': ['whole roasts: several ways, any one is enough', '145 °F for 4 min, 130 °F for 112 min'],
  'plant food held hot': ['plant food cooked to be held hot reaches this', '135 °F'],
  reheating: ['food that was cooked, cooled and reheated reaches this', '165 °F for 15 s'],
  'reheating ready-to-eat food': ['bought ready-to-eat food that is heated reaches this', '135 °F'],
  'reheating time': ['longest that reheating may take', '2 h'],
  cooling: [
    'cooked food cools in these stages, each counted from when cooling starts',
    '70 °F within 2 h, 41 °F within 6 h',
  ],
  'cooling from room temperature': ['how fast food made at room temperature must cool', '41 °F within 4 h'],
  'cold holding': ['warmest that cold food may be kept', '41 °F'],
  'hot holding': ['coolest that hot food may be kept', '135 °F'],
  thawing: ['warmest that food may thaw at in the cold', '41 °F'],
  'thawing under water': [
    'warmest that the running water may be, and longest that raw food may be above cold holding',
    '70 °F within 4 h',
  ],
  'date mark': ['days that ready-to-eat food may be kept cold, counting the day it is made', '7 days'],
  'time without control': ['longest that food may be neither hot nor cold before it is thrown away', '4 h'],
  'time without control, kept cool': [
    'the same for food that starts cold and never gets warmer than this',
    '70 °F within 6 h',
  ],
};

const limitFields = Object.fromEntries(
  (Object.keys(LIMIT_KINDS) as LimitName[]).map((name) => [name, limitSchema(name)]),
) as Record<LimitName, ReturnType<typeof limitSchema>>;

/** The food code a kitchen works by: Salver's figures for a known edition, with what the place has changed. */
export const foodSafetySchema = z.strictObject({
  edition: line(
    'the code and its edition, as findings cite it; default: FDA Food Code 2022',
    'FDA Food Code 2022',
  ).optional(),
  place: line('where the code applies, as findings cite it; default: not stated', 'Maren Falls').optional(),
  limits: z
    .strictObject(limitFields)
    .optional()
    .meta({ description: 'limits that differ from the edition’s; default: none' }),
});

/** The food code of a kitchen as its file writes it. */
export type FoodSafetyText = z.infer<typeof foodSafetySchema>;

/** A limit alone, or with the section that sets it: `{ is: 40 °F, section: … }`. */
function limitSchema(name: LimitName) {
  const [meaning, example] = MEANINGS[name];
  const mapping = z.strictObject({
    is: list(meaning, example),
    section: line('the section that sets it; default: the edition’s', '3-501.16(A)(2)').optional(),
  });
  return z
    .preprocess((raw) => (typeof raw === 'string' || Array.isArray(raw) ? { is: raw } : raw), mapping)
    .optional()
    .meta({ description: meaning, examples: [example] });
}
