import { isCompound } from '../food/is-compound.ts';
import type { Recipe } from '../food/recipe.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { type Several, type Statement, several, statement } from '../text/statement.ts';
import { heatSteps, hottestOf } from './heat-steps.ts';
import { type LimitNameOf, rungMet, rungText, type SafetyRules } from './limit.ts';
import { citation, DEFERS, heldSaid, rungSaid } from './limit-said.ts';
import { type RawFood, rawFoodIn } from './raw-food.ts';
import type { SafetyFinding, SafetySetting } from './safety-finding.ts';

/** Raw animal food by name, with what brings it in: `Ground pork and Eggs, large (in Shortcrust pastry)`. */
export function rawFoodSaid(foods: readonly RawFood[]): Several {
  const named = foods.map(({ ingredient: { name }, from }) =>
    from === undefined ? name : statement('safety.food-in', { food: name, recipe: from.name }),
  );
  const byName = new Map(named.map((each) => [JSON.stringify(each), each]));
  return several('and', [...byName.values()]);
}

/** Raw animal food that is cooked to less than its limit, or of which no step says a temperature. */
export function cookingFindings(
  recipe: Recipe,
  { rules, scale, served, called }: SafetySetting,
): SafetyFinding[] {
  const raw = rawFoodIn(recipe);
  if (recipe.containsRaw) return [];
  const { cooking } = heatSteps(recipe, true);
  const undone = raw.find(({ limit }) => !cooking.some(({ cookTo }) => rungMet(rules.limits[limit], cookTo)));
  if (!undone || (cooking.length === 0 && !served)) return [];
  const { limit } = undone;
  const of = raw.filter((each) => each.limit === limit);
  const { rungs } = rules.limits[limit];
  const write = rungText(rungs[0], scale);
  const about = { recipe: called, foods: rawFoodSaid(of), source: citation(rules, limit) };
  const hottest = hottestOf(cooking);
  if (!hottest) {
    return [
      {
        code: 'cook-to-missing',
        at: ['steps'],
        what: statement('safety.cook-to-missing', { ...about, asked: rungSaid(rungs[0], scale) }),
        wayOut: wayOut(of, write, 'safety.cook-to-missing.way', 'safety.cook-to-missing.way-made'),
      },
    ];
  }
  return [
    {
      code: 'cook-to-low',
      at: ['steps', hottest.index, 'cook to'],
      what: statement('safety.cook-to-low', {
        ...about,
        temperature: heldSaid(hottest.cookTo),
        ways: waysToCook(rules, limit, scale),
      }),
      wayOut:
        rungs.length > 1
          ? wayOut(of, write, 'safety.cook-to-low.way-several', 'safety.cook-to-low.way-made-several')
          : wayOut(of, write, 'safety.cook-to-low.way', 'safety.cook-to-low.way-made'),
    },
  ];
}

/**
 * What to write about raw animal food: to cook it, to say that it is meant to be raw, or to say that it was bought ready
 * to eat. The last comes first (`madeKey`) where a food reads like one that is bought made, so that no kitchen cooks its
 * mayonnaise or calls it raw.
 */
function wayOut(foods: readonly RawFood[], write: string, key: string, madeKey: string): Statement {
  const idsOf = (of: readonly RawFood[]) => [...new Set(of.map(({ ingredient }) => ingredient.id))];
  const made = idsOf(foods.filter(({ ingredient }) => isCompound(ingredient)));
  const ids = several('and', made.length > 0 ? made : idsOf(foods));
  return statement(made.length > 0 ? madeKey : key, { write, ids, defers: DEFERS });
}

/** The ways that are enough, a few of many: `155 °F for 17 s, 145 °F for 3 min, or 150 °F for 1 min`. */
function waysToCook(
  rules: SafetyRules,
  limit: LimitNameOf<'cooking'>,
  scale: TemperatureScale,
): Several | Statement {
  const { rungs } = rules.limits[limit];
  const few = rungs.slice(0, 4).map((rung) => rungSaid(rung, scale));
  return rungs.length > 4
    ? statement('safety.ways-more', { ways: several('comma', few) })
    : several('or', few);
}
