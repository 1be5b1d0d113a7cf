import Fraction from 'fraction.js';
import { mayHelp, parseNeed } from '../../food/need.ts';
import { recipeSuits, variantFor } from '../../food/variant.ts';
import type { GuestNeed } from '../../menu/guest-needs.ts';
import type { Guests } from '../../quote/counts.ts';
import { statement } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';
import type { Why } from '../event-plan.ts';
import { guestNumber, guestsSaid } from '../figure-text.ts';
import { countedFor, countedWhy } from './servings.ts';
import { type Eaters, needsSaid } from './split-dish.ts';

/** The guests of a need who can eat a dish, as it is or made separately; none where it is not for them. */
export function eatersOf(dish: EventDish, need: GuestNeed, course: readonly EventDish[]): Eaters[] {
  if (!need.need) return [];
  if (recipeSuits(dish.recipe, need.need) === 'yes') return [{ need, guests: need.guests, variant: null }];
  const variant = variantFor(dish.recipe, need.need);
  if (!variant) return [];
  const { need: asked } = need;
  const fedOtherwise = course.some(
    (other) => standsInFor(other, dish) && recipeSuits(other.recipe, asked) === 'yes',
  );
  return !need.said && fedOtherwise ? [] : [{ need, guests: need.guests, variant }];
}

/**
 * Whether guests with a need take a dish that is there for those who need it: where nothing else in the course feeds
 * them, or where they cannot eat a dish that this one may replace and no other does. A role nobody knows may be any.
 */
export function takesHeldBack(
  heldBack: EventDish,
  need: GuestNeed,
  regular: readonly EventDish[],
  course: readonly EventDish[],
): boolean {
  const food = regular.filter(({ role }) => role !== 'sauce');
  const feeding = food.filter((dish) => eatersOf(dish, need, course).length > 0);
  const replaced = (dish: EventDish) => replacedFor(dish, need, course) !== undefined;
  if (feeding.length === 0 && !food.some(replaced)) return true;
  return food.some(
    (dish) =>
      !feeding.includes(dish) &&
      !replaced(dish) &&
      !feeding.some((other) => standsInFor(other, dish)) &&
      (dish.role === undefined || heldBack.role === undefined || dish.role === heldBack.role),
  );
}

/** Whether a guest who cannot eat a dish has the same of the other: only where it is known what both are. */
function standsInFor(other: EventDish, dish: EventDish): boolean {
  return dish.role !== undefined && other.role === dish.role;
}

/**
 * The dish that guests with a need get in place of another: they cannot eat that one as it is, and this one suits them
 * for certain, as it is or made separately. The first of the course where several do, so that nobody gets two.
 */
export function replacedFor(
  original: EventDish,
  need: GuestNeed,
  course: readonly EventDish[],
): EventDish | undefined {
  const { need: asked } = need;
  if (!asked || recipeSuits(original.recipe, asked) === 'yes') return undefined;
  return course.find(({ insteadOf, ...rest }) => {
    if (insteadOf?.recipe !== original.recipe.id) return false;
    const named = insteadOf.needs?.map(parseNeed);
    const isFor = !named || named.some((each) => each.ok && mayHelp(each.value, asked));
    return isFor && eatersOf({ insteadOf, ...rest }, need, course).length > 0;
  });
}

/**
 * The guests that a dish is cooked for: all it counts, without those who get another in its place, and where it is
 * cooked only for those who can eat it, without those whom it does not suit for certain. Only stated needs are left
 * out, and each guest by no more than the dish counts for anybody at the table, so that too much is cooked rather than
 * too little.
 */
export function cookedFor(
  dish: EventDish,
  course: readonly EventDish[],
  guests: Guests,
  needs: readonly GuestNeed[],
): { readonly total: Fraction; readonly why: Why; readonly notFor: readonly string[] } {
  const weight = leastWeight(dish, guests);
  let total = countedFor(dish, guests);
  const why = [...countedWhy(dish, guests)];
  const leaveOut = (who: readonly GuestNeed[], other?: EventDish) => {
    const people = who.reduce((all, each) => all + each.guests, 0);
    const away = weight.mul(new Fraction(BigInt(people)));
    if (away.n === 0n) return;
    const left = total.gt(away) ? total.sub(away) : new Fraction(0n);
    const values = {
      guests: guestsSaid(total),
      count: guestNumber(away),
      who: needsSaid(who.map((need) => ({ need, guests: need.guests }))),
      left: guestsSaid(left),
    };
    why.push(
      other
        ? statement('why.get-instead', { ...values, dish: other.name })
        : statement('why.cannot-eat', values),
    );
    total = left;
  };
  const stated = needs.filter(({ said, need }) => said && need !== null);
  const replaced = Map.groupBy(stated, (need) => replacedFor(dish, need, course));
  for (const [other, who] of replaced) if (other) leaveOut(who, other);
  const cannot = (dish.onlyForEaters ? (replaced.get(undefined) ?? []) : []).filter(
    (need) =>
      need.need && recipeSuits(dish.recipe, need.need) === 'no' && eatersOf(dish, need, course).length === 0,
  );
  leaveOut(cannot);
  return { total, why, notFor: weight.n === 0n ? [] : cannot.map(({ text }) => text) };
}

/** The least that any guest at the table counts for a dish; nothing where it does not count some of them. */
function leastWeight({ counts }: EventDish, guests: Guests): Fraction {
  const here = (['adults', 'children'] as const).filter((group) => guests[group] > 0);
  const weights = here.map((group) => new Fraction(counts[group] ?? '0'));
  return weights.reduce((least, each) => (each.lt(least) ? each : least), new Fraction(1n));
}
