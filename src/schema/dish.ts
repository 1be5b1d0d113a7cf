import { z } from 'zod';
import { DISH_ROLES } from '../engine/course/dish-role.ts';
import { commaLine, line, mappingOf, oneOf, orPlain, yesNo } from './text-fields.ts';

/** For whom a dish is cooked, as a kitchen, a package or a dish writes it. */
export const COOKED_FOR = ['everybody', 'those who can eat it'] as const;
export const COOKED_FOR_MEANING =
  'whom it is cooked for: `those who can eat it` leaves out guests whose stated needs it does not suit; the dish’s setting overrides the package’s, and that one the kitchen’s; default: everybody';

/** A dish under its recipe's id; the per-guest amount alone stands for the mapping. */
export const dishSchema = orPlain(
  'amount',
  z.strictObject({
    amount: line('amount per guest, in a unit that the recipe makes or converts to', '1 piece per guest'),
    overage: line(
      'extra carried on top of it, or with an appetite the chosen risk, such as “short at most 1 in 50”; default: the kitchen’s for the service style',
      '5 %',
    ).optional(),
    counts: commaLine(
      'which guests get it; default: the package’s `counts`',
      'adults, children at 1/2',
    ).optional(),
    role: oneOf(
      DISH_ROLES,
      'its role in the course; guests with a need get every role, so bread does not count as a main; default: the recipe’s, or whatever the course implies',
    ).optional(),
    others: line(
      'for a dish meant for guests who can’t eat anything else in its course: the share of the other guests who help themselves to it; default: it is planned for everybody',
      '20 %',
    ).optional(),
    'instead of': line(
      'the dish of its course that it replaces for some guests, who are then not counted for that dish; default: it replaces none',
      'plum-slab-cake',
    ).optional(),
    for: commaLine(
      'with `instead of`: which needs it is for; default: anyone who can’t eat that dish',
      'vegan, no gluten',
    ).optional(),
    'cooked for': oneOf(COOKED_FOR, COOKED_FOR_MEANING).optional(),
    'held back': yesNo(
      'yes: the dish is kept for guests who need it, and no one else is planned for; default: no',
    ).optional(),
    appetite: mappingOf(
      line('share of the guests', '55 %'),
      'helpings that guests take (none, one, two … six) → share of the guests who take that many; default: not stated',
    ).optional(),
    'first choice': line(
      'in a course of which each guest takes one helping: the share of the guests who take this dish first; default: everybody takes it',
      '40 %',
    ).optional(),
    helping: line('what one helping is; default: the amount for one guest', '1 piece').optional(),
    missing: line(
      'what it costs the kitchen when a helping is wanted and not there; never shown to a client; default: not stated',
      '6.00',
    ).optional(),
    'left over': line(
      'what a helping that comes back costs the kitchen; never shown to a client; default: not stated',
      '1.20',
    ).optional(),
  }),
);

/** A dish as a package or an add-on writes it. */
export type DishText = z.infer<typeof dishSchema>;
