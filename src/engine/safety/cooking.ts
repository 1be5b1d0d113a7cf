import { isCompound } from '../food/is-compound.ts';
import type { Recipe } from '../food/recipe.ts';
import { heldTemperatureText, type TemperatureScale } from '../measure/temperature.ts';
import { heatSteps, hottestOf } from './heat-steps.ts';
import { citation, DEFERRAL, type LimitNameOf, rungMet, rungText, type SafetyRules } from './limit.ts';
import { type RawFood, rawFoodIn } from './raw-food.ts';
import type { SafetyFinding, SafetySetting } from './safety-finding.ts';

/** Raw animal food by name, with what brings it in: `Ground pork`, `Eggs, large (in Shortcrust pastry)`. */
export function rawFoodNames(foods: readonly RawFood[]): string {
  const names = foods.map(({ ingredient, from }) =>
    from === undefined ? ingredient.name : `${ingredient.name} (in ${from.name})`,
  );
  return [...new Set(names)].join(' and ');
}

/** Raw animal food that is cooked to less than its limit, or of which no step says a temperature. */
export function cookingFindings(recipe: Recipe, { rules, scale, served }: SafetySetting): SafetyFinding[] {
  const raw = rawFoodIn(recipe);
  if (recipe.containsRaw) return [];
  const { cooking } = heatSteps(recipe, true);
  const undone = raw.find(({ limit }) => !cooking.some(({ cookTo }) => rungMet(rules.limits[limit], cookTo)));
  if (!undone || (cooking.length === 0 && !served)) return [];
  const { limit } = undone;
  const of = raw.filter((each) => each.limit === limit);
  const foods = rawFoodNames(of);
  const asked = rungText(rules.limits[limit].rungs[0], scale);
  const source = citation(rules, limit);
  const hottest = hottestOf(cooking);
  const others = rules.limits[limit].rungs.length > 1 ? ' or one of the other ways' : '';
  if (!hottest) {
    return [
      {
        code: 'cook-to-missing',
        at: ['steps'],
        what: `contains ${foods}, but no step states a cooking temperature; ${source} requires ${asked}`,
        wayOut: wayOut(`write “cook to: ${asked}” in the step that cooks it`, 'served raw', of),
      },
    ];
  }
  return [
    {
      code: 'cook-to-low',
      at: ['steps', hottest.index, 'cook to'],
      what: `cooks ${foods} to ${heldTemperatureText(hottest.cookTo)}, but ${source} requires ${waysToCook(rules, limit, scale)}`,
      wayOut: wayOut(`write “cook to: ${asked}”${others}`, 'served undercooked', of),
    },
  ];
}

/**
 * What to write about raw animal food: to cook it, to say that it is meant to be raw, or to say that it was bought ready
 * to eat. The last comes first where a food reads like one that is bought made, so that no kitchen cooks its mayonnaise
 * or calls it raw.
 */
function wayOut(cook: string, rawWord: string, foods: readonly RawFood[]): string {
  const ids = [...new Set(foods.map(({ ingredient }) => ingredient.id))];
  const made = [
    ...new Set(foods.filter(({ ingredient }) => isCompound(ingredient)).map((each) => each.ingredient.id)),
  ];
  const raw = `“contains raw: yes” if it is ${rawWord}`;
  const bought = (of: readonly string[]) => `“sold as: ready to eat” for ${of.join(' and ')} in ingredients`;
  return made.length > 0
    ? `write ${bought(made)} if its label says it needs no cooking; otherwise ${cook}, or ${raw}; ${DEFERRAL}`
    : `${cook}, ${raw}, or ${bought(ids)} if it is bought cured, smoked or pasteurized; ${DEFERRAL}`;
}

/** The ways that are enough, a few of many: `155 °F for 17 s, 145 °F for 3 min or 150 °F for 1 min`. */
function waysToCook(rules: SafetyRules, limit: LimitNameOf<'cooking'>, scale: TemperatureScale): string {
  const { rungs } = rules.limits[limit];
  const few = rungs.slice(0, 4).map((rung) => rungText(rung, scale));
  const last = few.pop() as string;
  const listed = few.length === 0 ? last : `${few.join(', ')} or ${last}`;
  return rungs.length > 4 ? `${listed}, or another line of its table` : listed;
}
