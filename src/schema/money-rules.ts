import { z } from 'zod';
import { line, list, orPlain, yesNo } from './text-fields.ts';

/*
 * Rules of price that kitchen.yaml sets for all proposals and a proposal may set for itself.
 */

/** The mandatory charge on top; its rate alone stands for the mapping. */
export const serviceChargeSchema = orPlain(
  'rate',
  z.strictObject({
    rate: line('share of what it is on; 0 % for none', '20 %'),
    on: list('the classes of lines it is on; default: food, drink', 'food, drink').optional(),
    label: line(
      'how the quote calls it, never a gratuity; default: Service charge',
      'Service charge',
    ).optional(),
    'after discount': yesNo('yes: on what is left after a discount; default: yes').optional(),
  }),
);

/** The count that the client is held to. */
export const guaranteeSchema = z.strictObject({
  deadline: line('after it the count may only rise; default: 7 days before', '7 days before').optional(),
  floor: line(
    'the billed count never falls under this share of the accepted one; default: 100 %',
    '90 %',
  ).optional(),
});

/** The payment schedule, in order. */
export const paymentsSchema = list(
  'the payments, in order; default: all on the day',
  '30 % when accepted, balance 7 days before',
);
