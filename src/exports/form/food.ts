import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { amountSchema, text, texts, whole, why } from './text.ts';

const containerSchema = z
  .object({
    stage: text('`chill`, `carry` or `serve`.'),
    container: text('Id of the container in kitchen.yaml.'),
    name: text('Its name.'),
    count: whole('How many are filled.'),
    each: amountSchema.describe('What a full one holds.'),
    lastFull: text('How full the last one is, in whole per cent of its working fill.'),
    why: why(),
  })
  .meta({ id: 'container', description: 'What a dish is chilled, carried or served in.' });

/** What a dish is chilled, carried or served in, at one stage. */
export type PlanContainer = Fixed<z.infer<typeof containerSchema>>;

export const rawSchema = z
  .object({
    mark: z
      .enum(['RAW', 'TREAT AS RAW'])
      .describe('`TREAT AS RAW` where no step says that it is cooked before it leaves.'),
    next: text('What becomes of it at the place: `cook to 155 °F for 17 s`.'),
    source: text('What the food code asks, where, and who decides.'),
  })
  .meta({
    id: 'raw',
    description:
      'Set on food that leaves the kitchen raw; left out where it is ready to eat, and in plans made before it was recorded.',
  });

/** What is told of food that leaves the kitchen raw. */
export type PlanRaw = Fixed<z.infer<typeof rawSchema>>;

export const dishSchema = z
  .object({
    course: text('The course it belongs to.'),
    name: text('Its name on the menu.'),
    recipe: text('Id of its recipe.'),
    apartFrom: text('The recipe that these portions are made separately from; empty for a dish as it is.'),
    changes: texts('How they differ: `without butter`; empty for a dish as it is.'),
    needs: z
      .array(z.object({ need: text('As written.'), guests: whole('How many of them it is for.') }))
      .describe('Of the guests counted, those with a need that it suits.'),
    counted: text('Guests it is counted for, a whole or mixed number.'),
    perGuest: text('The amount for each of them.'),
    overage: text(
      'The extra carried over that amount, per cent; or the chosen risk that decides the amount: `short at most 1 in 50`.',
    ),
    need: amountSchema.describe('What is served in all.'),
    asMade: amountSchema.describe('The same in the unit that its recipe makes.'),
    contains: texts('Allergens in it, by the names of the law the kitchen follows.'),
    mayContain: texts('Allergens that labels warn of.'),
    allergenPaths: z
      .array(
        z.object({
          allergen: text('The allergen.'),
          paths: texts('Each way it comes in, from the dish down to the ingredient.'),
        }),
      )
      .describe('What brings each allergen in.'),
    mayContainPaths: z
      .array(
        z.object({
          allergen: text('The allergen.'),
          paths: texts('Each way it may come in, from the dish down to the ingredient.'),
        }),
      )
      .describe('What each warning comes from.'),
    unsaid: texts('Ingredients whose allergens are not stated.'),
    raw: rawSchema.optional(),
    throwAway: z
      .object({
        left: text('HH:MM at which it leaves heat or cold on the event’s day.'),
        by: text('HH:MM by which it must be thrown away, as the food code allows.'),
      })
      .describe('Set for food that time alone keeps safe; left out for any other.')
      .optional(),
    diets: z
      .array(
        z.object({
          diet: text('Name of the diet.'),
          suits: z.enum(['yes', 'no', 'unknown']).describe('Unknown is never to be read as yes.'),
          because: texts('Ingredients that decide it.'),
        }),
      )
      .describe('Diets, judged down to the last ingredient.'),
    earlier: z
      .object({
        events: whole('How many earlier events it rests on.'),
        nothingLeft: whole('At how many of them nothing was left, so that more might have been eaten.'),
        mean: text('What each guest who came ate; empty where nobody can say.'),
        from: text('Where that mean lies; empty where nobody can say.'),
        to: text('The other end of it.'),
        atLeast: text('The most that was eaten where nothing was left; empty where something always was.'),
        said: text('All of it in a sentence.'),
      })
      .optional()
      .describe('What earlier events, served the same way, tell of it; left out where none does.'),
    containers: z.array(containerSchema).describe('What it is packed in, stage by stage.'),
    why: why(),
  })
  .meta({ id: 'dish', description: 'A dish, or portions of one that are made separately.' });

/** A dish, or portions of one that are made separately. */
export type PlanDish = Fixed<z.infer<typeof dishSchema>>;
/** What earlier events, served the same way, tell of a dish; amounts are for each guest who came. */
export type PlanEarlier = NonNullable<PlanDish['earlier']>;

const stepFields = {
  number: whole('Its place among the steps of its recipe, from 1.'),
  text: text('What is done.'),
  when: text('The day, counted back from the event.'),
  station: text('Where it is done.'),
  handsOn: text('Time that hands are at it.'),
  handsOnMinutes: z.number().describe('The same in minutes.'),
  unattended: text('Unattended time; empty for none.'),
  cookTo: text('The temperature it is cooked to, and how long it is held there; empty for none.'),
  heat: text(
    'What its words set an oven or the like to, `375 °F`; left out where they name none.',
  ).optional(),
  skill: text('The skill that one of those at it has; left out where anybody will do.').optional(),
};

export const recipeSchema = z
  .object({
    id: text('Id of the recipe.'),
    name: text('Its name.'),
    usedBy: z
      .array(
        z.object({
          by: text('Name of the dish or recipe.'),
          need: amountSchema.describe('How much of this one it takes.'),
        }),
      )
      .describe('What it is made for.'),
    need: amountSchema.describe('What is needed in all, before batches are rounded.'),
    batches: text('How many times the recipe is made.'),
    makes: amountSchema.describe('What that makes.'),
    hold: text('How it is held: `hot`, `cold`, `frozen` or `room`.'),
    keeps: text('How long it keeps, the day it is made being the first; empty where it is not stated.'),
    finish: text('How to finish it before service; empty for nothing.'),
    packed: z
      .array(
        z.object({
          stage: text('`chill`, `carry` or `serve`.'),
          what: text('How many of which container.'),
        }),
      )
      .optional()
      .describe('What it is packed in, stage by stage; left out in plans made before it was recorded.'),
    notes: text('Key of the cook’s notes; empty where there are none.'),
    lines: z
      .array(
        z.object({
          kind: z.enum(['ingredient', 'recipe']).describe('What is taken.'),
          id: text('Id of the ingredient or recipe.'),
          name: text('Its name.'),
          preparation: text('How it is made ready; empty for as it is.'),
          amount: amountSchema.describe('How much, after preparation.'),
          note: text('The cook’s remark; empty for none.'),
          allergens: texts('Allergens in it.'),
        }),
      )
      .describe('What goes in, scaled for this event.'),
    steps: z
      .array(z.object(stepFields).meta({ id: 'step', description: 'A step of a recipe.' }))
      .describe('What is done, in order.'),
    contains: texts('Allergens in it.'),
    why: why(),
  })
  .meta({ id: 'recipe', description: 'A recipe, scaled for this event.' });

/** A recipe, scaled for the event. */
export type PlanRecipe = Fixed<z.infer<typeof recipeSchema>>;
/** A step of a recipe. */
export type PlanStep = PlanRecipe['steps'][number];

export const taskSchema = z
  .object({
    ...stepFields,
    // So that a calendar updates its entry instead of adding a second one.
    id: text('The same through reruns.'),
    order: whole('Its number on the picture of the day.'),
    at: text('When it begins: `9:40`, or `+1:40` after the day’s beginning where the hour is not known.'),
    until: text('HH:MM at which it is done; left out where the hour is not known.').optional(),
    who: text('Who does it, `Cook 2`; left out where it is not stated who cooks.').optional(),
    why: text('Why it begins then; left out where nothing holds it there.').optional(),
    cooledBy: text(
      'What chills it, and what it is cooled to on the way to cold, `at 70 °F by 10:20`; left out where neither is known.',
    ).optional(),
    coldBy: text('HH:MM by which it is cold; left out where it is not cooled.').optional(),
    waitsIn: text(
      'Where what it finishes waits hot or cold until it is loaded; left out where no equipment of the kitchen keeps it.',
    ).optional(),
    recipe: text('Id of the recipe.'),
    recipeName: text('Name of the recipe.'),
    batches: text('How many times the recipe is made.'),
    makes: text('What that makes.'),
  })
  .meta({ id: 'task', description: 'A step of a recipe on its day.' });
