import type Fraction from 'fraction.js';
import { whenText } from '../../engine/calendar/when.ts';
import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import { allergensKnown } from '../../engine/food/allergens-known.ts';
import { allergensOf } from '../../engine/food/allergens-of.ts';
import type { Recipe, RecipeLine, RecipeStep } from '../../engine/food/recipe.ts';
import { stepHeat } from '../../engine/food/step-heat.ts';
import type { Container } from '../../engine/kitchen/container.ts';
import { durationText, minutes } from '../../engine/measure/duration.ts';
import { heldTemperatureText, temperatureText } from '../../engine/measure/temperature.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import { packedIn } from '../../engine/plan/containers/packed-in.ts';
import { handsOnMinutes } from '../../engine/plan/days/hands-on.ts';
import type { EventPlan, PlannedLine, PlannedRecipe } from '../../engine/plan/event-plan.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanRecipe, PlanStep } from '../form/food.ts';
import { NOT_ALL_KNOWN } from '../words/allergen-as-read.ts';
import { amountText } from '../words/amount-text.ts';
import { batchesText } from '../words/batches-text.ts';
import { skillText } from '../words/skill-text.ts';
import type { SayStatement } from '../words/statement-text.ts';
import { stepWords } from '../words/step-words.ts';
import { allergenNames } from './dish.ts';

/** What a recipe's card needs to know of the kitchen. */
export interface CardSetting {
  readonly system: MeasureSystem;
  readonly laws: readonly AllergenLaw[];
  readonly stations: ReadonlyMap<string, string>;
  /** Key of a recipe's notes among the rendered bodies; empty where it has none. */
  readonly notesOf: (recipe: string) => string;
  readonly nameOf: (id: string) => string;
  readonly containers: ReadonlyMap<string, Container>;
  readonly inWords: SayStatement;
  readonly say: Say;
}

/** A planned recipe as its card: amounts for these dishes, steps, how it keeps, what it is packed in. */
export function planRecipe(
  planned: PlannedRecipe,
  { dishes, crewMeals, beside }: Pick<EventPlan, 'dishes' | 'crewMeals' | 'beside'>,
  setting: CardSetting,
): PlanRecipe {
  const { recipe } = planned;
  return {
    id: recipe.id,
    name: recipe.name,
    usedBy: planned.usedBy.map(({ by, need }) => ({
      by,
      need: amountText(need, setting.system, 'at-least'),
    })),
    need: amountText(planned.need, setting.system, 'at-least'),
    batches: batchesText(planned.batches, setting.system),
    makes: amountText(planned.makes, setting.system, 'line'),
    hold: recipe.hold,
    keeps: recipe.keepsDays === undefined ? '' : setting.say('plan.keeps-days', { n: recipe.keepsDays }),
    finish: stepWords(recipe.finish ?? '', planned.batches, setting.system),
    packed: packedIn(recipe, planned.makes, [...dishes, ...crewMeals], setting.containers, beside).map(
      ({ stage, count, containerName }) => ({
        stage,
        what: setting.say('plan.counted', { count, what: setting.inWords(containerName) }),
      }),
    ),
    notes: setting.notesOf(recipe.id),
    lines: planned.lines.map((line) => cardLine(line, setting)),
    steps: recipe.steps.map((step, index) =>
      planStep(step, index + 1, planned.batches, setting, handsOnMinutes(step, planned.batches)),
    ),
    contains: recipeAllergens(recipe, setting),
    why: planned.why.map(setting.inWords),
  };
}

/** A step with its words for the batches cooked and its times for so many hands-on minutes. */
export function planStep(
  step: RecipeStep,
  number: number,
  batches: Fraction,
  { stations, system }: Pick<CardSetting, 'stations' | 'system'>,
  handsOn: number,
): PlanStep {
  const heat = stepHeat(step.text);
  return {
    number,
    text: stepWords(step.text, batches, system),
    when: whenText(step.when),
    station: stations.get(step.station) ?? step.station,
    handsOn: durationText(minutes(handsOn)),
    handsOnMinutes: handsOn,
    unattended: step.unattended === 0 ? '' : durationText(step.unattended),
    cookTo: step.cookTo ? heldTemperatureText(step.cookTo) : '',
    ...(heat && { heat: temperatureText(heat) }),
    ...(step.skill !== undefined && { skill: skillText(step.skill) }),
  };
}

function cardLine({ line, amount }: PlannedLine, setting: CardSetting): PlanRecipe['lines'][number] {
  const { item } = line;
  const { name: called } = item.kind === 'recipe' ? item.recipe : item.ingredient;
  const shared = {
    preparation: preparationOf(line, called),
    amount: amountText(amount, setting.system, 'line'),
    note: noteOf(line, setting.say),
  };
  if (item.kind === 'recipe') {
    const { id, name } = item.recipe;
    return { kind: 'recipe', id, name, ...shared, allergens: recipeAllergens(item.recipe, setting) };
  }
  const { id, name, contains } = item.ingredient;
  const sources = (contains ?? []).map((allergen) => ({ allergen, paths: [] }));
  const allergens = [
    ...allergenNames(sources, setting.laws),
    ...(allergensKnown(item.ingredient) ? [] : [NOT_ALL_KNOWN]),
  ];
  return { kind: 'ingredient', id, name, ...shared, allergens };
}

/** The cook's note, and what the item takes the place of. */
function noteOf({ note, insteadOf = [] }: RecipeLine, say: Say): string {
  const replaced = insteadOf.map((item) => say('dishes.differs.note', { item }));
  return [...(note === undefined ? [] : [note]), ...replaced].join('; ');
}

/** How a food is made ready, and what its amount is of where that is not the usual. */
function preparationOf({ preparation, asPurchased, trimmed }: RecipeLine, name: string): string {
  const made = preparationBeyond(name, preparation ?? '');
  return [made, asPurchased ? 'as purchased' : '', trimmed ? 'trimmed' : '']
    .filter((word, at, all) => word !== '' && all.indexOf(word) === at)
    .join(', ');
}

/** How a food is made ready, empty where its name says it already: `Lamb shoulder, boneless`. */
function preparationBeyond(name: string, preparation: string): string {
  return name.split(', ').includes(preparation) ? '' : preparation;
}

function recipeAllergens(recipe: Recipe, setting: CardSetting): string[] {
  const { contains, unsaid } = allergensOf(recipe);
  return [...allergenNames(contains, setting.laws), ...(unsaid.length === 0 ? [] : [NOT_ALL_KNOWN])];
}
