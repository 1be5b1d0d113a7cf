import { isMadeThere } from '../../food/made-there.ts';
import { type Hold, isAtPlace, type Recipe } from '../../food/recipe.ts';
import type { Container } from '../../kitchen/container.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { type LeavesRaw, leavesRaw } from '../../safety/leaves-raw.ts';
import { travelsAs } from '../../safety/travels-as.ts';
import type { ServedOn } from '../clock/day-clock.ts';
import { cookedDishes } from '../cooked-dishes.ts';
import type { EventPlan, PlannedContainer, PlannedDish } from '../event-plan.ts';
import { type Component, componentsOf } from './components.ts';

/** Food that goes on the van: a dish, what travels beside one, or what a step at the place takes. */
export type PackedFood = PackedFacts &
  (
    | { readonly kind: 'dish'; readonly planned: PlannedDish }
    | { readonly kind: 'component'; readonly component: Component }
  );

interface PackedFacts {
  readonly name: string;
  /** The recipe whose serving, or whose step at the place, needs it first. */
  readonly usedBy: Recipe;
  /** What it travels in; undefined where that is not stated: then it goes as it is. */
  readonly container: PlannedContainer | undefined;
  /** All of it, exact. */
  readonly amount: Quantity;
  readonly hold: Hold;
  readonly raw: LeavesRaw | undefined;
}

/** All food of an event that travels: its dishes, what goes beside them, and the foods that steps at the place take. */
export function packedFood(plan: EventPlan, containers: ReadonlyMap<string, Container>): PackedFood[] {
  const dishes = [...cookedDishes(plan), ...plan.beside]
    .filter(({ dish }) => !isMadeThere(dish.recipe))
    .map(
      (planned): PackedFood => ({
        kind: 'dish',
        planned,
        name: planned.dish.name,
        usedBy: planned.dish.recipe,
        container: carriedIn(planned),
        amount: planned.need,
        hold: travelsAs(planned.dish.recipe),
        raw: leavesRaw(planned.dish.recipe, plan.foodSafety),
      }),
    );
  const components = componentsOf(plan, containers).map((component): PackedFood => {
    const { item } = component.line;
    return {
      kind: 'component',
      component,
      name: item.kind === 'recipe' ? item.recipe.name : item.ingredient.name,
      usedBy: component.recipe,
      container: component.packed,
      amount: component.amount,
      hold: component.hold,
      raw: item.kind === 'recipe' ? leavesRaw(item.recipe, plan.foodSafety) : component.raw,
    };
  });
  return [...dishes, ...components];
}

/** The containers a dish travels in: those to carry, else those it is served from. */
export function carriedIn(planned: Pick<PlannedDish, 'containers'>): PlannedContainer | undefined {
  const at = (stage: string) => planned.containers.find((each) => each.stage === stage);
  return at('carry') ?? at('serve') ?? at('chill');
}

/**
 * When food is first needed at the place, in minutes from the midnight of its date: when the first step there that takes
 * it begins, else when its course is served.
 */
export function neededAt(food: PackedFood, { clock, place, plan }: ServedOn): number {
  const takes = place.steps.filter(
    ({ batch, number }) => batch.recipe.id === food.usedBy.id && takesIt(food, number),
  );
  if (takes.length > 0) return Math.min(...takes.map(({ begins }) => begins));
  const courses = [...plan.dishes, ...plan.beside].flatMap(({ dish }) => {
    const from = dish.recipe.id === food.usedBy.id ? clock.courses.get(dish.course)?.from : undefined;
    return from === undefined ? [] : [from];
  });
  return courses.length === 0 ? clock.serve : Math.min(...courses);
}

/** Whether a step at the place, by its number, takes a food: any takes the dish, those that name its line a component. */
function takesIt(food: PackedFood, number: number): boolean {
  const step = food.usedBy.steps[number - 1];
  if (step === undefined || !isAtPlace(step)) return false;
  return food.kind === 'dish' || (food.component.line.steps ?? [0]).includes(number - 1);
}
