import { z } from 'zod';
import { commaLine, line, orPlain, yesNo } from './text-fields.ts';

/** A dish under its recipe's id; the per-guest amount alone stands for the mapping. */
export const dishSchema = orPlain(
  'amount',
  z.strictObject({
    amount: line(
      'how much of it for each guest, in a unit that the recipe makes or converts to',
      '1 piece per guest',
    ),
    overage: line('extra carried over it; default: the kitchen’s for the service style', '5 %').optional(),
    counts: commaLine(
      'which guests get it; default: the package’s `counts`',
      'adults, children at 1/2',
    ).optional(),
    others: line(
      'for a dish that is there for guests who can eat no other of its course: the share of all the rest who help themselves to it; default: it is planned for everybody',
      '20 %',
    ).optional(),
    'held back': yesNo(
      'yes: such a dish is kept for those who need it, and nobody else is planned for; default: no',
    ).optional(),
  }),
);

/** A dish as a package or an add-on writes it. */
export type DishText = z.infer<typeof dishSchema>;
