import type { Recipe } from '../../engine/food/recipe.ts';
import type { TemperatureScale } from '../../engine/measure/temperature.ts';
import { type LeavesRaw, leavesRaw, rawDepth } from '../../engine/safety/leaves-raw.ts';
import type { SafetyRules } from '../../engine/safety/limit.ts';
import { citation, heldSaid, rungSaid } from '../../engine/safety/limit-said.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanRaw } from '../form/food.ts';
import type { SayStatement } from '../words/statement-text.ts';

/** What is told of a recipe's food where it leaves the kitchen raw; undefined where it is ready. */
export function planRaw(
  recipe: Recipe,
  rules: SafetyRules,
  scale: TemperatureScale,
  say: Say,
  inWords: SayStatement,
): PlanRaw | undefined {
  const raw = leavesRaw(recipe, rules);
  return raw && rawText(raw, rules, scale, say, inWords);
}

/**
 * Ready food in its own order, then raw food: the less heat it asks for, the higher it stands. Lists and labels say “below
 * ready-to-eat food” with it, on the road as in the cold room (FDA Food Code 3-302.11(A), from memory: raw animal food
 * separate from and below ready-to-eat food).
 */
export function rawLast<Food>(foods: readonly Food[], rawOf: (food: Food) => LeavesRaw | undefined): Food[] {
  const depth = (food: Food): number => {
    const raw = rawOf(food);
    return raw ? 1 + rawDepth(raw) : 0;
  };
  return [...foods].sort((a, b) => depth(a) - depth(b));
}

/** The same of what is found raw in a part of it. */
export function rawText(
  { foods, next, cookTo }: LeavesRaw,
  rules: SafetyRules,
  scale: TemperatureScale,
  say: Say,
  inWords: SayStatement,
): PlanRaw {
  const defers = say('safety.defers');
  const [strictest] = foods;
  if (next === 'served raw' || !strictest)
    // 3-603.11, the written notice to whoever orders such food: from memory, as in the recipe's field.
    return {
      mark: 'RAW',
      next: say('labels.raw.served'),
      source: say('labels.raw.notice', { edition: rules.edition, defers }),
    };
  const asked = inWords(rungSaid(rules.limits[strictest.limit].rungs[0], scale));
  const temperature = cookTo ? inWords(heldSaid(cookTo)) : asked;
  const source = say('labels.raw.source', {
    rule: inWords(citation(rules, strictest.limit)),
    temperature: asked,
    defers,
  });
  return next === 'cooked there'
    ? { mark: 'RAW', next: say('labels.raw.cook', { temperature }), source }
    : { mark: 'TREAT AS RAW', next: say('labels.raw.not-cooked', { temperature }), source };
}
