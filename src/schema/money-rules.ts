import { z } from 'zod';
import { line, list, orPlain, yesNo } from './text-fields.ts';

/*
 * Rules of price that kitchen.yaml sets for all proposals and a proposal may set for itself.
 */

/** The mandatory charge on top; its rate alone stands for the mapping. */
export const serviceChargeSchema = orPlain(
  'rate',
  z.strictObject({
    rate: line('percentage of what it applies to; 0 % for none', '20 %'),
    on: list('the classes of lines it applies to; default: food, drink', 'food, drink').optional(),
    label: line(
      'its name in the quote, never a gratuity; default: Service charge',
      'Service charge',
    ).optional(),
    'after discount': yesNo('yes: applied after a discount is taken off; default: yes').optional(),
  }),
);

/** The count that the client is held to. */
export const guaranteeSchema = z.strictObject({
  deadline: line(
    'after this day the count can go up but not down; default: 7 days before',
    '7 days before',
  ).optional(),
  floor: line(
    'the billed count is never less than this share of the accepted count; default: 100 %',
    '90 %',
  ).optional(),
});

/** The payment schedule, in order. */
export const paymentsSchema = list(
  'the payments, in order; default: all on the day',
  '30 % when accepted, balance 7 days before',
);
