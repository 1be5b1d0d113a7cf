import Fraction from 'fraction.js';
import type { DrinkCounts } from '../../drinks/drink-counts.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { statement } from '../../text/statement.ts';
import type { Why } from '../event-plan.ts';
import { comesTo, percent, plainAmount } from '../figure-text.ts';
import type { EventDrinks } from './event-drinks.ts';
import { type PlannedDrink, pounds } from './planned-drink.ts';

/** The ice of an event, exact, in pounds. */
export interface PlannedIce {
  readonly inGlasses: Quantity;
  readonly inTubs: Quantity;
  /** Both, and what melts unused. */
  readonly total: Quantity;
  /** By how much all ice is more than what the drinks take. */
  readonly melt: Fraction;
  readonly why: Why;
}

const NONE = new Fraction(0n);

/** The ice that drinks take and what melts meanwhile; undefined where they take none. */
export function plannedIce(drinks: readonly PlannedDrink[], setting: EventDrinks): PlannedIce | undefined {
  const inGlasses = sumOf(drinks.map(({ iceInGlasses }) => iceInGlasses));
  const inTubs = sumOf(drinks.map(({ iceInTubs }) => iceInTubs));
  const taken = inGlasses.add(inTubs);
  if (taken.n === 0n) return undefined;
  const melt = meltOf(setting);
  const total = pounds(taken.mul(melt.add(1n)));
  return {
    inGlasses: pounds(inGlasses),
    inTubs: pounds(inTubs),
    total,
    melt,
    why: [
      statement('why.ice.melt', {
        glasses: plainAmount(pounds(inGlasses)),
        tubs: plainAmount(pounds(inTubs)),
        share: percent(melt),
        result: comesTo(total),
      }),
    ],
  };
}

/** The share of the ice that melts unused. */
export function meltOf({ habits, hotDay }: EventDrinks): Fraction {
  return hotDay ? habits.hotDay.melt : habits.melt;
}

/** How many drinks are served, for what is packed per drink. */
export function drinkCounts(drinks: readonly PlannedDrink[]): DrinkCounts {
  const named = drinks.filter(({ drink }) => drink.servedIn !== undefined);
  const byRental = Map.groupBy(named, ({ drink }) => drink.servedIn as string);
  return {
    all: sumOf(drinks.map((each) => each.drinks)),
    servedIn: new Map([...byRental].map(([id, same]) => [id, sumOf(same.map((each) => each.drinks))])),
  };
}

function sumOf(amounts: readonly Fraction[]): Fraction {
  return amounts.reduce((sum, amount) => sum.add(amount), NONE);
}
