import { z } from 'zod';
import { returnFields } from './return-facts.ts';
import { line, list, oneOf, orPlain, yesNo } from './text-fields.ts';

/** A pan, tub, bowl, bag or tray. */
export const containerSchema = orPlain(
  'holds',
  z.strictObject({
    name: line('its name on lists and labels; default: its id in words', 'Half sheet pan').optional(),
    holds: line('its capacity, by volume, weight or count', '240 fl oz'),
    fill: line('how full it is filled, as a share of that; default: 100 %', '90 %').optional(),
    over: line(
      'how much more goes into one before another is started, as a share of its usual fill: one more piece on a tray, one more ladle in a tub, never to the brim and never where depth slows cooling; up to 25 %, default: 5 %',
      '0 %',
    ).optional(),
    depth: line('how deep it is inside, for cooling; default: not stated', '2½ in').optional(),
    weighs: line('what one weighs empty; default: not stated', '4 lb').optional(),
    'on its own': yesNo(
      'yes: it travels as it is, in no carrier, as an urn or a rack on wheels does; default: no',
    ).optional(),
    for: oneOf(
      ['hot', 'cold'],
      'for hot or for cold food only; `check` warns of hot food served in one for cold; default: both',
    ).optional(),
    ...returnFields,
  }),
);

/** What cooks or keeps. */
export const equipmentSchema = z.strictObject({
  name: line('its name in plans; default: its id in words', 'Convection oven').optional(),
  count: line('how many there are; default: 1', '2').optional(),
  holds: list(
    'how many of each kind of container one holds, or how many batches of a recipe; default: not stated',
    '5 full-pan-2, 10 half-sheet',
  ).optional(),
  'by hand': yesNo(
    'yes: it is in use as long as hands are at work at its station, like a grill or a mixer; no: only in unattended time, like an oven; default: in a step’s unattended time, or in its hands-on time if it has no other',
  ).optional(),
  chills: line(
    'how long food takes in it from the end of cooking to cold, as in a blast chiller or an ice bath; cooked food goes into it, load after load, in the containers it `holds`; default: nothing is cooled in it',
    '90 min',
  ).optional(),
  keeps: oneOf(
    ['hot', 'cold'],
    'hot or cold: finished food waits in it until its truck is loaded, in the containers it `holds`, as in a warming cabinet or a reach-in refrigerator; nothing is cooked in it; default: nobody counts where food waits',
  ).optional(),
  station: line(
    'the station it belongs to; default: the station with the same id, if there is one',
    'oven',
  ).optional(),
  travels: yesNo(
    'yes: it can be taken to an event and used there for its station’s work; default: no',
  ).optional(),
  draws: line('what one draws from an electric circuit; default: none, or not stated', '16 A').optional(),
  'heats in': line(
    'time to light or heat it at the place before it can be used; default: none',
    '20 min',
  ).optional(),
  burns: line(
    'what one burns in an hour; the pack-out list then says how much fuel goes along; default: nothing, or not stated',
    '9 oz of propane per hour',
  ).optional(),
  'fuel comes in': line('what its fuel is bought in, a cylinder or a bag', '20 lb').optional(),
  weighs: line('what one weighs, for the van; default: not stated', '64 lb').optional(),
  ...returnFields,
});

/** Where work is done in the kitchen; its name alone stands for the mapping. */
export const stationSchema = orPlain(
  'name',
  z.strictObject({
    name: line('the station’s name', 'Cold bench'),
    places: line('how many people can work there at once; default: 1', '2').optional(),
    skill: line(
      'a skill of the crew that hands-on work there takes, where its step names no other; default: anybody may work there',
      'grill',
    ).optional(),
  }),
);

/** What the food travels in; its name alone stands for the mapping. */
export const vehicleSchema = orPlain(
  'name',
  z.strictObject({
    name: line('its name in plans', 'Delivery van'),
    count: line('how many there are; default: 1', '2').optional(),
    payload: line(
      'the most that one may carry, people and fuel left out; default: not stated',
      '1900 lb',
    ).optional(),
    space: line(
      'what there is to load on, length × width × height, between the wheel arches; default: not stated',
      '120 × 54 × 60 in',
    ).optional(),
  }),
);
