import type { When } from '../calendar/when.ts';
import type { Recipe } from '../food/recipe.ts';
import { durationText } from '../measure/duration.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { type Said, statement } from '../text/statement.ts';
import { rawFoodSaid } from './cooking.ts';
import { isCooled } from './cooling.ts';
import { type HeatStep, heatSteps, hottestOf } from './heat-steps.ts';
import { type LimitNameOf, rungMet, type SafetyRules } from './limit.ts';
import { heldSaid, leastSaid, limitTemperatureText, stagesSaid } from './limit-said.ts';
import { rawFoodIn } from './raw-food.ts';
import { reheatingLimit } from './reheating.ts';
import { INITIALS, READING, type SafetyCheck, STARTED, sectionsOf, TIME } from './safety-check.ts';

/** A recipe as it is cooked: each begun batch is measured. */
export interface CookedRecipe {
  readonly recipe: Recipe;
  readonly batches: number;
}

/** More batches than this are not given a blank each. */
const MOST_BLANKS = 6;

/** What to measure of one recipe in the kitchen, in the order of its work: cooking, cooling, heating again. */
export function kitchenChecks(
  cooked: CookedRecipe,
  rules: SafetyRules,
  scale: TemperatureScale,
): SafetyCheck[] {
  if (cooked.recipe.temperatureControl === false && rawFoodIn(cooked.recipe).length === 0) return [];
  return [
    ...cookingChecks(cooked, rules, scale),
    ...coolingChecks(cooked.recipe, rules, scale),
    ...reheatingChecks(cooked, rules, scale),
  ];
}

function cookingChecks(cooked: CookedRecipe, rules: SafetyRules, scale: TemperatureScale): SafetyCheck[] {
  const { recipe } = cooked;
  const raw = rawFoodIn(recipe);
  const { cooking } = heatSteps(recipe, raw.length > 0);
  const check = (name: LimitNameOf<'cooking'>, what: Said): SafetyCheck => {
    const limit = rules.limits[name];
    const step = cooking.find(({ cookTo }) => rungMet(limit, cookTo)) ?? hottestOf(cooking);
    const rung = (step && rungMet(limit, step.cookTo)) ?? limit.rungs[0];
    const least = leastSaid(rung, scale);
    return {
      stage: 'cooking',
      when: whenOf(recipe, step),
      recipe: recipe.id,
      what,
      limit: step ? statement('safety.or-above-own', { least, own: heldSaid(step.cookTo) }) : least,
      section: sectionsOf(rules, name),
      blanks: [...readings(cooked), TIME, INITIALS],
    };
  };
  if (raw.length === 0) {
    const isPlants = recipe.hold === 'hot' && cooking.length > 0;
    return isPlants ? [check('plant food held hot', recipe.name)] : [];
  }
  // What goes raw into another recipe is measured there.
  if (recipe.containsRaw || (cooking.length === 0 && recipe.hold !== 'hot')) return [];
  const checks = [...new Set(raw.map(({ limit }) => limit))].map((limit) => check(limit, ''));
  const unlike = checks.filter((each, index) => checks.findIndex((other) => isLike(each, other)) === index);
  return unlike.map((each) => {
    const foods = raw.filter(({ limit }) => isLike(each, check(limit, '')));
    const what = statement('safety.thickest', { recipe: recipe.name, foods: rawFoodSaid(foods) });
    return { ...each, what };
  });
}

/** Whether two checks of a recipe are one reading: at the same step, by the same figure. */
function isLike(a: SafetyCheck, b: SafetyCheck): boolean {
  const sameLimit = JSON.stringify(a.limit) === JSON.stringify(b.limit);
  return a.when === b.when && sameLimit && a.section === b.section;
}

function coolingChecks(recipe: Recipe, rules: SafetyRules, scale: TemperatureScale): SafetyCheck[] {
  const { cooling, 'cooling from room temperature': fromRoom } = rules.limits;
  const { stages } = cooling;
  const shared = { stage: 'cooling' as const, recipe: recipe.id, what: recipe.name };
  const after = stages.map(({ within }) => statement('safety.blank.after', { time: durationText(within) }));
  const blanks = [STARTED, ...after, INITIALS];
  if (isCooled(recipe)) {
    const { cooking } = heatSteps(recipe, rawFoodIn(recipe).length > 0);
    return [
      {
        ...shared,
        when: whenOf(recipe, cooking.at(-1)),
        limit: stagesSaid(cooling, scale),
        section: sectionsOf(rules, 'cooling'),
        blanks,
      },
    ];
  }
  // Raw food that waits for the oven is watched with the rest of the cold room.
  const waitsRaw = recipe.hold === 'hot' && rawFoodIn(recipe).length > 0;
  if (!recipe.pack.chill || recipe.temperatureControl === false || waitsRaw) return [];
  const first = recipe.steps.reduce<When | undefined>(
    (best, { when }) => (best && best.daysBefore >= when.daysBefore ? best : when),
    undefined,
  );
  return [
    {
      ...shared,
      when: first,
      limit: statement('safety.cool-both', {
        heated: stagesSaid(cooling, scale),
        room: stagesSaid(fromRoom, scale),
      }),
      section: sectionsOf(rules, 'cooling', 'cooling from room temperature'),
      blanks,
    },
  ];
}

function reheatingChecks(cooked: CookedRecipe, rules: SafetyRules, scale: TemperatureScale): SafetyCheck[] {
  const { recipe } = cooked;
  const { reheating, needsReheating } = heatSteps(recipe, rawFoodIn(recipe).length > 0);
  if (!needsReheating) return [];
  const name = reheatingLimit(recipe);
  const least = leastSaid(rules.limits[name].rungs[0], scale);
  const time = durationText(rules.limits['reheating time'].within);
  return [
    {
      stage: 'reheating',
      when: whenOf(recipe, reheating),
      recipe: recipe.id,
      what: recipe.name,
      limit: reheating
        ? statement('safety.or-above-within-own', { least, time, own: heldSaid(reheating.cookTo) })
        : statement('safety.or-above-within', { least, time }),
      section: sectionsOf(rules, name, 'reheating time'),
      blanks: [STARTED, ...readings(cooked), TIME, INITIALS],
    },
  ];
}

/** Food kept in the cold until it is used, one check for each day of work before the event. */
export function coldRoomCheck(daysBefore: number, rules: SafetyRules, scale: TemperatureScale): SafetyCheck {
  const { temperature } = rules.limits['cold holding'];
  return {
    stage: 'cold room',
    when: { daysBefore, atServing: false },
    recipe: '',
    what: statement('safety.cold-room'),
    limit: statement('safety.cold-room.limit', { temperature: limitTemperatureText(temperature, scale) }),
    section: sectionsOf(rules, 'cold holding'),
    blanks: [statement('safety.blank.morning'), statement('safety.blank.evening'), INITIALS],
  };
}

/** What is bought or kept frozen, thawed before it is used; undefined where nothing is. */
export function thawingCheck(
  names: readonly string[],
  rules: SafetyRules,
  scale: TemperatureScale,
): SafetyCheck | undefined {
  if (names.length === 0) return undefined;
  const { thawing, 'thawing under water': water } = rules.limits;
  const cold = limitTemperatureText(thawing.temperature, scale);
  const [stage] = water.stages;
  return {
    stage: 'thawing',
    when: undefined,
    recipe: '',
    what: names.join('; '),
    limit: statement('safety.thawing', {
      cold,
      water: limitTemperatureText(stage.temperature, scale),
      time: durationText(stage.within),
    }),
    section: sectionsOf(rules, 'thawing', 'thawing under water'),
    blanks: [STARTED, statement('safety.blank.how'), READING, INITIALS],
  };
}

function whenOf(recipe: Recipe, step: HeatStep | undefined): When | undefined {
  return (step?.step ?? recipe.steps.at(-1))?.when;
}

function readings({ batches }: CookedRecipe): Said[] {
  if (batches > MOST_BLANKS) return [statement('safety.blank.lowest')];
  if (batches <= 1) return [READING];
  return Array.from({ length: batches }, (_, index) =>
    statement('safety.blank.batch', { n: `${index + 1}` }),
  );
}
