import Fraction from 'fraction.js';
import type { Recipe } from '../food/recipe.ts';
import { durationText } from '../measure/duration.ts';
import { mixedNumberText } from '../measure/mixed-number.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { statement } from '../text/statement.ts';
import { heatSteps } from './heat-steps.ts';
import type { SafetyRules, Stage } from './limit.ts';
import { citation, DEFERS, limitTemperatureText, stagesSaid } from './limit-said.ts';
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

/**
 * A time to cold, or to the code's first temperature, that is stated and longer than the code gives food from cooking,
 * whatever it is chilled in.
 */
export function chillFindings(recipe: Recipe, { rules, scale, called }: SafetySetting): SafetyFinding[] {
  const { chill, chillFirst, temperatureControl } = recipe;
  const { cooling } = rules.limits;
  if (chill === undefined || temperatureControl === false) return [];
  const { first, last } = endsOfCooling(rules);
  const shared = {
    recipe: called,
    source: citation(rules, 'cooling'),
    stages: stagesSaid(cooling, scale),
  };
  const wayOut = statement('safety.chill-too-long.way', { defers: DEFERS });
  return [
    ...(chill > last.within
      ? [
          {
            code: 'chill-too-long' as const,
            at: ['chill', 'in all'],
            what: statement('safety.chill-too-long', { ...shared, time: durationText(chill) }),
            wayOut,
          },
        ]
      : []),
    ...(first && chillFirst !== undefined && chillFirst > first.within
      ? [
          {
            code: 'chill-first-too-long' as const,
            at: ['chill', 'first stage'],
            what: statement('safety.chill-first-too-long', {
              ...shared,
              time: durationText(chillFirst),
              temperature: limitTemperatureText(first.temperature, scale),
            }),
            wayOut,
          },
        ]
      : []),
  ];
}

/**
 * The temperatures that food passes on its way to cold, by the code's time for each: the first, where there is one before
 * cold, and the last (FDA Food Code 3-501.14(A): 70 °F within 2 h, 41 °F within 6 h).
 */
export function endsOfCooling({ limits }: SafetyRules): {
  readonly first: Stage | undefined;
  readonly last: Stage;
} {
  const inOrder = [...limits.cooling.stages].sort((a, b) => a.within - b.within) as [Stage, ...Stage[]];
  return { first: inOrder.length > 1 ? inOrder[0] : undefined, last: inOrder.at(-1) ?? inOrder[0] };
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
