import Fraction from 'fraction.js';
import type { Book } from '../../book/book.ts';
import { addDays, type Day } from '../../engine/calendar/day.ts';
import { finishedFoodConversions } from '../../engine/food/finished-food.ts';
import { type CarriedFood, type FilledContainer, parseCameBack } from '../../engine/learning/came-back.ts';
import type { CarriedDish } from '../../engine/learning/carried-dish.ts';
import type { Destiny } from '../../engine/learning/destiny.ts';
import { convert } from '../../engine/measure/conversions.ts';
import { exactText } from '../../engine/measure/quantity.ts';
import { money, moneyText, roundToMinor } from '../../engine/money/money.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { costOfNeeds } from '../../engine/purchase/food-cost.ts';
import { type Counts, countGuests, DEFAULT_COUNTS, type Guests } from '../../engine/quote/counts.ts';
import type { LeftDish, LeftoversFact } from '../../schema/event-fact.ts';
import { type CurrentEvent, currentEvent, type NextFact, nextFact } from '../event/current-event.ts';
import { takenDishes } from '../event/dishes.ts';
import { replacementOf } from '../event/recipes.ts';

/** What came back of one dish, in the words it was entered in. */
export interface LeftSaid {
  readonly dish: CarriedDish;
  readonly said: string;
  /** Where it went; undefined where nobody stated it. */
  readonly destiny?: Destiny | undefined;
  readonly note?: string;
}

/** What came back of an event, as it is to be recorded. */
export interface LeftoversAsked {
  /** What says what went out. */
  readonly plan: LeftoversFact['plan'];
  readonly dishes: readonly LeftSaid[];
}

/** The refusal of leftovers that have been recorded already. */
export const SAME_LEFTOVERS = 'these leftovers are the same as the last ones';

/**
 * The fact that says what came back; it freezes what went out, for how many, who came and what it cost, so that later
 * changes of recipes and prices leave it as it is. A later one replaces it. Refused before the event's day, for one
 * that did not take place, while who was served is not recorded, and where an amount cannot be read.
 */
export function leftovers(
  book: Book,
  event: string,
  { plan, dishes }: LeftoversAsked,
  today: Day,
): Parsed<NextFact<LeftoversFact>> {
  const over = eventThatWasServed(book, event, today);
  if (!over.ok) return over;
  const { facts, offer, status } = over.value;
  const { served, choice } = status;
  if (!served)
    return notParsed(
      `how many came to ${event} is not recorded`,
      `give it with --adults, or record it: served ${event}`,
    );
  const accepted = offer.terms.packages.find(({ id }) => id === choice.package);
  if (!accepted)
    throw new Error(`a checked acceptance of ${event} chooses a package that is not in its offer`);
  const left: LeftDish[] = [];
  for (const each of dishes) {
    const one = leftDish(book, over.value, each, served);
    if (!one.ok) return notParsed(`${each.dish.name}: ${one.what}`, one.wayOut);
    left.push(one.value);
  }
  if (left.length === 0)
    return notParsed('there is no entry for any dish', 'name at least one and what came back of it');
  const last = leftoversOf(facts);
  const fact: LeftoversFact = {
    version: 1,
    kind: 'leftovers',
    on: today,
    plan,
    package: choice.package,
    style: accepted.style,
    came: served,
    dishes: left,
  };
  if (last && JSON.stringify({ ...last, on: today }) === JSON.stringify(fact))
    return notParsed(SAME_LEFTOVERS, 'nothing more to do');
  return nextFact(facts, fact);
}

/** An event that took place, or takes place today; refused for any other. */
export function eventThatWasServed(book: Book, event: string, today: Day): Parsed<CurrentEvent> {
  const found = currentEvent(book, event);
  if (!found.ok) return found;
  const { date, state } = found.value.status;
  if (date === null)
    return notParsed(`${event} is ${state}, so nothing was served`, 'check which event is meant');
  if (today < date)
    return notParsed(
      `${event} is on ${date}, so nothing has come back yet`,
      'record it when the event is over',
    );
  return found;
}

/** The leftovers that stand: the last ones; undefined where it is not stated any. */
export function leftoversOf(facts: CurrentEvent['facts']): LeftoversFact | undefined {
  return facts.findLast((fact): fact is LeftoversFact => fact.kind === 'leftovers');
}

/** What the words for a dish's leftovers are read against: its containers as far as their fill can be turned into its unit. */
export function carriedFood(book: Pick<Book, 'recipes'>, dish: CarriedDish): CarriedFood {
  const { carried } = dish;
  const recipe = book.recipes.get(dish.recipe);
  const conversions = recipe ? finishedFoodConversions(recipe) : [];
  const containers = dish.containers.flatMap((container) => {
    const each = convert(container.each, carried.unit, conversions);
    return each ? [{ ...container, each }] : [];
  });
  return { carried, containers: oneOfEach(containers), conversions };
}

/** A container that is carried and served in counts as it was filled last. */
function oneOfEach(containers: readonly FilledContainer[]): FilledContainer[] {
  return [...new Map(containers.map((container) => [container.id, container])).values()];
}

function leftDish(
  book: Book,
  { offer, status }: CurrentEvent,
  { dish, said, destiny, note }: LeftSaid,
  served: Guests,
): Parsed<LeftDish> {
  const read = parseCameBack(said, carriedFood(book, dish));
  if (!read.ok) return read;
  const { back, ranOut, at } = read.value;
  if (destiny && back.amount.n === 0n)
    return notParsed(`nothing came back, so none was ${destiny}`, 'keep one of the two');
  const accepted = offer.terms.packages.find(({ id }) => id === status.choice.package);
  const taken = accepted ? takenDishes(book, accepted, status.choice) : [];
  const counts = taken.find(
    ({ course, recipeId }) =>
      course === dish.course &&
      (replacementOf(recipeId, status.substitutions)?.to ?? recipeId) === dish.recipe,
  )?.counts;
  return parsed({
    course: dish.course,
    recipe: dish.recipe,
    name: dish.name,
    perGuest: dish.perGuest,
    counted: dish.counted.toFraction(),
    came: dish.counted.mul(cameShare(status.choice.guests, served, counts ?? DEFAULT_COUNTS)).toFraction(),
    planned: exactText(dish.planned),
    carried: exactText(dish.carried),
    back: exactText(back),
    ...(ranOut && { ranOut: true as const }),
    ...(at !== undefined && { at }),
    cost: costOf(book, dish, status.lastDate),
    ...(destiny && { destiny }),
    said,
    ...(note !== undefined && note !== '' && { note }),
  });
}

/** How many of those a dish was planned for came: it is taken to fall with the groups that it counts. */
function cameShare(planned: Guests, served: Guests, counts: Counts): Fraction {
  const [before, after] = [countGuests(planned, counts), countGuests(served, counts)];
  if (before.over === 0n) return new Fraction(1n);
  return new Fraction(after.over * before.under, after.under * before.over);
}

function costOf(book: Book, { recipe, carried, name }: CarriedDish, date: Day): string | null {
  const cooked = book.recipes.get(recipe);
  if (!cooked) return null;
  const day = addDays(date, -book.kitchen.buying);
  const { amount, unpriced } = costOfNeeds([{ recipe: cooked, need: carried, by: name }], book.prices, day);
  return unpriced.length > 0 ? null : moneyText(roundToMinor(money(amount, book.kitchen.currency)));
}
