import { z } from 'zod';
import { cooksSchema } from './cooks.ts';
import { byStyle, commaLine, line, oneOf, yesNo } from './text-fields.ts';

/** Whom the client pays for: servers, bartenders and the like. */
export const staffSchema = z.strictObject({
  name: line('the role’s name in quotes', 'Servers'),
  price: line('what the client pays for one, per hour', '38.00 per hour'),
  pay: line('what one is paid, per hour; never shown to a client', '24.00 per hour'),
  'one per': byStyle('guests per person in this role', '15 guests').meta({
    description: 'guests per person in this role, by service style; a style left out needs none',
    examples: ['{ plated: 15 guests }'],
  }),
  hours: line('hours for each, unless the proposal states them', '6 hours'),
  'at least': line('never fewer people than this; default: 0', '2').optional(),
  counts: commaLine(
    'which guests they serve, with a weight after “at”; default: the kitchen’s `counts`',
    'adults, children, vendors',
  ).optional(),
  cooks: yesNo(
    'yes: people in this role cook at the event’s place, and its cooking is planned for as many; default: no',
  ).optional(),
  'reports to': oneOf(
    ['kitchen', 'place'],
    'where their hours begin and end: `kitchen`, from loading the truck until it is unloaded, or `place`, from the truck’s arrival until everything is cleared; default: kitchen',
  ).optional(),
});

/** Who cooks on a prep day, and what they are paid. */
export const crewSchema = cooksSchema.extend({
  pay: line(
    'what one is paid, per hour; never shown to a client; default: not stated',
    '22.00 per hour',
  ).optional(),
});
