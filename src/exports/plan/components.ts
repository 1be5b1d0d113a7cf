import { addDays, type Day } from '../../engine/calendar/day.ts';
import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import { allergensKnown } from '../../engine/food/allergens-known.ts';
import { allergensOf } from '../../engine/food/allergens-of.ts';
import { ingredientsByWeight } from '../../engine/food/label-order.ts';
import { isAtPlace, type Recipe } from '../../engine/food/recipe.ts';
import { scaleOf } from '../../engine/measure/temperature.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import { type ThrowAway, thrownAway } from '../../engine/plan/clock/throw-away.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import type { Component } from '../../engine/plan/load/components.ts';
import { dateMark } from '../../engine/safety/date-mark.ts';
import { type LeavesRaw, leavesRaw } from '../../engine/safety/leaves-raw.ts';
import type { SafetyRules } from '../../engine/safety/limit.ts';
import type { Say } from '../../words/words-in.ts';
import type { PackOutLine, PlanLabel } from '../form/sheets.ts';
import { NOT_ALL_KNOWN } from '../words/allergen-as-read.ts';
import { amountText } from '../words/amount-text.ts';
import { clockOf } from '../words/clock-text.ts';
import { dateText } from '../words/date-text.ts';
import type { SayStatement } from '../words/statement-text.ts';
import { allergenNames } from './dish.ts';
import { finishWords } from './finish.ts';
import { rawText } from './raw.ts';

/** What lines and labels of components are worded with. */
export interface LabelSetting {
  readonly plan: EventPlan;
  readonly system: MeasureSystem;
  readonly say: Say;
  readonly inWords: SayStatement;
  readonly throwAways: readonly ThrowAway[];
}

/** By when a recipe's food has to be thrown away, as lines and labels have it; nothing for any other. */
export function throwAwayBy(
  throwAways: readonly ThrowAway[],
  recipe: Recipe,
): Pick<PlanLabel, 'throwAwayBy'> {
  const food = thrownAway(throwAways, recipe);
  return food ? { throwAwayBy: clockOf(food.by) } : {};
}

/** What of a component is raw when it leaves: by its own recipe, or by the line that takes it. */
export function componentRaw({ line, raw }: Component, rules: SafetyRules): LeavesRaw | undefined {
  return line.item.kind === 'recipe' ? leavesRaw(line.item.recipe, rules) : raw;
}

/** The line of the pack-out list for a food that a step at the place takes. */
export function componentLine(component: Component, setting: LabelSetting): PackOutLine {
  const { amount, packed, hold, recipe, rest } = component;
  const { plan, system, say, inWords, throwAways } = setting;
  const { item } = component.line;
  const raw = componentRaw(component, plan.foodSafety);
  return {
    group: 'food',
    item: nameOf(component),
    container: packed ? inWords(packed.containerName) : say('labels.container.own'),
    count: packed?.count ?? 1,
    unit: say('lists.each'),
    hold,
    note: say('lists.component', {
      state: rest ? 'part' : 'whole',
      amount: amountText(amount, system, 'line').printed,
      dish: recipe.name,
    }),
    ...(item.kind === 'recipe' && throwAwayBy(throwAways, item.recipe)),
    ...(raw && { raw: rawText(raw, plan.foodSafety, scaleOf(system), say, inWords) }),
  };
}

/**
 * A label for each container of a component. Made on is the day of its own recipe, or of the last step in the kitchen that
 * takes it; a food as bought has neither that nor a use-by that its package would not tell better.
 */
export function componentLabels(
  component: Component,
  laws: readonly AllergenLaw[],
  locale: string,
  setting: LabelSetting,
): PlanLabel[] {
  const { recipe, packed, amount, rest, line, hold } = component;
  const { plan, system, say, inWords, throwAways } = setting;
  const { input, foodSafety } = plan;
  const raw = componentRaw(component, foodSafety);
  const count = packed?.count ?? 1;
  return Array.from({ length: count }, (_, index): PlanLabel => {
    const holds = packed ? (index + 1 === count ? packed.last : packed.each) : amount;
    const { printed } = amountText(holds, system, 'line');
    return {
      dish: nameOf(component),
      container: packed ? inWords(packed.containerName) : say('labels.container.own'),
      of: say('labels.of', { n: String(index + 1), all: String(count) }),
      job: `${input.occasion}, ${input.client}`,
      date: dateText(input.date, locale),
      amount: rest && !packed ? say('labels.rest-of', { amount: printed }) : printed,
      goesInto: recipe.name,
      guests: '',
      ...contentsOf(component, laws),
      ...datesOf(component, input.date, foodSafety.limits['date mark'].days, locale),
      hold,
      ...(line.item.kind === 'recipe' && throwAwayBy(throwAways, line.item.recipe)),
      finish: line.item.kind === 'recipe' ? finishWords(plan, line.item.recipe, system) : '',
      ...(raw && { raw: rawText(raw, foodSafety, scaleOf(system), say, inWords) }),
    };
  });
}

function nameOf({ line: { item } }: Component): string {
  return item.kind === 'recipe' ? item.recipe.name : item.ingredient.name;
}

/** What is in it and what its label warns of, in capitals; of a food of which not all is stated that too. */
function contentsOf(
  { line: { item } }: Component,
  laws: readonly AllergenLaw[],
): Pick<PlanLabel, 'ingredients' | 'contains' | 'mayContain'> {
  if (item.kind === 'recipe') return recipeContents(item.recipe, laws);
  const { ingredient } = item;
  const asSource = (allergen: (typeof ingredient.mayContain)[number]) => ({ allergen, paths: [] });
  return {
    ingredients: withParts(ingredient),
    contains: [
      ...inCapitals((ingredient.contains ?? []).map(asSource), laws),
      ...(allergensKnown(ingredient) ? [] : [NOT_ALL_KNOWN]),
    ],
    mayContain: inCapitals(ingredient.mayContain.map(asSource), laws),
  };
}

/** The same of a recipe as it is made for the event, with all of its parts. */
export function recipeContents(
  recipe: Recipe,
  laws: readonly AllergenLaw[],
): Pick<PlanLabel, 'ingredients' | 'contains' | 'mayContain'> {
  const { contains, mayContain, unsaid } = allergensOf(recipe);
  const foods = ingredientsByWeight(recipe).map(({ ingredient }) => withParts(ingredient));
  return {
    ingredients: foods.join(', '),
    contains: [...inCapitals(contains, laws), ...(unsaid.length === 0 ? [] : [NOT_ALL_KNOWN])],
    mayContain: inCapitals(mayContain, laws),
  };
}

function inCapitals(found: Parameters<typeof allergenNames>[0], laws: readonly AllergenLaw[]): string[] {
  return allergenNames(found, laws).map((name) => name.toUpperCase());
}

function withParts({ name, parts }: { readonly name: string; readonly parts: string | undefined }): string {
  return parts === undefined ? name : `${name} (${parts})`;
}

function datesOf(
  { line, recipe, state }: Component,
  eventDate: Day,
  mostDaysCold: number,
  locale: string,
): Pick<PlanLabel, 'madeOn' | 'useBy' | 'useByLatest'> {
  if (line.item.kind === 'recipe') return recipeDates(line.item.recipe, eventDate, mostDaysCold, locale);
  const begun = (line.steps ?? [0])
    .map((position) => recipe.steps[position])
    .filter((step) => step !== undefined && !isAtPlace(step));
  const last = begun.at(-1);
  return {
    madeOn: state === 'half-made' && last ? dateText(addDays(eventDate, -last.when.daysBefore), locale) : '',
    useBy: '',
  };
}

/** The day a recipe is made and its use-by, in words. */
export function recipeDates(
  recipe: Recipe,
  eventDate: Day,
  mostDaysCold: number,
  locale: string,
): Pick<PlanLabel, 'madeOn' | 'useBy' | 'useByLatest'> {
  const { madeOn, useBy, atTheLatest } = dateMark(recipe, eventDate, mostDaysCold);
  return {
    madeOn: dateText(madeOn, locale),
    useBy: useBy === undefined ? '' : dateText(useBy, locale),
    ...(useBy === undefined && atTheLatest !== undefined && { useByLatest: dateText(atTheLatest, locale) }),
  };
}
