import { allergensOf } from '../engine/food/allergens-of.ts';
import { dietsOf } from '../engine/food/diets-of.ts';
import { parseNeed, suitsNeed } from '../engine/food/need.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';

/**
 * What the crew must read before anything is cooked: dishes with an allergen nobody has said, guests' needs with
 * the dishes that are not for them, raw or undercooked animal food.
 */
export function planAlerts(plan: EventPlan, nameOf: (id: string) => string): string[] {
  const unsaid = plan.dishes
    .filter((planned) => planned.unsaid.length > 0)
    .map(
      (planned) =>
        `${planned.dish.name}: nobody has said which allergens are in ${planned.unsaid.map(nameOf).join(', ')}. Serve it to no guest with an allergy.`,
    );
  const needs = [...plan.input.needs]
    .filter(([, guests]) => guests > 0)
    .map(([need, guests]) => `${guests} × ${need}. ${notForThem(plan, need)}`);
  const raw = plan.dishes
    .filter(({ dish }) => dish.recipe.containsRaw)
    .map(
      ({ dish }) =>
        `${dish.name}: raw or undercooked animal food. The client must have been told in writing.`,
    );
  return [...unsaid, ...needs, ...raw];
}

function notForThem(plan: EventPlan, text: string): string {
  const need = parseNeed(text);
  if (!need.ok) return 'Salver does not know this need: ask the client, and go through every dish by hand.';
  const against = { no: [] as string[], unknown: [] as string[], yes: [] as string[] };
  for (const { dish } of plan.dishes) {
    against[suitsNeed(need.value, allergensOf(dish.recipe), dietsOf(dish.recipe))].push(dish.name);
  }
  const said = [
    against.no.length > 0 ? `Not for them: ${against.no.join(', ')}.` : '',
    against.unknown.length > 0 ? `Not known, so not for them: ${against.unknown.join(', ')}.` : '',
    `Suits: ${against.yes.join(', ') || 'no dish of this menu'}.`,
  ];
  return said.filter((text) => text !== '').join(' ');
}
