import { isAllergy, parseNeed } from '../engine/food/need.ts';
import { recipeSuits } from '../engine/food/variant.ts';
import { guestNeedText } from '../engine/menu/guest-needs.ts';
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
    const { portions } = dish;
    if (!portions?.apart) against[recipeSuits(dish.recipe, need.value)].push(dish.name);
    else if (portions.needs.some((each) => each.need === text)) against.yes.push(`${dish.name}, made apart`);
  }
  return {
    about: guestNeedText({ text, guests, need: need.value, said: true }),
    what: whatToDo(against.yes.length > 0, isAllergy(need.value)),
    notFor: against.no,
    notKnown: against.unknown,
    suits: against.yes,
  };
}

function whatToDo(fed: boolean, allergy: boolean): string {
  if (!fed) return 'No dish of this menu suits them.';
  return allergy
    ? 'Plate for them first, from clean pans with clean tools, sealed, with name and table.'
    : '';
}
