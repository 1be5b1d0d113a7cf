import { z } from 'zod';
import { returnFields } from './return-facts.ts';
import { line, list } from './text-fields.ts';

/** How a carrier keeps heat: a trial with hot water, which any kitchen can make, or its maker's figures for one. */
const trialSchema = z.strictObject({
  water: line('how much hot water was closed in', '60 lb'),
  from: line('how hot it was then', '165 °F'),
  to: line('how hot it was afterwards', '152 °F'),
  after: line('how long it stood closed', '4 hours'),
  around: line('how warm it was around the carrier', '70 °F'),
});

/** What containers travel in: a hot box, a cool box, a crate, an urn. */
export const carrierSchema = z.strictObject({
  name: line('its name on lists; default: its id in words', 'Insulated hot carrier').optional(),
  count: line('how many there are; default: 1', '6').optional(),
  for: list('what travels in it: hot, cold, frozen, room', 'hot'),
  holds: list('how many of each kind of container one holds', '5 full-pan-2, 3 full-pan-4'),
  size: line(
    'its outside, length × width × height, for its place on the van; default: not stated',
    '25 × 17 × 24 in',
  ).optional(),
  weighs: line('what one weighs empty; default: not stated', '42 lb').optional(),
  trial: trialSchema.optional().meta({
    description:
      'how well it keeps heat, by a trial with hot water or its maker’s figures for one; default: what a foam-walled box commonly loses',
    examples: ['{ water: 60 lb, from: 165 °F, to: 152 °F, after: 4 hours, around: 70 °F }'],
  }),
  'ice pack': line('what one of its ice packs weighs; default: loose ice', '3 lb').optional(),
  ...returnFields,
});
