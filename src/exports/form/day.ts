import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { taskSchema } from './food.ts';
import { text, whole, why } from './text.ts';

export const timelineEntrySchema = z
  .object({
    part: text(
      '`cook`, `pack`, `load`, `leave`, `arrive`, `set up`, `finish`, `serve`, `course`, `clear`, `done`, `back`, `unload` or `discard`.',
    ),
    what: text('What the crew does.'),
    date: text('The day it begins, ISO 8601.'),
    dateText: text('That day in words where it is not the event’s; else left out.').optional(),
    begins: text('HH:MM by the clock of the place.'),
    ends: text('HH:MM; empty for a moment.'),
    why: text('Why then.'),
  })
  .meta({ id: 'timeline-entry', description: 'A part of the event’s day.' });

/** A part of the event’s day: cook, pack, load, leave, arrive, set up, finish at the place, serve, clear, done. */
export type PlanTimelineEntry = Fixed<z.infer<typeof timelineEntrySchema>>;

const minute = (says: string) => z.number().describe(says);

const pictureSchema = z
  .object({
    where: z.enum(['in the kitchen', 'at the place']).describe('Where the work is done.'),
    from: minute('Minutes from midnight at which it begins.')
      .nullable()
      .describe('Minutes from midnight at which it begins; null where only the time since then is known.'),
    minutes: minute('From first to last, in minutes.'),
    takes: text('The same for people.'),
    stations: z
      .array(
        z.object({
          name: text('Name of the station.'),
          tasks: z
            .array(
              z.object({
                number: whole('Its number in the list of tasks.'),
                id: text('Id of the task.'),
                begins: minute('Minutes from the beginning.'),
                handsOff: minute('When hands are free.'),
                ends: minute('When it is done.'),
                critical: z
                  .literal(true)
                  .describe('Set on the longest chain of the day: a minute lost here is lost for all.')
                  .optional(),
              }),
            )
            .describe('Its tasks in order of time.'),
        }),
      )
      .describe('Station by station.'),
    equipment: z
      .array(
        z.object({
          name: text('Name of the oven or the like, with its number where there are several.'),
          tasks: z
            .array(
              z.object({
                number: whole('Its number in the list of tasks.'),
                id: text('Id of the task.'),
                begins: minute('When it goes in, in minutes from the beginning.'),
                ends: minute('When it comes out.'),
                holds: whole('How many containers are in it at once.').optional(),
                of: whole('How many it holds; left out where they cannot be counted.').optional(),
                loads: whole('How many loads follow one another; left out for one.').optional(),
              }),
            )
            .describe('What is in it, in order of time.'),
        }),
      )
      .describe('Piece by piece; left out where none is in use.')
      .optional(),
    holding: z
      .array(
        z.object({
          name: text('What keeps food hot or cold until it is loaded.'),
          as: z.enum(['hot', 'cold']).describe('How it keeps it.'),
          fillings: z
            .array(
              z.object({
                begins: minute('Minutes from the beginning.'),
                ends: minute('When more or less waits in it.'),
                percent: whole('How full it is, in whole percent; over 100 where more waits than it holds.'),
                share: text('The same for people, `75 %`.'),
              }),
            )
            .describe('How full it is, in order of time.'),
        }),
      )
      .describe('Space that keeps food; left out where nothing waits in any.')
      .optional(),
    people: z
      .array(
        z.object({
          name: text('`Cook 2`.'),
          more: z.literal(true).describe('Set where more are needed than there are.').optional(),
          tasks: z
            .array(
              z.object({
                number: whole(
                  'Its number in the list of tasks; left out for packing and loading.',
                ).optional(),
                id: text('Id of the task.').optional(),
                does: text('Packing or loading, in words.').optional(),
                event: text('For which event, where there may be several.').optional(),
                begins: minute('Minutes from the beginning.'),
                ends: minute('When hands are free.'),
                critical: z
                  .literal(true)
                  .describe('Set for packing and loading on the longest chain of the day.')
                  .optional(),
              }),
            )
            .describe('What each has their hands on, in order of time: never two at a minute.'),
        }),
      )
      .describe('Cook by cook; left out where it is not stated who cooks.')
      .optional(),
    waiting: z
      .array(
        z.object({
          name: text('Name of the dish.'),
          as: z.enum(['hot', 'cold', 'frozen', 'room']).describe('How it waits.'),
          begins: minute('When it is finished, in minutes from the beginning.'),
          ends: minute('When its course is served.'),
        }),
      )
      .describe('Dishes finished here that wait for their guests; left out where none does.')
      .optional(),
  })
  .meta({
    id: 'day-picture',
    description: 'A day’s work at one place: time across; stations, equipment and people down.',
  });

/** A day’s work at one place: time across; stations, equipment and people down. */
export type PlanDayPicture = Fixed<z.infer<typeof pictureSchema>>;

const loadSchema = z
  .object({
    task: text('Id of the task.'),
    recipeName: text('Name of the recipe.'),
    text: text('What is done.'),
    equipment: text('Name of the equipment.'),
    uses: whole('How many of it are in use at a time.'),
    containers: text('What goes in, `9 × Full steam-table pan`; empty where it cannot be counted.'),
    loads: whole('How many loads follow one another.'),
    goesIn: text('When the first goes in, written as a task’s beginning is.'),
    comesOut: text('When the last comes out.'),
    minutes: minute('Minutes between the two.'),
    why: why(),
  })
  .meta({ id: 'load', description: 'One step’s way through an oven, a grill or a rack.' });

/** One step’s way through an oven, a grill or a rack. */
export type PlanLoad = Fixed<z.infer<typeof loadSchema>>;

export const daySchema = z
  .object({
    date: text('ISO 8601.'),
    dateText: text('The same in words.'),
    when: text('How many days before the event.'),
    handsOn: text('Time that hands are at work in all.'),
    crew: text('What the crew has, `4 × 8 h = 32 h`; empty where it is not stated.'),
    tasks: z.array(taskSchema).describe('What is done, the earliest that can begin first.'),
    pictures: z.array(pictureSchema).describe('The same in order of time, one picture for each place.'),
    loads: z.array(loadSchema).describe('What goes through ovens and the like, in the order it goes in.'),
  })
  .meta({ id: 'day', description: 'A day of work for the event.' });

/** A day of work for the event: its tasks, the earliest use of each bench first among those that can begin. */
export type PlanDay = Fixed<z.infer<typeof daySchema>>;
/** A step of a recipe on its day. */
export type PlanTask = PlanDay['tasks'][number];
