import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { SHAPES } from './shapes.ts';
import { text, texts, whole } from './text.ts';

const mark = {
  letters: text('The word that stands for the dish on cards, in capitals.'),
  shape: z.enum(SHAPES).describe('The shape that says the same.'),
};

export const tablesSchema = z
  .object({
    givenOn: text('The day the client gave the list.'),
    givenOnText: text('The same in words.'),
    late: z.boolean().describe('Whether it came after the day up to which the count could fall.'),
    courses: z
      .array(
        z.object({
          course: text('Name of a course of which every guest takes one dish.'),
          dishes: z
            .array(
              z.object({
                recipe: text('Id of the recipe accepted.'),
                name: text('Name of the dish as it is served.'),
                listed: whole('Guests who take it by the list.'),
                planned: whole('Guests it is planned for.'),
                ...mark,
              }),
            )
            .describe('The dishes to choose from.'),
          rows: z
            .array(
              z.object({
                table: text('`Table 4`, a table’s name, or `No table`.'),
                counts: z.array(whole('Guests at the table who take the dish.')).describe('By dish.'),
                unsaid: whole('Guests at the table with no dish on record.'),
              }),
            )
            .describe('The tables in their order.'),
          unsaid: whole('Guests with no dish on record.'),
        }),
      )
      .describe('The dishes by table.'),
    seats: z
      .array(
        z.object({
          name: text('The guest’s name.'),
          table: text('As in the rows.'),
          need: text('Diet or allergy as on the list; empty for none.'),
          dishes: z
            .array(
              z.object({
                course: text('The course.'),
                name: text('The dish chosen.'),
                made: text(
                  'What this guest gets in its place, by its name among the dishes; left out for the dish as it is.',
                ).optional(),
                ...mark,
              }),
            )
            .describe('What the guest takes.'),
          notFor: texts('Dishes chosen that are not for this guest, and not made separately.'),
          apart: texts('What is made separately for this guest, by its name among the dishes.'),
          sealed: texts(
            'Those of them that are sealed for an allergy; left out in plans made before it was recorded.',
          ).optional(),
        }),
      )
      .describe('Every guest in the order of the tables.'),
  })
  .meta({ id: 'tables', description: 'Who sits where and takes what.' });

/** Who sits where and takes what, from the guest list that stands. */
export type PlanTables = Fixed<z.infer<typeof tablesSchema>>;
/** The dishes of a course by table. */
export type PlanTableCourse = PlanTables['courses'][number];
/** A dish that guests choose, with the signs that stand for it on cards. */
export type PlanTableDish = PlanTableCourse['dishes'][number];
/** What stands for a dish where there is little room: a word and a shape, which say the same. */
export type PlanMark = Pick<PlanTableDish, 'letters' | 'shape'>;
/** One guest's place. */
export type PlanSeat = PlanTables['seats'][number];
/** A dish that a guest chose, with its mark. */
export type PlanSeatDish = PlanSeat['dishes'][number];
