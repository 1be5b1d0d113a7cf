import type { Dish } from '../../engine/menu/package.ts';
import { wordsIn } from '../../words/words-in.ts';

/**
 * The written notices that a menu's dishes ask for: FDA Food Code 3-603.11 wants a disclosure naming the dishes
 * and a reminder of the risk where animal food is served raw or undercooked. Where drinks hold alcohol, or may, it says
 * that local law rules who gets it, where and until when. Local codes differ and rule.
 */
export function notices(dishes: readonly Pick<Dish, 'recipe' | 'drink'>[], locale: string): string[] {
  const say = wordsIn(locale);
  const raw = namesOf(dishes.filter(({ recipe }) => recipe.containsRaw));
  const alcohol = namesOf(dishes.filter(({ drink }) => drink?.alcohol));
  return [
    ...(raw === '' ? [] : [say('offer.raw', { dishes: raw })]),
    ...(alcohol === '' ? [] : [say('offer.alcohol', { drinks: alcohol })]),
  ];
}

function namesOf(dishes: readonly Pick<Dish, 'recipe'>[]): string {
  return [...new Set(dishes.map(({ recipe }) => recipe.name))].join(', ');
}
