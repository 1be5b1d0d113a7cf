import { z } from 'zod';
import { DISH_ROLES } from '../../engine/course/dish-role.ts';
import type { Fixed } from '../../schema/fixed.ts';
import { text, texts, whole } from './text.ts';

const money = 'in the currency of the event';

export const eventSchema = z
  .object({
    id: text('The event, as its folder is named.'),
    occasion: text('What is celebrated.'),
    client: text('Whose event it is.'),
    state: text('`accepted`, `confirmed`, `postponed` or `cancelled`.'),
    date: text('The day, ISO 8601.'),
    dateText: text('The day in words.'),
    serveAt: text('When food is on the table, by the clock of the place.'),
    place: text('Where the event is taxed and delivered to.'),
    venue: z
      .array(z.object({ label: text('What it is: `water`, `way in`.'), value: text('What is known of it.') }))
      .describe('What is known of the place: power, water, ovens, stairs, way in.'),
    siteSheet: text('Id of the site sheet of the place; left out where the proposal names none.').optional(),
    vehicle: text('What its food travels in; left out where the proposal names no vehicle.').optional(),
    travel: text('Time on the road, `35 min`; empty where it is not stated.'),
    package: text('The menu that was chosen.'),
    style: text('How it is served: `plated`, `buffet`, `family style` or `stations`.'),
    lines: whole('Service lines that are set up alike.'),
    guests: z
      .object({
        adults: whole('Adults at the table.'),
        children: whole('Children at the table.'),
        vendors: whole('Meals for other traders at the event, paid by the client.'),
        staff: whole('Meals for the crew, paid by the caterer.'),
      })
      .describe('Who eats.'),
    needs: z
      .array(z.object({ need: text('As written: `vegan + no gluten`.'), guests: whole('How many have it.') }))
      .describe('What guests cannot or do not eat.'),
    offer: z
      .object({
        revision: whole('Which issue of the offer was accepted.'),
        digest: text('Its digest.'),
        acceptedOn: text('The day it was accepted, ISO 8601.'),
      })
      .describe('The offer that the plan is made from.'),
    guarantee: z
      .object({
        deadline: text('When the count is due, in words.'),
        floor: text('The share of the accepted count that is billed at least.'),
        until: text('The last day on which the count may fall, ISO 8601; empty while unknown.'),
        floorGuests: whole('The fewest guests at the table that are billed.'),
        givenOn: text('The day the client guaranteed the count; empty while the accepted one stands.'),
      })
      .describe('The count that the client is held to.'),
    payments: z
      .array(
        z.object({
          label: text('Which payment it is, as the terms write it: `30 % when accepted`.'),
          what: text('The same as people read it: `30 % on acceptance`.').optional(),
          due: text('When it is due, ISO 8601; empty while unknown.'),
          amount: text(`How much, ${money}.`),
        }),
      )
      .describe('What is still to come.'),
    received: z
      .array(z.object({ on: text('The day, ISO 8601.'), amount: text(`How much, ${money}.`) }))
      .describe('What has come in.'),
    total: text(`What the client pays in all by what is known now, ${money}.`),
    currency: text('ISO 4217.'),
    measures: z.enum(['us', 'metric']).describe('The measures that amounts are printed in.'),
    decided: texts('What stands, a sentence each.'),
    open: z
      .array(
        z.object({
          what: text('What has still to be given, ordered or paid.'),
          due: text('The last day for it, ISO 8601; empty where none is set.'),
          dueText: text('The same in words.'),
          late: z.boolean().describe('Whether that day had passed when the plan was made.'),
        }),
      )
      .describe('What is still open, by the day it is due.'),
  })
  .meta({ id: 'event', description: 'The event as it stands.' });

/** The event as it stands. */
export type PlanEventFacts = Fixed<z.infer<typeof eventSchema>>;

export const alertSchema = z
  .object({
    about: text('`9 × vegetarian`, `1 × allergy: tree nuts`, or the name of a dish.'),
    who: texts('The guests it is about, with their tables, as far as a guest list names them.'),
    what: text('What to know or to do; empty where the lists of dishes say it.'),
    notFor: texts('Dishes that are not for them.'),
    notKnown: texts('Dishes for which it is not known; to be treated as not for them.'),
    suits: texts('Dishes that are for them.'),
  })
  .meta({ id: 'alert', description: 'What may hurt a guest.' });

/** What may hurt a guest: about whom or which dish, and which dishes are and are not for them. */
export type PlanAlert = Fixed<z.infer<typeof alertSchema>>;

export const coverageSchema = z
  .object({
    need: text('As written: `vegan + no gluten`.'),
    guests: whole('How many guests have it.'),
    said: z.boolean().describe('False where the client has not stated it and the kitchen plans for it.'),
    whole: z
      .enum(['every course', 'some courses', 'nothing'])
      .nullable()
      .describe('Which courses have something for them; null where the need is not known.'),
    courses: z
      .array(
        z.object({
          course: text('Name of the course.'),
          fed: z.boolean().describe('Whether it has for them, role by role, what it has for others.'),
          suits: texts('Planned dishes that they can eat as they are.'),
          apart: texts('Dishes made separately for them, with what is changed.'),
          notKnown: texts('Dishes for which it is not known.'),
          roles: z
            .array(
              z.object({
                role: z
                  .enum([...DISH_ROLES, ''])
                  .describe('What they are in the course; empty where unknown.'),
                dishes: texts('The dishes planned for them.'),
              }),
            )
            .describe('What is planned for them, role by role.'),
          missing: z.array(z.enum(DISH_ROLES)).describe('Roles the course has for others and not for them.'),
          asked: texts('Dishes whose role is not stated and decides whether they lack something.'),
          short: whole('How many of them get no portion by the counts chosen.'),
        }),
      )
      .describe('Course by course.'),
  })
  .meta({ id: 'coverage', description: 'How the menu feeds guests with one need.' });

/** How the menu feeds guests with one need. */
export type PlanCoverage = Fixed<z.infer<typeof coverageSchema>>;
