import Fraction from 'fraction.js';
import type { Drink } from '../../drinks/drink.ts';
import { convertFinishedFood } from '../../food/finished-food.ts';
import { attendanceBy, type StatedAttendance } from '../../odds/attendance.ts';
import { type Chances, certainly, sumOf } from '../../odds/chances.ts';
import { demandOf } from '../../odds/demand.ts';
import type { DishDemand } from '../../odds/dish-demand.ts';
import { drinkChances } from '../../odds/drink-chances.ts';
import { leastHelpings } from '../../odds/shortage.ts';
import { countGuests, GUEST_GROUPS, type GuestGroup, type Guests, weightOf } from '../../quote/counts.ts';
import { statement } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';
import type { Why } from '../event-plan.ts';
import { helpingsSaid, percent, plainNumber } from '../figure-text.ts';
import { GROUP_WORDS } from '../group-words.ts';
import { attendanceWhy } from './appetite-demand.ts';

/** Guests of one group, and how they take a drink. */
interface Takers {
  readonly group: GuestGroup;
  readonly people: number;
  /** Drinks of all kinds that each of them takes, a hot day in it. */
  readonly drinks: Fraction;
  /** The share of those that are of this kind, at most 1. */
  readonly share: Fraction;
}

const NONE = new Fraction(0n);
const ONE = new Fraction(1n);

/**
 * What guests want of a drink: each drink that a guest takes is of this kind with the chance of its share. Undefined where
 * its amount does not convert to glasses, or where some of its guests get another in its place, so that who is left over is
 * not known by group.
 */
export function drinkDemand(
  dish: EventDish,
  drink: Drink,
  guests: Guests,
  stated: StatedAttendance | undefined,
): DishDemand | undefined {
  const helping = convertFinishedFood(dish.recipe, drink.glass, dish.perGuest.amount.unit);
  const { over, under } = countGuests(guests, dish.counts);
  if (!helping || (dish.portions && !dish.portions.guests.equals(new Fraction(over, under))))
    return undefined;
  const glasses = dish.perGuest.amount.amount.div(dish.perGuest.guests).div(helping.amount);
  const takers = GUEST_GROUPS.flatMap((group) => takersOf(dish, drink, group, guests[group], glasses));
  const attendance = attendanceBy(stated);
  const chances = takers.reduce<Chances>((sum, { people, drinks, share }) => {
    const one = drinkChances(drinks.valueOf(), share.valueOf());
    return sumOf(sum, demandOf(one, { sure: 0, free: people }, attendance));
  }, certainly(0));
  const oneIn = dish.takeRate?.shortOneIn;
  const helpings = oneIn === undefined ? undefined : leastHelpings(chances, 1 / oneIn);
  const people = takers.reduce((sum, each) => sum + each.people, 0);
  return {
    eaters: { sure: 0, free: people, cannot: 0 },
    helping,
    chances,
    helpings,
    why: [
      ...takers.map(takersWhy),
      ...attendanceWhy(stated),
      ...(oneIn === undefined || helpings === undefined
        ? []
        : [statement('why.risk-least', { n: String(oneIn), helpings: helpingsSaid(helpings) })]),
    ],
  };
}

function takersOf(
  { counts, hotDay }: EventDish,
  { taken }: Drink,
  group: GuestGroup,
  people: number,
  glasses: Fraction,
): Takers[] {
  const all = group === 'children' ? taken.child : taken.adult;
  const { over, under } = weightOf(counts, group);
  if (people === 0 || over === 0n || all.n === 0n) return [];
  const share = glasses.mul(new Fraction(over, under)).div(all);
  const drinks = all.mul((hotDay?.more ?? NONE).add(ONE));
  return [{ group, people, drinks, share: share.gt(ONE) ? ONE : share }];
}

function takersWhy({ group, people, drinks, share }: Takers): Why[number] {
  return statement('why.drinks-taken', {
    guests: statement(GROUP_WORDS[group], { n: people, count: String(people) }),
    drinks: plainNumber(drinks),
    share: percent(share),
  });
}
