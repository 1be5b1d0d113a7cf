import type { EventPlan } from '../engine/plan/event-plan.ts';
import type { PlanDish } from './prep-plan-document.ts';

/**
 * What the crew must read before anything is cooked: guests' needs with the dishes that do not suit them, dishes
 * with an allergen nobody has said, raw or undercooked animal food.
 */
export function planAlerts(plan: EventPlan, dishes: readonly PlanDish[]): string[] {
  const alerts: string[] = [];
  for (const { name, unsaid } of dishes) {
    if (unsaid.length > 0)
      alerts.push(
        `${name}: nobody has said which allergens are in ${unsaid.join(', ')}. Serve it to no allergic guest.`,
      );
  }
  for (const [need, guests] of plan.input.needs) {
    alerts.push(`${guests} × ${need}. ${unsuitableFor(need, dishes)}`);
  }
  for (const { dish } of plan.dishes) {
    if (dish.recipe.containsRaw)
      alerts.push(`${dish.name} holds raw or undercooked animal food; the client must have it in writing.`);
  }
  return alerts;
}

function unsuitableFor(need: string, dishes: readonly PlanDish[]): string {
  const against = dishes.filter((dish) => !suits(dish, need)).map((dish) => dish.name);
  if (against.length === 0) return 'Every dish suits.';
  return `Not for them, or not known: ${against.join(', ')}.`;
}

/** A need is a diet or an allergen; a word that is neither suits nothing until somebody has looked. */
function suits(dish: PlanDish, need: string): boolean {
  const word = need.toLowerCase();
  const claim = dish.diets.find(({ diet }) => diet === word);
  if (claim) return claim.suits === 'yes';
  if (dish.unsaid.length > 0) return false;
  return (
    false === dish.contains.concat(dish.mayContain).some((name) => name.toLowerCase().includes(word)) &&
    isAllergen(word)
  );
}

function isAllergen(word: string): boolean {
  return ALLERGEN_WORDS.some((known) => word.includes(known));
}

const ALLERGEN_WORDS = [
  'milk',
  'egg',
  'fish',
  'crustacean',
  'mollusc',
  'nut',
  'wheat',
  'peanut',
  'soy',
  'sesame',
  'celery',
  'mustard',
  'lupin',
  'sulphite',
  'barley',
  'rye',
  'oat',
  'spelt',
  'almond',
  'cashew',
  'pistachio',
];
