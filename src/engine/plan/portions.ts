import Fraction from 'fraction.js';
import { recipeSuits, type Variant, variantFor } from '../food/variant.ts';
import type { GuestNeed } from '../menu/guest-needs.ts';
import type { Guests } from '../quote/counts.ts';
import { assignNeeds } from './assign-needs.ts';
import type { DishPortions, EventDish, NeedGuests } from './event-input.ts';
import type { PlanFinding } from './event-plan.ts';
import { percent, plainNumber } from './figure-text.ts';
import { countedFor, countedWhy, guestsText } from './servings.ts';

/** The dishes of an event as portions: each dish as it is, and beside it what is made apart. */
export interface PartedDishes {
  readonly dishes: readonly EventDish[];
  readonly findings: readonly PlanFinding[];
}

/** Guests with a need, and the dish as it is made for them; `variant` is null where they eat it as it is. */
interface Eaters {
  readonly need: GuestNeed;
  readonly guests: number;
  readonly variant: Variant | null;
}

/**
 * Parts every dish of an event by need. Who cannot eat a dish as it is, and for whom it can be made otherwise, gets
 * portions made apart, which the dish itself then has fewer of: the portions of a dish are always as many as the
 * guests counted. Where each guest takes one dish of a course, guests with needs are given dishes that suit them
 * within the counts chosen, and one made apart only where no other is left. A dish that is there for those who need
 * it is planned for them and for the share of the rest who help themselves. Needs that nobody stated, but the
 * kitchen plans for, part a dish only in a course that has nothing else for them.
 */
export function partDishes(
  dishes: readonly EventDish[],
  guests: Guests,
  needs: readonly GuestNeed[],
): PartedDishes {
  if (needs.length === 0 && dishes.every(({ others }) => others === undefined))
    return { dishes, findings: [] };
  const parted: EventDish[] = [];
  const findings: PlanFinding[] = [];
  for (const course of Map.groupBy(dishes, (dish) => dish.course).values()) {
    const each = course.every(({ chosenBy }) => chosenBy !== undefined)
      ? partByGuest(course, needs)
      : partForAll(course, guests, needs);
    parted.push(...each.dishes);
    findings.push(...each.findings);
  }
  return { dishes: parted, findings };
}

function partForAll(course: readonly EventDish[], guests: Guests, needs: readonly GuestNeed[]): PartedDishes {
  const regular = course.filter(({ others }) => others === undefined);
  const findings: PlanFinding[] = [];
  const dishes = course.flatMap((dish) => {
    const eaters = needs.flatMap((need) => eatersOf(dish, need, course));
    if (dish.others === undefined)
      return parted(dish, countedFor(dish, guests), countedWhy(dish, guests), eaters);
    const takers = eaters.filter(
      ({ need }) => !regular.some((other) => eatersOf(other, need, course).length > 0),
    );
    const { total, why } = helpedTo(dish, dish.others, countedFor(dish, guests), takers);
    if (total.n === 0n) findings.push(nobodyNeeds(dish));
    return parted(dish, total, why, takers);
  });
  return { dishes, findings };
}

/** The guests of a need who can eat a dish, as it is or made apart; none where it is not for them. */
function eatersOf(dish: EventDish, need: GuestNeed, course: readonly EventDish[]): Eaters[] {
  if (!need.need) return [];
  if (recipeSuits(dish.recipe, need.need) === 'yes') return [{ need, guests: need.guests, variant: null }];
  const variant = variantFor(dish.recipe, need.need);
  if (!variant) return [];
  const { need: asked } = need;
  const fedOtherwise = course.some(({ recipe }) => recipeSuits(recipe, asked) === 'yes');
  return !need.said && fedOtherwise ? [] : [{ need, guests: need.guests, variant }];
}

/** Those who need a dish, and of all others the share who help themselves to it. */
function helpedTo(
  { others }: EventDish,
  share: Fraction,
  counted: Fraction,
  takers: readonly Eaters[],
): { total: Fraction; why: string[] } {
  const taking = new Fraction(BigInt(sum(takers)));
  const rest = counted.gt(taking) ? counted.sub(taking) : new Fraction(0n);
  const helped = rest.mul(share);
  const total = taking.add(helped);
  const who = takers.map(({ need, guests }) => `${guests} × ${need.text}`).join(', ');
  const need = `${guestsText(taking)} ${taking.equals(1n) ? 'needs' : 'need'} it${who === '' ? '' : ` (${who})`}`;
  if (others?.n === 0n) return { total, why: [`${need}; it is held back for them`] };
  return {
    total,
    why: [
      need,
      `${guestsText(taking)} + ${percent(share)} of the other ${plainNumber(rest)} = ${guestsText(total)}`,
    ],
  };
}

function partByGuest(course: readonly EventDish[], needs: readonly GuestNeed[]): PartedDishes {
  const known = needs.filter(({ need, said }) => need !== null && said);
  const variants = known.map(({ need }) => course.map(({ recipe }) => need && variantFor(recipe, need)));
  const suits = known.map(({ need }) =>
    course.map(({ recipe }) => need !== null && recipeSuits(recipe, need) === 'yes'),
  );
  const given = assignNeeds(
    known.map(({ guests }) => guests),
    course.map(({ chosenBy }) => chosenBy ?? 0),
    suits,
    variants.map((row) => row.map((variant) => variant !== undefined && variant !== null)),
  );
  const dishes = course.flatMap((dish, column) => {
    const eaters = known.flatMap((need, row): Eaters[] => {
      const guests = given[row]?.[column] ?? 0;
      const variant = suits[row]?.[column] ? null : (variants[row]?.[column] ?? null);
      return guests === 0 ? [] : [{ need, guests, variant }];
    });
    const chosen = new Fraction(BigInt(dish.chosenBy ?? 0));
    return parted(dish, chosen, [`${guestsText(chosen)} chose it`], eaters);
  });
  const findings = known.flatMap((need, row) => {
    const missing = need.guests - (given[row] ?? []).reduce((all, count) => all + count, 0);
    return missing > 0 ? [unfed(need, missing, course, suits[row] ?? [])] : [];
  });
  return { dishes, findings };
}

/** A dish for `total` guests as its portions: what is made apart in entries of its own, the rest as it is. */
function parted(
  dish: EventDish,
  total: Fraction,
  why: readonly string[],
  eaters: readonly Eaters[],
): EventDish[] {
  const apart = Map.groupBy(
    eaters.filter(({ variant }) => variant !== null),
    ({ variant }) => variant?.recipe.id,
  );
  const taken = new Fraction(BigInt([...apart.values()].reduce((all, group) => all + sum(group), 0)));
  const left = total.gt(taken) ? total.sub(taken) : new Fraction(0n);
  const asItIs = withPortions(dish, {
    guests: left,
    needs: eaters.flatMap(({ need, guests, variant }) => (variant ? [] : [{ need: need.text, guests }])),
    apart: undefined,
    why:
      taken.n === 0n
        ? why
        : [
            ...why,
            `${guestsText(total)} − ${plainNumber(taken)} who get it made apart = ${guestsText(left)}`,
          ],
  });
  const madeApart = [...apart.values()].flatMap((group) => {
    const variant = group[0]?.variant;
    return variant ? [apartDish(dish, variant, group)] : [];
  });
  return [...(left.n === 0n ? [] : [asItIs]), ...madeApart];
}

function apartDish(dish: EventDish, { recipe, changes }: Variant, group: readonly Eaters[]): EventDish {
  const guests = new Fraction(BigInt(sum(group)));
  const needs = group.map(({ need, guests: count }): NeedGuests => ({ need: need.text, guests: count }));
  const who = needs.map(({ need, guests: count }) => `${count} × ${need}`).join(', ');
  return withPortions(
    { ...dish, name: `${dish.name} (${changes.join(', ')})`, recipe },
    {
      guests,
      needs,
      apart: { recipe: dish.recipe.id, changes },
      why: [`${guestsText(guests)} (${who}): made apart, ${changes.join(', ')}`],
    },
  );
}

function withPortions(dish: EventDish, portions: DishPortions): EventDish {
  return { ...dish, portions };
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
    what: `${missing} × ${text}: no portion in ${first?.course} is left for them by the counts chosen`,
    wayOut:
      names.length > 0
        ? `ask the client to take more of ${names.join(' or ')}`
        : 'offer them a dish that suits, and ask the client',
  };
}

function nobodyNeeds({ name, recipe, course }: EventDish): PlanFinding {
  return {
    about: recipe.id,
    what: `${name} in ${course} is held back for guests who need it, and nobody does; none is planned`,
    wayOut: 'ask the client again, or let others take it: others: 20 %',
  };
}

function sum(eaters: readonly Eaters[]): number {
  return eaters.reduce((all, { guests }) => all + guests, 0);
}
