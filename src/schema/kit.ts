import { z } from 'zod';
import { returnFields } from './return-facts.ts';
import { commaLine, line, list, orPlain, yesNo } from './text-fields.ts';

/** A thing that goes along by rule; its rules alone stand for the mapping. */
export const kitItemSchema = orPlain(
  'amount',
  z.strictObject({
    name: line('its name on the pack-out list; default: its id in words', 'Fire extinguisher').optional(),
    amount: list(
      'how many go along for what, several rules summed: per event, guest, staff, cook, table, line, dish, hour, flame (equipment that burns fuel), plug (equipment that draws current), a staff role or a piece of equipment; `none` leaves out one of the usual kit; default: the usual kit’s',
      '1 per event, 1 per field-oven',
    ).optional(),
    counts: commaLine(
      'which guests a rule per guest counts, with a weight after “at”; default: the kitchen’s `counts`',
      'adults, children, vendors',
    ).optional(),
    for: list('the service styles it goes with; default: all', 'buffet, stations').optional(),
    if: list(
      'what must hold for it to go along, all of it: `no water`, `no power`, `no cover`, `no cold space`, `stairs` of the venue (a fact that nobody has stated counts as holding), `rain`, `wind`, `heat` (80 °F or above) of the proposal’s `weather`; default: always',
      'no cover, rain',
    ).optional(),
    'used up': yesNo(
      'yes: it is used up there, so that nobody counts it back in; default: no, it comes back',
    ).optional(),
    weighs: line('what one weighs, for the van; default: not stated', '10 lb').optional(),
    note: line('what the crew reads beside it; default: nothing', 'charged and inspected').optional(),
    ...returnFields,
  }),
);

/** It as a file writes it. */
export type KitItemText = z.infer<typeof kitItemSchema>;

/** A whole list of them, by id. */
export const kitListSchema = z.record(z.string(), kitItemSchema);
