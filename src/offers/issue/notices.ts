import type { Dish } from '../../engine/menu/package.ts';
import { wordsIn } from '../../words/words-in.ts';

/**
 * The written notices that a menu's dishes ask for: FDA Food Code 3-603.11 wants a disclosure naming the dishes
 * and a reminder of the risk where animal food is served raw or undercooked. Local codes differ and rule.
 */
export function notices(dishes: readonly Pick<Dish, 'recipe'>[], locale: string): string[] {
  const raw = [...new Set(dishes.filter((dish) => dish.recipe.containsRaw).map((dish) => dish.recipe.name))];
  return raw.length === 0 ? [] : [wordsIn(locale)('offer.raw', { dishes: raw.join(', ') })];
}
