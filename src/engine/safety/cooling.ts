import Fraction from 'fraction.js';
import type { Recipe } from '../food/recipe.ts';
import { durationText } from '../measure/duration.ts';
import { mixedNumberText } from '../measure/mixed-number.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { statement } from '../text/statement.ts';
import { heatSteps } from './heat-steps.ts';
import { citation, DEFERS, stagesSaid } from './limit-said.ts';
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

/** A time to cold that is stated and longer than the code gives food from cooking, whatever it is chilled in. */
export function chillFindings(recipe: Recipe, { rules, scale, called }: SafetySetting): SafetyFinding[] {
  const { chill, temperatureControl } = recipe;
  const { cooling } = rules.limits;
  const longest = Math.max(...cooling.stages.map(({ within }) => within));
  if (chill === undefined || temperatureControl === false || chill <= longest) return [];
  return [
    {
      code: 'chill-too-long',
      at: ['chill'],
      what: statement('safety.chill-too-long', {
        recipe: called,
        time: durationText(chill),
        source: citation(rules, 'cooling'),
        stages: stagesSaid(cooling, scale),
      }),
      wayOut: statement('safety.chill-too-long.way', { defers: DEFERS }),
    },
  ];
}

/** Food that is cooled in nothing, or in something too deep for it to cool in time. */
export function coolingFindings(
  recipe: Recipe,
  { rules, scale, containers, called }: SafetySetting,
): SafetyFinding[] {
  if (!isCooled(recipe)) return [];
  const asked = {
    recipe: called,
    source: citation(rules, 'cooling'),
    stages: stagesSaid(rules.limits.cooling, scale),
  };
  const { chill } = recipe.pack;
  if (!chill) {
    return [
      {
        code: 'cooling-unsaid',
        at: recipe.reheat ? ['reheat'] : ['hold'],
        what: statement('safety.cooling-unsaid', asked),
        wayOut: statement('safety.cooling-unsaid.way', { defers: DEFERS }),
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
      what: statement('safety.chill-too-deep', {
        ...asked,
        depth: depthText(depth, scale),
        scale,
        container: container.id,
      }),
      wayOut: statement('safety.chill-too-deep.way', { defers: DEFERS }),
    },
  ];
}

/** Inches to a quarter, or where thermometers show Celsius centimeters to a half; rounded up. */
function depthText(inches: Fraction, scale: TemperatureScale): string {
  if (scale === 'C') return `${inches.mul('2.54').mul(2n).ceil().div(2n).toString(1)} cm`;
  return `${mixedNumberText(inches.mul(4n).ceil().div(4n))} in`;
}
