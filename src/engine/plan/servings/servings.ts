import Fraction from 'fraction.js';
import { mixedNumberText } from '../../measure/mixed-number.ts';
import { forGuests } from '../../measure/per-guest.ts';
import { type Quantity, timesQuantity } from '../../measure/quantity.ts';
import { temperatureText } from '../../measure/temperature.ts';
import { type MeasureSystem, unitKind } from '../../measure/units.ts';
import { amountOfHelpings } from '../../odds/helpings.ts';
import { countGuests, GUEST_GROUPS, type Guests } from '../../quote/counts.ts';
import { type Statement, several, statement } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';
import type { Why } from '../event-plan.ts';
import {
  comesTo,
  comesToMeasured,
  guestNumber,
  guestsSaid,
  helpingsSaid,
  percent,
  plainAmount,
} from '../figure-text.ts';
import { GROUP_WORDS } from '../group-words.ts';

const NOTHING = new Fraction(0n);

/** How much of a dish an event needs. */
export interface Servings {
  /** Guests counted, by their weights: exact. */
  readonly counted: Fraction;
  /** Counted guests × per-guest amount, exact. */
  readonly base: Quantity;
  /** The base, what a hot day and the overage add to it, or the helpings of a chosen risk, up to a whole unit where the unit cannot be split. */
  readonly need: Quantity;
  readonly why: Why;
}

/** The part of a dish that its servings follow from. */
export type ServedDish = Pick<
  EventDish,
  'perGuest' | 'counts' | 'overage' | 'chosenBy' | 'portions' | 'demand' | 'hotDay'
>;

/**
 * Counted guests × per-guest amount × (1 + what a hot day adds) × (1 + overage), exact, then up to a whole unit for what is counted: pieces,
 * cans, loaves, bowls, servings cannot be split; weights and volumes are not rounded here. Where a risk of running
 * short was chosen, the helpings that keep it stand in place of guests, amount and overage.
 */
export function servingsOf(dish: ServedDish, guests: Guests, measures: MeasureSystem): Servings {
  const { counted, base, carried, need } = amountsOf(dish, guests);
  return { counted, base, need, why: whyOf(dish, guests, measures, counted, base, carried, need) };
}

/** What `servingsOf` comes to, without its why: for asking at many counts. */
export function servedAmount(dish: ServedDish, guests: Guests): Quantity {
  return amountsOf(dish, guests).need;
}

function amountsOf(
  dish: ServedDish,
  guests: Guests,
): Pick<Servings, 'counted' | 'base' | 'need'> & { readonly carried: Quantity } {
  const counted = countedFor(dish, guests);
  const base = forGuests(dish.perGuest, counted);
  const { helpings, helping } = dish.demand ?? {};
  const carried =
    helping && helpings !== undefined
      ? amountOfHelpings(helping, helpings)
      : timesQuantity(base, dish.overage.add(1n).mul((dish.hotDay?.more ?? NOTHING).add(1n)));
  const need = unitKind(carried.unit) === 'count' ? { ...carried, amount: carried.amount.ceil() } : carried;
  return { counted, base, carried, need };
}

/** Guests of a dish: those its portions are for, those who chose it, else those its counts count, each group by its weight. */
export function countedFor(dish: ServedDish, guests: Guests): Fraction {
  if (dish.portions) return dish.portions.guests;
  if (dish.chosenBy !== undefined) return new Fraction(BigInt(dish.chosenBy));
  const { over, under } = countGuests(guests, dish.counts);
  return new Fraction(over, under);
}

function whyOf(
  dish: ServedDish,
  guests: Guests,
  measures: MeasureSystem,
  counted: Fraction,
  base: Quantity,
  carried: Quantity,
  whole: Quantity,
): Why {
  const { amount, guests: shared } = dish.perGuest;
  const people = isForCrew(dish)
    ? statement('why.people', { n: counted.valueOf(), count: guestNumber(counted) })
    : guestsSaid(counted);
  const measured = (q: Quantity, last: boolean) => (last ? comesToMeasured(q, measures) : comesTo(q));
  const plain = dish.overage.n === 0n;
  const hot = hotDayOf(dish, base);
  const { demand } = dish;
  const upToWhole = whole.amount.equals(carried.amount)
    ? []
    : [statement('why.up-to-whole', { amount: plainAmount(carried), whole: plainAmount(whole) })];
  if (demand?.helpings !== undefined)
    return [
      ...countedWhy(dish, guests),
      ...demand.why,
      statement('why.helpings-each', {
        helpings: helpingsSaid(demand.helpings),
        helping: plainAmount(demand.helping),
        result: comesToMeasured(carried, measures),
      }),
      ...upToWhole,
    ];
  const each = { guests: people, amount: plainAmount(amount), result: measured(base, plain && !hot) };
  const overage = {
    amount: plainAmount(hot?.amount ?? base),
    share: percent(dish.overage),
    result: measured(carried, true),
  };
  return [
    ...countedWhy(dish, guests),
    shared === 1n
      ? statement('why.per-guest', each)
      : statement('why.per-guest-shared', { ...each, shared: String(shared) }),
    ...(hot ? [statement('why.hot-day', { ...hot.values, result: measured(hot.amount, plain) })] : []),
    ...(plain ? [] : [statement('why.overage', overage)]),
    ...upToWhole,
  ];
}

/** Whether nobody at the table is counted: the people are those who work there. */
function isForCrew({ counts }: ServedDish): boolean {
  return counts.adults === undefined && counts.children === undefined && counts.staff !== undefined;
}

/** What a hot day makes of the base; undefined on any other. */
function hotDayOf({ hotDay }: ServedDish, base: Quantity) {
  if (!hotDay) return undefined;
  const { more, high } = hotDay;
  const values = { amount: plainAmount(base), share: percent(more), high: temperatureText(high) };
  return { values, amount: timesQuantity(base, more.add(1n)) };
}

/** Who the guests of a dish are, where that is not plain from their number. */
export function countedWhy(dish: ServedDish, guests: Guests): Why {
  if (dish.portions) return dish.portions.why;
  if (isForCrew(dish)) return [];
  const people = guestsSaid(countedFor(dish, guests));
  if (dish.chosenBy !== undefined) return [statement('why.chosen', { guests: people })];
  const groups = GUEST_GROUPS.filter((group) => dish.counts[group] !== undefined && guests[group] > 0);
  const weighted = groups.some((group) => dish.counts[group] !== '1');
  if (groups.length < 2 && !weighted) return [];
  const parts = groups.map((group): Statement => {
    const weight = dish.counts[group] as string;
    const people = statement(GROUP_WORDS[group], { n: guests[group], count: String(guests[group]) });
    return weight === '1'
      ? people
      : statement('why.group-at', { group: people, weight: mixedNumberText(new Fraction(weight)) });
  });
  return [statement('why.groups', { groups: several('plus', parts), guests: people })];
}
