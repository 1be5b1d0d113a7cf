import { z } from 'zod';
import type { Fixed } from '../../schema/fixed.ts';
import { amountSchema, text, texts, whole } from './text.ts';

const atSchema = z
  .object({
    amount: amountSchema,
    helpings: whole('Whole helpings in it.'),
    chance: text('Chance that more is wanted, a decimal from 0 to 1.'),
    odds: text('The same in words: `about 1 in 40 events like this`.'),
  })
  .meta({ id: 'oddsAt', description: 'An amount and how likely it runs short.' });

/** An amount and how likely it runs short. */
export type PlanOddsAt = Fixed<z.infer<typeof atSchema>>;

const dishOddsSchema = z
  .object({
    course: text('The course it belongs to.'),
    name: text('Its name on the menu.'),
    recipe: text('Id of its recipe.'),
    helping: amountSchema.describe('One helping.'),
    expected: text('Expected helpings, to one decimal.'),
    chosen: text(
      'The chosen risk by which the amount is found; empty where it follows guests, amount and overage.',
    ),
    firstChoice: z
      .boolean()
      .describe('Whether the odds are those of somebody missing a first choice and taking another dish.'),
    planned: atSchema.describe('As it is planned.'),
    cooked: atSchema.nullable().describe('As its batches make it; null where that is no helping more.'),
    missing: text('Expected helpings short of what is wanted, to one decimal.'),
    left: text('Expected helpings left over, to one decimal.'),
    more: z
      .array(
        z.object({
          more: text('How much more: `1 helping`, a container, a batch.'),
          at: atSchema.describe('What is there with it.'),
          cost: text('What that food costs at pack prices; empty where it is not all priced.'),
        }),
      )
      .describe('What cooking a little more would do.'),
    least: z
      .array(
        z.object({
          risk: text('The risk: `short at most 1 in 50`.'),
          at: atSchema.describe('The least that keeps it.'),
        }),
      )
      .describe('The least amounts that keep some usual risks; none for a first choice.'),
    advice: z
      .object({
        at: atSchema.describe('The amount.'),
        missing: text('What a missing helping costs.'),
        leftOver: text('What one left over costs.'),
      })
      .nullable()
      .describe('Advice: what would balance the two costs; null where they are not stated.'),
    why: texts('How the odds come about, a step of the calculation each.'),
  })
  .meta({ id: 'dishOdds', description: 'How likely a dish runs short.' });

/** How likely a dish runs short. */
export type PlanDishOdds = Fixed<z.infer<typeof dishOddsSchema>>;

const courseOddsSchema = z
  .object({
    course: text('Its name.'),
    guests: whole('Guests who take one helping of one of its dishes.'),
    risk: text('The chosen risk of the course as a whole.'),
    helpings: whole('Helpings of all its dishes together.'),
    chance: text('Chance that a guest finds none of them, a decimal from 0 to 1.'),
    odds: text('The same in words.'),
    apart: whole('Helpings if each dish were carried separately at the same risk.'),
    byGuest: whole('Helpings by the per-guest amounts.'),
    why: texts('How the helpings come about, a step of the calculation each.'),
  })
  .meta({ id: 'courseOdds', description: 'A course of which each guest takes one dish, as a whole.' });

/** A course of which each guest takes one helping of one dish, as a whole. */
export type PlanCourseOdds = Fixed<z.infer<typeof courseOddsSchema>>;

export const oddsSchema = z
  .object({
    limits: text('What the odds rest on and where they end; belongs beside every figure of them.'),
    dishes: z.array(dishOddsSchema).describe('Dishes with an appetite entered.'),
    courses: z.array(courseOddsSchema).describe('Courses of which each guest takes one dish.'),
  })
  .meta({ id: 'odds', description: 'How likely dishes run short.' });

/** How likely dishes run short, as the prep plan says it. */
export type PlanOdds = Fixed<z.infer<typeof oddsSchema>>;
