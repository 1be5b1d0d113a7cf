import type { PlanDish } from '../../exports/form/food.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { marksOf } from '../diet-marks.ts';

/** A card that stands beside a dish on the line, for the guests who help themselves. */
export interface BuffetCard {
  readonly dish: string;
  /** How portions made apart differ from the dish: `without butter`; empty for a dish as it is. */
  readonly changes: string;
  /** Short words that hold, the strictest alone: `vegan`, `no gluten-containing ingredient`. */
  readonly marks: readonly string[];
  /** What it contains, in a sentence; where nobody has said, that. */
  readonly contains: string;
  /** Empty for nothing. */
  readonly mayContain: string;
}

/** On a card nobody reads a legend: the mark says whole what it means, so that none takes it for gluten-free. */
const MARK_WORDS: Readonly<Record<string, string>> = { 'no gluten': 'no gluten-containing ingredient' };

/**
 * A card for each dish and each service line, in the order of the menu: allergens by the names of the law that the
 * kitchen follows. Plated menus have none, since nobody helps himself.
 */
export function buffetCards({ event, dishes }: PrepPlanDocument): BuffetCard[] {
  if (event.style === 'plated') return [];
  return dishes.flatMap((dish) => {
    const card = cardOf(dish, dishes);
    return Array.from({ length: event.lines }, () => card);
  });
}

function cardOf(dish: PlanDish, dishes: readonly PlanDish[]): BuffetCard {
  const { contains, mayContain, unsaid, diets } = dish;
  const base = dish.apartFrom === '' ? undefined : dishes.find(({ recipe }) => recipe === dish.apartFrom);
  const holds = diets.filter(({ suits }) => suits === 'yes').map(({ diet }) => diet);
  return {
    dish: base?.name ?? dish.name,
    changes: base ? dish.changes.join(', ') : '',
    marks: marksOf(holds).map((mark) => MARK_WORDS[mark] ?? mark),
    contains: containsText(contains, unsaid.length > 0),
    mayContain: mayContain.length === 0 ? '' : `May contain ${mayContain.join(', ')}`,
  };
}

function containsText(contains: readonly string[], unsaid: boolean): string {
  if (unsaid && contains.length === 0) return 'Its allergens are not known: please ask us';
  const said = contains.length === 0 ? '' : `Contains ${contains.join(', ')}`;
  if (unsaid) return `${said}; not all its allergens are known: please ask us`;
  return said || 'None of the listed allergens is an ingredient';
}
