import { z } from 'zod';
import { LIMIT_KINDS, type LimitName } from '../engine/safety/limit.ts';
import { line, list } from './text-fields.ts';

/** What each limit means in kitchen.yaml; the figure of the edition counts where it is left out. */
const MEANINGS: Readonly<Record<LimitName, readonly [meaning: string, example: string]>> = {
  receiving: ['chilled food arrives at most so warm', '41 °F'],
  'receiving eggs': ['raw eggs arrive in air at most so warm', '45 °F'],
  'intact meat and fish': ['raw meat and fish in pieces are cooked to it', '145 °F for 15 s'],
  'ground or injected meat': [
    'raw meat and fish that is ground, injected or tenderized; several ways to cook it, each enough',
    '155 °F for 17 s, 145 °F for 3 min',
  ],
  poultry: ['raw poultry is cooked to it', '165 °F'],
  'stuffed food': ['stuffed meat, fish, poultry and pasta are cooked to it', '165 °F'],
  eggs: ['raw eggs that are held, or pooled for many, are cooked to it', '155 °F for 17 s'],
  'eggs to order': ['raw eggs for one guest’s order are cooked to it', '145 °F for 15 s'],
  'whole roasts': ['whole roasts: several ways, each enough', '145 °F for 4 min, 130 °F for 112 min'],
  'plant food held hot': ['plant food that is cooked to be held hot reaches it', '135 °F'],
  reheating: ['food cooked, cooled and heated again reaches it', '165 °F for 15 s'],
  'reheating ready-to-eat food': ['bought ready-to-eat food that is heated reaches it', '135 °F'],
  'reheating time': ['heating again takes no longer', '2 h'],
  cooling: [
    'cooked food cools in these stages, counted from the beginning',
    '70 °F within 2 h, 41 °F within 6 h',
  ],
  'cooling from room temperature': ['food made at room temperature cools so fast', '41 °F within 4 h'],
  'cold holding': ['cold food is kept at most so warm', '41 °F'],
  'hot holding': ['hot food is kept at least so hot', '135 °F'],
  thawing: ['food thaws in the cold at most so warm', '41 °F'],
  'thawing under water': [
    'warmest the running water may be, and longest raw food may be above cold holding',
    '70 °F within 4 h',
  ],
  'date mark': ['days that ready-to-eat food is kept cold, the day it is made counted', '7 days'],
  'time without control': ['longest that food stands neither hot nor cold, then it is thrown away', '4 h'],
  'time without control, kept cool': [
    'the same for food that begins cold and never gets warmer than this',
    '70 °F within 6 h',
  ],
};

const limitFields = Object.fromEntries(
  (Object.keys(LIMIT_KINDS) as LimitName[]).map((name) => [name, limitSchema(name)]),
) as Record<LimitName, ReturnType<typeof limitSchema>>;

/** The food code a kitchen works by: Salver's figures for a known edition, with what the place has changed. */
export const foodSafetySchema = z.strictObject({
  edition: line(
    'the code and its edition, as findings name it; default: FDA Food Code 2022',
    'FDA Food Code 2022',
  ).optional(),
  place: line('where the code is applied, as findings name it; default: not said', 'Maren Falls').optional(),
  limits: z
    .strictObject(limitFields)
    .optional()
    .meta({ description: 'limits that are other than the edition’s; default: none' }),
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
