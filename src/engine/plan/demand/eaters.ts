import { recipeSuits } from '../../food/variant.ts';
import type { GuestNeed } from '../../menu/guest-needs.ts';
import type { DishEaters } from '../../odds/dish-demand.ts';
import { GUEST_GROUPS, type Guests } from '../../quote/counts.ts';
import type { EventDish } from '../event-input.ts';
import { countedFor } from '../servings/servings.ts';

/**
 * Who of the guests eats a dish of a course; undefined where guests counted are not whole. Nobody is left out by a
 * need that is only assumed, that is not known, or of which the dish says nothing for certain, nor where the dish
 * counts only some of the table: too much is then carried rather than too little.
 */
export function eatersOf(
  dish: EventDish,
  dishes: readonly EventDish[],
  guests: Guests,
  needs: readonly GuestNeed[],
): DishEaters | undefined {
  const people = wholeGuests(dish, guests);
  if (people === undefined) return undefined;
  const others = dishes.filter((other) => other !== dish && other.course === dish.course);
  const isFor = (other: EventDish, need: string) =>
    other.portions?.needs.some((each) => each.need === need) ?? false;
  const sure = sum(
    (dish.portions?.needs ?? []).filter(({ need }) => !others.some((other) => isFor(other, need))),
  );
  // Those who get it made separately, or another in its place, are not among its portions.
  const apart = others.filter(
    ({ portions }) => portions?.apart?.recipe === dish.recipe.id || portions?.insteadOf === dish.recipe.id,
  );
  const wholeTable = dish.counts.adults !== undefined && dish.counts.children !== undefined;
  const cannot = sum(
    needs.filter(
      ({ need, said, text }) =>
        need !== null &&
        said &&
        wholeTable &&
        recipeSuits(dish.recipe, need) === 'no' &&
        !dish.portions?.notFor?.includes(text) &&
        !apart.some((other) => isFor(other, text)),
    ),
  );
  const certain = Math.min(sure, people);
  const left = people - certain;
  return { sure: certain, cannot: Math.min(cannot, left), free: left - Math.min(cannot, left) };
}

/** The guests counted for a dish, where each counts as one and they are whole. */
export function wholeGuests(dish: EventDish, guests: Guests): number | undefined {
  const parts = GUEST_GROUPS.some((group) => guests[group] > 0 && (dish.counts[group] ?? '1') !== '1');
  const counted = countedFor(dish, guests);
  return parts || counted.d !== 1n ? undefined : Number(counted.n);
}

function sum(each: readonly { readonly guests: number }[]): number {
  return each.reduce((all, { guests }) => all + guests, 0);
}
