import { WASHERS } from '../engine/kitchen/return-facts.ts';
import { line, oneOf } from './text-fields.ts';

/** What a thing that comes back from an event may state of it: whose it is, who washes it, what one costs to replace. */
export const returnFields = {
  'hired from': line(
    'whom it is hired from, for the return list; default: it is the kitchen’s own',
    'Tallow Yard Hire',
  ).optional(),
  'back within': line(
    'how soon after the event it must be back with them; default: not stated',
    '2 days',
  ).optional(),
  washed: oneOf(
    WASHERS,
    'who washes it after the event: the kitchen, the hirer, or the crew at the place; default: the hirer for what is hired, else the kitchen',
  ).optional(),
  replacement: line(
    'what the client is charged for one that is broken or missing; default: nothing',
    '6.50',
  ).optional(),
};
