import { z } from 'zod';
import { DISH_ROLES } from '../engine/course/dish-role.ts';
import { commaLine, line, mappingOf, oneOf, orPlain, yesNo } from './text-fields.ts';

/** For whom a dish is cooked, as a kitchen, a package or a dish writes it. */
export const COOKED_FOR = ['everybody', 'those who can eat it'] as const;
export const COOKED_FOR_MEANING =
  'for whom it is cooked: `those who can eat it` leaves out guests whose stated needs it does not suit; the dish wins over the package, that over the kitchen; default: everybody';

/** A dish under its recipe's id; the per-guest amount alone stands for the mapping. */
export const dishSchema = orPlain(
  'amount',
  z.strictObject({
    amount: line(
      'how much of it for each guest, in a unit that the recipe makes or converts to',
      '1 piece per guest',
    ),
    overage: line(
      'extra carried over it, or with an appetite the chosen risk, as “short at most 1 in 50”; default: the kitchen’s for the service style',
      '5 %',
    ).optional(),
    counts: commaLine(
      'which guests get it; default: the package’s `counts`',
      'adults, children at 1/2',
    ).optional(),
    role: oneOf(
      DISH_ROLES,
      'what it is in its course; guests with a need get each role, so that bread is no main; default: the recipe’s, else what the course tells',
    ).optional(),
    others: line(
      'for a dish that is there for guests who can eat no other of its course: the share of all the rest who help themselves to it; default: it is planned for everybody',
      '20 %',
    ).optional(),
    'instead of': line(
      'the dish of its course that some guests get it in place of; it is taken off that one; default: it takes the place of none',
      'plum-slab-cake',
    ).optional(),
    for: commaLine(
      'with `instead of`: for which needs; default: for whoever cannot eat that dish',
      'vegan, no gluten',
    ).optional(),
    'cooked for': oneOf(COOKED_FOR, COOKED_FOR_MEANING).optional(),
    'held back': yesNo(
      'yes: such a dish is kept for those who need it, and nobody else is planned for; default: no',
    ).optional(),
    appetite: mappingOf(
      line('share of the guests', '55 %'),
      'helpings that guests take (none, one, two … six) → share of the guests who take so many; default: not said',
    ).optional(),
    'first choice': line(
      'in a course of which each guest takes one helping: the share of the guests who take this dish first; default: everybody takes it',
      '40 %',
    ).optional(),
    helping: line('what one helping is; default: the amount for one guest', '1 piece').optional(),
    missing: line(
      'what a helping that is wanted and not there costs the kitchen; never shown to a client; default: not said',
      '6.00',
    ).optional(),
    'left over': line(
      'what a helping that comes back costs the kitchen; never shown to a client; default: not said',
      '1.20',
    ).optional(),
  }),
);

/** A dish as a package or an add-on writes it. */
export type DishText = z.infer<typeof dishSchema>;
