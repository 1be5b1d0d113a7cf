import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { rawSchema } from './food.ts';
import { text, texts } from './text.ts';

export const packOutLineSchema = z
  .object({
    group: z
      .enum(['food', 'carriers', 'service ware', 'equipment', 'kit', 'staff', 'add-ons'])
      .describe('What it is.'),
    item: text('Name of the dish, thing or role.'),
    container: text('Container that a dish travels in; empty for none.'),
    count: z.number().describe('How many.'),
    unit: text('What is counted.'),
    // Left out where the kitchen states no carriers, and on plans made before they were numbered.
    carriers: z.array(z.number()).describe('The numbers of the carriers it goes into.').optional(),
    hold: text('How food travels: `hot`, `cold`, `frozen` or `room`; empty for what is no food.'),
    note: text('Whom it is for, or how to finish it; empty for nothing.'),
    throwAwayBy: text(
      'HH:MM by which it must be thrown away; left out for what is held hot or cold.',
    ).optional(),
    // Left out for what comes back, for food, whose containers do, and in plans made before it was told.
    usedUp: z.literal(true).describe('It is used up there and is not counted back in.').optional(),
    // Of fuel alone; missing in plans made before it could be asked for.
    fuel: text('The name of the fuel.').optional(),
    // Of kit, rentals and fuel; missing in plans made before it was told.
    why: texts('Why it is so many: what it is for, what is added, and how that is rounded.').optional(),
    // Such lines come after all others: raw food goes below and separate from what is ready to eat.
    raw: rawSchema.optional(),
  })
  .meta({ id: 'pack-out-line', description: 'A line of what goes to the event.' });

/** A line of what goes to the event. */
export type PackOutLine = Fixed<z.infer<typeof packOutLineSchema>>;

export const labelSchema = z
  .object({
    dish: text('Name of the dish.'),
    container: text('What it is stuck on; empty where the dish is packed in nothing.'),
    of: text('`1 of 3`.'),
    job: text('Occasion and client.'),
    date: text('The day of the event in words.'),
    amount: text('What is inside.'),
    ingredients: text('Ingredients by weight, the heaviest first.'),
    // Left out on a dish, and in plans made before such food had labels of its own.
    goesInto: text(
      'The dish that it is for, where it is used at the place; of a part made ahead, the recipes that take it.',
    ).optional(),
    guests: text('For whom it is made separately or held back; empty for everybody.'),
    // In capitals, as is what labels warn of, so that no eye passes over them.
    contains: texts('Allergens in capitals.'),
    mayContain: texts('Allergens that labels warn of.'),
    madeOn: text('The day it is made, in words; empty for a food as bought.'),
    useBy: text(
      'The last day it may be served, in words; empty where nobody states how long it keeps: it is filled in by hand.',
    ),
    useByLatest: text(
      'Where that is empty, the day by which it must be used in any case, in words; left out where none is known.',
    ).optional(),
    hold: text('How it is kept on the way: `hot`, `cold`, `frozen` or `room`.'),
    carrier: text('The carrier it goes into; left out where it goes into none.').optional(),
    throwAwayBy: text(
      'HH:MM by which it must be thrown away; left out for what is held hot or cold.',
    ).optional(),
    finish: text('How to finish it; empty for nothing.'),
    // Such labels come after all others.
    raw: rawSchema.optional(),
  })
  .meta({ id: 'label', description: 'A label of one container.' });

/** A label of one container. */
export type PlanLabel = Fixed<z.infer<typeof labelSchema>>;

export const safetySheetSchema = z
  .object({
    edition: text('The code and edition that the sections are of.'),
    place: text('Where it is applied; empty where it is not stated.'),
    defers: text('Who has the last word.'),
    checks: z
      .array(
        z.object({
          stage: text('The part of the work: `cooking`, `cooling`, `transport`.'),
          date: text('ISO 8601; empty where a delivery or the use of the food decides.'),
          when: text('The same in words.'),
          recipe: text('Id of the recipe it is about; empty for none.'),
          what: text('What is measured.'),
          limit: text('What the code allows.'),
          section: text('Sections of the edition; empty where none sets it.'),
          blanks: texts('What is written down by hand, in order.'),
        }),
      )
      .describe('In the order of the work.'),
  })
  .meta({ id: 'safety-sheet', description: 'What to measure when.' });

/** The food-safety sheet of an event: what to measure when, what the code allows, and room for what was read. */
export type SafetySheetDocument = Fixed<z.infer<typeof safetySheetSchema>>;
export type SafetySheetCheck = SafetySheetDocument['checks'][number];
