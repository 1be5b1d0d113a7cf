import type { Recipe } from '../food/recipe.ts';
import { ingredientsOf } from '../food/walk.ts';
import { durationText } from '../measure/duration.ts';
import { statement } from '../text/statement.ts';
import { type HeatStep, heatSteps } from './heat-steps.ts';
import { type LimitNameOf, rungMet, rungText } from './limit.ts';
import { citation, DEFERS, heldSaid, rungSaid } from './limit-said.ts';
import { rawFoodIn } from './raw-food.ts';
import type { SafetyFinding, SafetySetting } from './safety-finding.ts';

/** The limit by which a recipe's food is heated again: bought ready-to-eat food, and nothing else in it, needs less. */
export function reheatingLimit(recipe: Recipe): LimitNameOf<'cooking'> {
  const all = ingredientsOf(recipe);
  return all.length > 0 && all.every(({ soldAs }) => soldAs === 'ready to eat')
    ? 'reheating ready-to-eat food'
    : 'reheating';
}

/** Food that is cooked ahead and then not heated again as its limit asks, or in more time than the code allows. */
export function reheatingFindings(recipe: Recipe, setting: SafetySetting): SafetyFinding[] {
  if (recipe.temperatureControl === false) return [];
  const { cooking, reheating, needsReheating } = heatSteps(recipe, rawFoodIn(recipe).length > 0);
  if (!needsReheating) return [];
  // One step that also cooks what is raw takes as long as that needs.
  const alone = cooking.some(({ index }) => index === reheating?.index) ? undefined : reheating;
  return [...tooLittle(recipe, reheating, setting), ...tooSlow(alone, setting)];
}

function tooLittle(
  recipe: Recipe,
  reheating: HeatStep | undefined,
  { rules, scale, called }: SafetySetting,
): SafetyFinding[] {
  const name = reheatingLimit(recipe);
  const limit = rules.limits[name];
  if (reheating && rungMet(limit, reheating.cookTo)) return [];
  const [rung] = limit.rungs;
  const asked = { recipe: called, source: citation(rules, name), asked: rungSaid(rung, scale) };
  const way = { write: rungText(rung, scale), defers: DEFERS };
  return [
    {
      code: 'reheat-low',
      at: reheating ? ['steps', reheating.index, 'cook to'] : recipe.reheat ? ['reheat'] : ['hold'],
      what: reheating
        ? statement('safety.reheat-low', { ...asked, temperature: heldSaid(reheating.cookTo) })
        : statement('safety.reheat-missing', asked),
      wayOut: recipe.reheat
        ? statement('safety.reheat.way-stated', way)
        : statement('safety.reheat.way', way),
    },
  ];
}

/** A load is heated for as long as the step looks after itself; the hands that fill and set up are not counted. */
function tooSlow(reheating: HeatStep | undefined, { rules, called }: SafetySetting): SafetyFinding[] {
  const { within } = rules.limits['reheating time'];
  if (!reheating || reheating.step.unattended <= within) return [];
  return [
    {
      code: 'reheat-slow',
      at: ['steps', reheating.index, 'unattended'],
      what: statement('safety.reheat-slow', {
        recipe: called,
        time: durationText(reheating.step.unattended),
        source: citation(rules, 'reheating time'),
        within: durationText(within),
      }),
      wayOut: statement('safety.reheat-slow.way', { defers: DEFERS }),
    },
  ];
}
