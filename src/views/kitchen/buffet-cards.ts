import type { PlanDish } from '../../exports/form/food.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { marksOf } from '../diet-marks.ts';

/** A card that stands beside a dish on the line, for the guests who help themselves. */
export interface BuffetCard {
  readonly dish: string;
  /** How portions made separately differ from the dish: `without butter`; empty for a dish as it is. */
  readonly changes: string;
  /** Short words that hold, the strictest alone: `vegan`, `no gluten-containing ingredient`. */
  readonly marks: readonly string[];
  /** What it contains, in a sentence; where it is not stated, that. */
  readonly contains: string;
  /** Empty for nothing. */
  readonly mayContain: string;
  /** Until when food that stands neither hot nor cold may stay on the table; empty for any other. */
  readonly until: string;
}

/**
 * A card for each dish and each service line, in the order of the menu: allergens by the names of the law that the
 * kitchen follows. Plated menus have none, since nobody helps himself.
 */
export function buffetCards({ event, dishes }: PrepPlanDocument, locale: string): BuffetCard[] {
  const say = wordsIn(locale);
  if (event.style === 'plated') return [];
  return dishes.flatMap((dish) => {
    const card = cardOf(dish, dishes, say);
    return Array.from({ length: event.lines }, () => card);
  });
}

function cardOf(dish: PlanDish, dishes: readonly PlanDish[], say: Say): BuffetCard {
  const { contains, mayContain, unsaid, diets } = dish;
  const base = dish.apartFrom === '' ? undefined : dishes.find(({ recipe }) => recipe === dish.apartFrom);
  const holds = diets.filter(({ suits }) => suits === 'yes').map(({ diet }) => diet);
  return {
    dish: base?.name ?? dish.name,
    changes: base ? dish.changes.join(', ') : '',
    // On a card nobody reads a legend: the mark says whole what it means, so that none takes it for gluten-free.
    marks: marksOf(holds).map((mark) => (mark === 'no gluten' ? say('cards.no-gluten') : mark)),
    contains: containsText(contains, unsaid.length > 0, say),
    mayContain: mayContain.length === 0 ? '' : say('cards.may-contain', { allergens: mayContain.join(', ') }),
    until: dish.throwAway ? say('cards.until', { time: dish.throwAway.by }) : '',
  };
}

function containsText(contains: readonly string[], unsaid: boolean, say: Say): string {
  const allergens = contains.join(', ');
  if (unsaid) return allergens === '' ? say('cards.unknown') : say('cards.not-all-known', { allergens });
  return allergens === '' ? say('cards.none-listed') : say('cards.contains', { allergens });
}
