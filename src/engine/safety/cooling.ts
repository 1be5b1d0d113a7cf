import Fraction from 'fraction.js';
import type { Recipe } from '../food/recipe.ts';
import { durationText } from '../measure/duration.ts';
import { mixedNumberText } from '../measure/mixed-number.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { heatSteps } from './heat-steps.ts';
import { citation, DEFERRAL, type LimitOf, limitTemperatureText } from './limit.ts';
import { rawFoodIn, saysCookTo } from './raw-food.ts';
import type { SafetyFinding, SafetySetting } from './safety-finding.ts';

/**
 * The deepest that food stands in what it is cooled in. FDA Food Code 3-501.15 says “shallow pans” and no figure;
 * health departments advise two to four inches (N. Koreen, Regulating Shallow Pan Cooling, IFPTI cohort 10).
 */
const DEEPEST_INCHES = new Fraction(4n);

/**
 * Whether a recipe's food is cooked and then cooled, as far as it says: a step has a temperature, and the food is
 * then kept cold or frozen, or heated again later.
 */
export function isCooled(recipe: Recipe): boolean {
  if (recipe.temperatureControl === false || !saysCookTo(recipe)) return false;
  if (recipe.hold === 'cold' || recipe.hold === 'frozen') return true;
  const { cooking, reheating, needsReheating } = heatSteps(recipe, rawFoodIn(recipe).length > 0);
  if (!needsReheating || cooking.length === 0) return false;
  const ahead = cooking.some(({ step }) => step.when.daysBefore > 0);
  // Though no step says how hot it is heated again; one that both cooks and heats again leaves nothing to cool.
  const chilledBetween = reheating !== cooking[0] && recipe.pack.chill !== undefined;
  return ahead || chilledBetween;
}

/** The stages of cooling in words: `70 °F within 2 h and 41 °F within 6 h`. */
export function stagesText({ stages }: LimitOf<'cooling'>, scale: TemperatureScale): string {
  return stages
    .map(({ temperature, within }) => `${limitTemperatureText(temperature, scale)} within ${within / 60} h`)
    .join(' and ');
}

/** A time to cold that is stated and longer than the code gives food from cooking, whatever it is chilled in. */
export function chillFindings(recipe: Recipe, { rules, scale }: SafetySetting): SafetyFinding[] {
  const { chill, temperatureControl } = recipe;
  const { cooling } = rules.limits;
  const longest = Math.max(...cooling.stages.map(({ within }) => within));
  if (chill === undefined || temperatureControl === false || chill <= longest) return [];
  return [
    {
      code: 'chill-too-long',
      at: ['chill'],
      what: `takes ${durationText(chill)} from cooking to cold, but ${citation(rules, 'cooling')} requires ${stagesText(cooling, scale)}`,
      wayOut: `cool it in smaller or shallower containers, over ice, or make less at a time; ${DEFERRAL}`,
    },
  ];
}

/** Food that is cooled in nothing, or in something too deep for it to cool in time. */
export function coolingFindings(
  recipe: Recipe,
  { rules, scale, containers }: SafetySetting,
): SafetyFinding[] {
  if (!isCooled(recipe)) return [];
  const asked = `${citation(rules, 'cooling')} requires ${stagesText(rules.limits.cooling, scale)}, counted from when cooling starts`;
  const { chill } = recipe.pack;
  if (!chill) {
    return [
      {
        code: 'cooling-unsaid',
        at: recipe.reheat ? ['reheat'] : ['hold'],
        what: `is cooked and then kept cold, but “pack” names no container to chill it in; ${asked}`,
        wayOut: `add “chill:” under “pack” with a shallow container; ${DEFERRAL}`,
      },
    ];
  }
  const container = containers.get(chill.container);
  const depth = container?.depthInches?.mul(container.fill);
  if (!container || !depth || depth.lte(DEEPEST_INCHES)) return [];
  return [
    {
      code: 'chill-too-deep',
      at: ['pack', 'chill'],
      what: `is cooled ${depthText(depth)} deep in “${container.id}”, but health departments advise two to four inches at most; ${asked}`,
      wayOut: `chill it in a shallow container, or fill this one less; ${DEFERRAL}`,
    },
  ];
}

/** Inches to a quarter, rounded up. */
function depthText(inches: Fraction): string {
  return `${mixedNumberText(inches.mul(4n).ceil().div(4n))} in`;
}
