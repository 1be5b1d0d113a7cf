import Fraction from 'fraction.js';
import { recipeSuits, variantFor } from '../../food/variant.ts';
import type { GuestNeed } from '../../menu/guest-needs.ts';
import type { Guests } from '../../quote/counts.ts';
import { several, statement } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';
import type { PlanFinding, Why } from '../event-plan.ts';
import { guestNumber, guestsSaid, percent } from '../figure-text.ts';
import { assignNeeds } from './assign-needs.ts';
import { countedFor } from './servings.ts';
import { type Eaters, guestsIn, needsSaid, splitDish } from './split-dish.ts';
import { cookedFor, eatersOf, replacedFor, takesHeldBack } from './who-eats.ts';

/** The dishes of an event as portions: each dish as it is, and beside it what is made separately. */
export interface SplitDishes {
  readonly dishes: readonly EventDish[];
  readonly findings: readonly PlanFinding[];
}

/**
 * Parts every dish of an event by need. Who cannot eat a dish as it is, and for whom it can be made otherwise, gets
 * portions made separately, which the dish itself then has fewer of: the portions of a dish are always as many as the
 * guests counted. Where each guest takes one dish of a course, guests with needs are given dishes that suit them
 * within the counts chosen, and one made separately only where no other is left. A dish that is there for those who need
 * it is planned for them and for the share of the rest who help themselves: for whoever cannot eat another dish of the
 * course for which none of the same role stands in, and bread stands in for no main. Needs that nobody stated, but the
 * kitchen plans for, part a dish only where nothing else of its role in the course is for them.
 */
export function partDishes(
  dishes: readonly EventDish[],
  guests: Guests,
  needs: readonly GuestNeed[],
): SplitDishes {
  if (needs.length === 0 && dishes.every(({ others }) => others === undefined))
    return { dishes, findings: [] };
  const split: EventDish[] = [];
  const findings: PlanFinding[] = [];
  for (const course of Map.groupBy(dishes, (dish) => dish.course).values()) {
    const each = course.every(({ chosenBy }) => chosenBy !== undefined)
      ? partByGuest(course, needs)
      : partForAll(course, guests, needs);
    split.push(...each.dishes);
    findings.push(...each.findings);
  }
  return { dishes: split, findings };
}

function partForAll(course: readonly EventDish[], guests: Guests, needs: readonly GuestNeed[]): SplitDishes {
  const regular = course.filter(({ others }) => others === undefined);
  const findings: PlanFinding[] = [];
  const dishes = course.flatMap((dish) => {
    const eaters = needs.flatMap((need) => eatersOf(dish, need, course));
    if (dish.others === undefined) {
      const { total, why, notFor } = cookedFor(dish, course, guests, needs);
      const own = eaters.filter(({ need }) => replacedFor(dish, need, course) === undefined);
      return splitDish(dish, total, why, own, { notFor });
    }
    const original = course.find(({ recipe }) => recipe.id === dish.insteadOf?.recipe);
    const takers = eaters.filter(({ need }) =>
      original ? replacedFor(original, need, course) === dish : takesHeldBack(dish, need, regular, course),
    );
    const { total, why } = helpedTo(dish, dish.others, countedFor(dish, guests), takers, original);
    if (total.n === 0n && !original) findings.push(nobodyNeeds(dish));
    return splitDish(dish, total, why, takers, original && { insteadOf: original.recipe.id });
  });
  return { dishes, findings };
}

/** Those who need a dish, and of all others the share who help themselves to it. */
function helpedTo(
  { others }: EventDish,
  share: Fraction,
  counted: Fraction,
  takers: readonly Eaters[],
  original: EventDish | undefined,
): { total: Fraction; why: Why } {
  const takeRate = new Fraction(BigInt(guestsIn(takers)));
  const rest = counted.gt(takeRate) ? counted.sub(takeRate) : new Fraction(0n);
  const helped = rest.mul(share);
  const total = takeRate.add(helped);
  const values = {
    n: takeRate.valueOf(),
    guests: guestsSaid(takeRate),
    ...(takers.length > 0 && { who: needsSaid(takers) }),
  };
  const alone = others?.n === 0n;
  const need = original
    ? statement(takers.length > 0 ? 'why.gets-instead' : 'why.gets-instead-none', {
        ...values,
        dish: original.name,
      })
    : statement(NEEDED[`${takers.length > 0} ${alone}`], values);
  if (alone) return { total, why: [need] };
  const helping = statement('why.and-others', {
    guests: guestsSaid(takeRate),
    share: percent(share),
    rest: guestNumber(rest),
    total: guestsSaid(total),
  });
  return { total, why: [need, helping] };
}

/** By whether anybody needs it, and whether it is held back for those who do. */
const NEEDED = {
  'true true': 'why.needs-held',
  'true false': 'why.needs',
  'false true': 'why.needs-none-held',
  'false false': 'why.needs-none',
} as const;

/**
 * Guests whose needs were stated come first. Those of an assumed need are among the guests who chose: they are given
 * what suits them of the rest, and a dish is made separately for them only where nothing that was chosen suits.
 */
function partByGuest(course: readonly EventDish[], needs: readonly GuestNeed[]): SplitDishes {
  const known = needs.filter(({ need }) => need !== null);
  const suits = known.map(({ need }) =>
    course.map(({ recipe }) => need !== null && recipeSuits(recipe, need) === 'yes'),
  );
  const variants = known.map(({ need, said }, row) => {
    const suited = course.some(({ chosenBy = 0 }, column) => chosenBy > 0 && suits[row]?.[column]);
    return course.map(({ recipe }) => (need && (said || !suited) ? variantFor(recipe, need) : undefined));
  });
  const chosen = course.map(({ chosenBy }) => chosenBy ?? 0);
  const assign = (guests: readonly number[], capacity: readonly number[]) =>
    assignNeeds(
      guests,
      capacity,
      suits,
      variants.map((row) => row.map((variant) => variant !== undefined)),
    );
  const stated = assign(
    known.map(({ guests, said }) => (said ? guests : 0)),
    chosen,
  );
  const assumed = assign(
    known.map(({ guests, said }) => (said ? 0 : guests)),
    chosen.map((count, column) => count - stated.reduce((all, row) => all + (row[column] ?? 0), 0)),
  );
  const given = known.map(({ said }, row) => (said ? stated : assumed)[row] ?? []);
  const dishes = course.flatMap((dish, column) => {
    const eaters = known.flatMap((need, row): Eaters[] => {
      const guests = given[row]?.[column] ?? 0;
      const variant = suits[row]?.[column] ? null : (variants[row]?.[column] ?? null);
      return guests === 0 ? [] : [{ need, guests, variant }];
    });
    const total = new Fraction(BigInt(dish.chosenBy ?? 0));
    return splitDish(dish, total, [statement('why.chosen', { guests: guestsSaid(total) })], eaters);
  });
  const findings = known.flatMap((need, row) => {
    const missing = need.guests - (given[row] ?? []).reduce((all, count) => all + count, 0);
    return need.said && missing > 0 ? [unfed(need, missing, course, suits[row] ?? [])] : [];
  });
  return { dishes, findings };
}

function unfed(
  { text }: GuestNeed,
  missing: number,
  course: readonly EventDish[],
  suits: readonly boolean[],
): PlanFinding {
  const names = course.filter((_, index) => suits[index]).map(({ name }) => name);
  const [first] = course;
  return {
    about: text,
    what: statement('found.unfed', { guests: String(missing), need: text, course: first?.course ?? '' }),
    wayOut:
      names.length > 0
        ? statement('found.unfed.take-more', { dishes: several('or', names) })
        : statement('found.unfed.offer'),
  };
}

function nobodyNeeds({ name, recipe, course }: EventDish): PlanFinding {
  return {
    about: recipe.id,
    what: statement('found.nobody-needs', { dish: name, course }),
    wayOut: statement('found.nobody-needs.way'),
  };
}
