import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { text, texts, whole } from './text.ts';

export const leaderSchema = z
  .object({
    crew: z
      .array(z.object({ role: text('The role as it is sold.'), people: whole('How many of them.') }))
      .describe('Who works at the event, as the offer sells them; empty where that is not known.'),
    phones: z
      .array(
        z.object({
          who: text('Whom it reaches.'),
          name: text('Their name; empty where it is not known.'),
          number: text('The number, or an address; empty where nobody has stated it.'),
        }),
      )
      .describe('Whom to call.'),
    clock: z
      .array(
        z.object({
          what: text('What happens.'),
          at: text('HH:MM at which it happens or begins.'),
          until: text('HH:MM at which it is over; empty for a moment.'),
        }),
      )
      .describe(
        'The day in the order of its hours: leaving, arriving, first and last plate of each course, back.',
      ),
    throwAway: z
      .array(z.object({ dish: text('Its name.'), by: text('HH:MM by which it has to be thrown away.') }))
      .describe(
        'Food that stands neither hot nor cold; local code and a licensed manager decide. Left out for none.',
      )
      .optional(),
    short: z
      .array(
        z.object({
          dish: text('Its name.'),
          odds: text('How likely it runs short, in words.'),
          helpings: whole('Helpings that go along.'),
        }),
      )
      .describe('Dishes that may run short, the likeliest first.'),
    notAsked: texts('What nobody has asked of a place that has a site sheet, as the facts are called.'),
  })
  .meta({ id: 'leader', description: 'What whoever leads the crew has in hand.' });

/** What whoever leads the crew has in hand. */
export type PlanLeader = Fixed<z.infer<typeof leaderSchema>>;
