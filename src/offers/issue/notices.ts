import type { Dish } from '../../engine/menu/package.ts';

/**
 * The written notices that a menu's dishes ask for: FDA Food Code 3-603.11 wants a disclosure naming the dishes
 * and a reminder of the risk where animal food is served raw or undercooked. Local codes differ and rule.
 */
export function notices(dishes: readonly Pick<Dish, 'recipe'>[]): string[] {
  const raw = [...new Set(dishes.filter((dish) => dish.recipe.containsRaw).map((dish) => dish.recipe.name))];
  if (raw.length === 0) return [];
  return [
    `${raw.join(', ')}: served raw or undercooked, or may contain raw or undercooked ingredients. ` +
      'Consuming raw or undercooked meats, poultry, seafood, shellfish or eggs may increase your risk of ' +
      'foodborne illness, especially if you have certain medical conditions.',
  ];
}
