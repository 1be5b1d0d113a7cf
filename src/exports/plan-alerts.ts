import { allergensOf } from '../engine/food/allergens-of.ts';
import { dietsOf } from '../engine/food/diets-of.ts';
import { parseNeed, suitsNeed } from '../engine/food/need.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import type { PlanAlert } from './prep-plan-document.ts';

const noDishes = { notFor: [], notKnown: [], suits: [] };

/**
 * What the crew must read before anything is cooked: dishes with an allergen nobody has said, guests' needs with
 * the dishes that are not for them, raw or undercooked animal food.
 */
export function planAlerts(plan: EventPlan, nameOf: (id: string) => string): PlanAlert[] {
  const unsaid = plan.dishes
    .filter((planned) => planned.unsaid.length > 0)
    .map((planned) => ({
      about: planned.dish.name,
      what: `Nobody has said which allergens are in ${planned.unsaid.map(nameOf).join(', ')}. Serve it to no guest with an allergy.`,
      ...noDishes,
    }));
  const needs = [...plan.input.needs]
    .filter(([, guests]) => guests > 0)
    .map(([need, guests]) => needAlert(plan, need, guests));
  const raw = plan.dishes
    .filter(({ dish }) => dish.recipe.containsRaw)
    .map(({ dish }) => ({
      about: dish.name,
      what: 'Raw or undercooked animal food. The client must have been told in writing.',
      ...noDishes,
    }));
  return [...unsaid, ...needs, ...raw];
}

/** An alert in one line, for a terminal. */
export function alertText({ about, what, notFor, notKnown, suits }: PlanAlert): string {
  const said = [
    what,
    notFor.length > 0 ? `Not for them: ${notFor.join(', ')}.` : '',
    notKnown.length > 0 ? `Not known, so not for them: ${notKnown.join(', ')}.` : '',
    suits.length > 0 ? `Suits: ${suits.join(', ')}.` : '',
  ];
  return `${about}. ${said.filter((text) => text !== '').join(' ')}`;
}

function needAlert(plan: EventPlan, text: string, guests: number): PlanAlert {
  const need = parseNeed(text);
  if (!need.ok) {
    const what = 'Salver does not know this need: ask the client, and go through every dish by hand.';
    return { about: `${guests} × ${text}`, what, ...noDishes };
  }
  const against = { no: [] as string[], unknown: [] as string[], yes: [] as string[] };
  for (const { dish } of plan.dishes) {
    against[suitsNeed(need.value, allergensOf(dish.recipe), dietsOf(dish.recipe))].push(dish.name);
  }
  return {
    about: need.value.kind === 'diet' ? `${guests} × ${text}` : `${guests} × allergy: ${text}`,
    what: against.yes.length === 0 ? 'No dish of this menu suits them.' : '',
    notFor: against.no,
    notKnown: against.unknown,
    suits: against.yes,
  };
}
