import type { ServiceStyle } from '../../course/service-style.ts';
import type { DrinkCounts } from '../../drinks/drink-counts.ts';
import { isAtPlace } from '../../food/recipe.ts';
import type { Kitchen } from '../../kitchen/kitchen.ts';
import { displayMoney } from '../../money/display-money.ts';
import { add, exactMoneyText, type Money, money, noMoney, roundToMinor, times } from '../../money/money.ts';
import { decimalOfFraction } from '../../purchase/price-fraction.ts';
import { addOnLines } from '../../quote/add-on-lines.ts';
import { parseAddOnPrice } from '../../quote/add-on-price.ts';
import { type Choice, entryOf } from '../../quote/choice.ts';
import type { Guests } from '../../quote/counts.ts';
import type { PricedLine } from '../../quote/priced-line.ts';
import type { QuoteLine } from '../../quote/quote.ts';
import { peopleFor, staffLines } from '../../quote/staff-lines.ts';
import type { AddOnTerms, PackageTerms, Terms } from '../../quote/terms.ts';
import { type Said, statement } from '../../text/statement.ts';
import type { KitchenHours } from '../clock/kitchen-presence.ts';
import type { RoleHours } from '../clock/presence.ts';
import { rentalsFor } from '../containers/service-ware.ts';
import { handsOnMinutes } from '../days/hands-on.ts';
import type { PlannedRecipe } from '../event-plan.ts';
import { betweenCost, prepCost } from './kitchen-costs.ts';
import { payFor } from './pay-for.ts';

/** What a cost is for. */
export type CostKind = 'food' | 'labour' | 'delivery' | 'rental' | 'add-on';

/** One cost of an event, at the minor unit; `amount` is null where it is not stated, and is never guessed. */
export interface CostLine {
  readonly key: string;
  readonly kind: CostKind;
  readonly label: Said;
  readonly amount: Money | null;
  /** A sentence, or as a line of a quote has it where it is calculated like one. */
  readonly why: Said | Pick<QuoteLine, 'why' | 'quantity' | 'unitPrice'> | PaidHours;
}

/** Pay for the hours that people are at work, whatever is sold. */
export interface PaidHours {
  readonly people: number;
  readonly hours: RoleHours;
  /** For one, per hour. */
  readonly pay: Money;
}

/** What food costs as it is bought. */
export interface FoodSpent {
  /** Whole packs; null while a food has no price. */
  readonly goods: Money | null;
  /** What suppliers take for bringing them. */
  readonly fees: Money;
}

/** What a kitchen says that costs depend on. */
export type CostKitchen = Pick<
  Kitchen,
  'currency' | 'locale' | 'staff' | 'crew' | 'day' | 'rentals' | 'counts' | 'addOns' | 'places'
>;

/** What costs are calculated by, the same at every count. */
export interface CostSetting {
  readonly terms: Terms;
  readonly chosen: PackageTerms;
  readonly style: ServiceStyle;
  readonly kitchen: CostKitchen;
  /** When each role is at work, the same at every count; left out where that is not known: then pay is for what is sold. */
  readonly hours?: readonly RoleHours[];
  /** What the kitchen’s crew gives to the event as planned; left out where that is not known: then only work is paid. */
  readonly kitchenHours?: KitchenHours;
}

/** What is done at an event for so many. */
export interface EventWork {
  readonly choice: Choice;
  readonly food: FoodSpent;
  /** Hands-on minutes of preparation. */
  readonly prepMinutes: number;
  /** What is packed per drink follows them. */
  readonly drinks: DrinkCounts;
}

/**
 * Every cost of an event for the guests planned: food in whole packs with its delivery, those who serve at their pay for
 * the hours they are at work, hands-on hours of preparation and of one who packs at the crew's pay, with the time between
 * tasks, the way there, rentals and add-ons. Each is rounded half-up to the minor unit once.
 */
export function costsOf(work: EventWork, setting: CostSetting): CostLine[] {
  const { guests } = work.choice;
  const { kitchen, kitchenHours } = setting;
  const own = [
    prepCost(work.prepMinutes, kitchen),
    betweenCost(kitchenHours, kitchen),
    deliveryCost(setting),
  ];
  return [
    ...foodCosts(work.food),
    ...serviceCosts(guests, setting),
    ...own.filter((line) => line !== null),
    ...rentalCosts(guests, work.drinks, setting),
    ...addOnCosts(work.choice, setting),
  ];
}

/** The sum of costs that are stated, of one kind or of all; null where food has no price, without which no sum means anything. */
export function spentOn(lines: readonly CostLine[], currency: string, kind?: CostKind): Money | null {
  const asked = lines.filter((line) => kind === undefined || line.kind === kind);
  if (asked.some((line) => line.kind === 'food' && line.amount === null)) return null;
  return asked.reduce((total, { amount }) => (amount ? add(total, amount) : total), noMoney(currency));
}

/**
 * Hands-on minutes before serving, those that count for a batch by the batches cooked. What is done at serving is
 * in the hours of those who serve.
 */
export function prepMinutesOf(recipes: readonly Pick<PlannedRecipe, 'recipe' | 'batches'>[]): number {
  let total = 0;
  for (const { recipe, batches } of recipes) {
    if (batches.n === 0n) continue;
    for (const step of recipe.steps) if (!isAtPlace(step)) total += handsOnMinutes(step, batches);
  }
  return total;
}

function foodCosts({ goods, fees }: FoodSpent): CostLine[] {
  return [
    {
      key: 'food',
      kind: 'food',
      label: statement('cost.food'),
      amount: goods,
      why: statement(goods ? 'cost.food.packs' : 'cost.food.no-price'),
    },
    {
      key: 'food-fees',
      kind: 'food',
      label: statement('cost.fees'),
      amount: fees,
      why: statement('cost.fees.each'),
    },
  ];
}

/** Each role's people for the hours they are at work; for those sold, as the bill has them, where that is not known. */
function serviceCosts(guests: Guests, { terms, chosen, kitchen, hours }: CostSetting): CostLine[] {
  const roles = terms.staff.filter(
    (role) => (role.packages?.includes(chosen.id) ?? true) && peopleFor(role, guests) > 0,
  );
  return roles.flatMap((role): CostLine[] => {
    const pay = kitchen.staff.get(role.role)?.pay;
    const present = hours?.find(({ sold }) => sold.role === role.role);
    if (pay !== undefined && present) return [paidHours(peopleFor(role, guests), present, pay, kitchen)];
    const [line] = staffLines({ ...terms, staff: [{ ...role, rate: pay ?? '0' }] }, chosen, guests);
    if (!line) return [];
    return [
      {
        key: line.key,
        kind: 'labour',
        label: statement('cost.pay', { role: role.name }),
        amount: pay === undefined ? null : line.amount,
        why: pay === undefined ? statement('cost.pay.no-role', { role: role.role }) : whyOf(line),
      },
    ];
  });
}

function paidHours(people: number, hours: RoleHours, pay: string, { currency }: CostKitchen): CostLine {
  const { sold } = hours;
  const hourly = money(pay, currency);
  return {
    key: `staff:${sold.role}`,
    kind: 'labour',
    label: statement('cost.pay', { role: sold.name }),
    amount: payFor(people * (hours.until - hours.from), hourly),
    why: { people, hours, pay: hourly },
  };
}

function whyOf({ why, quantity, unitPrice }: PricedLine): CostLine['why'] {
  return { why: why(), quantity, unitPrice: exactMoneyText(unitPrice) };
}

function deliveryCost({ terms, kitchen }: CostSetting): CostLine | null {
  const cost = kitchen.places.get(terms.place.id)?.deliveryCost;
  if (cost === undefined && terms.delivery === null) return null;
  const label = statement('cost.delivery', { place: terms.place.name });
  const line = { key: 'delivery', kind: 'delivery' as const, label };
  return cost === undefined
    ? {
        ...line,
        amount: null,
        why: statement('cost.delivery.not-stated'),
      }
    : {
        ...line,
        amount: roundToMinor(money(cost, kitchen.currency)),
        why: statement('cost.delivery.stated'),
      };
}

/** Only rentals that say what a piece costs: others may be the kitchen's own. */
function rentalCosts(guests: Guests, drinks: DrinkCounts, { style, kitchen }: CostSetting): CostLine[] {
  const { currency, locale } = kitchen;
  return rentalsFor(kitchen, style, guests, drinks).flatMap(({ rental, count }): CostLine[] => {
    if (rental.cost === undefined || count.amount.n === 0n) return [];
    const each = money(rental.cost, currency);
    const amount = roundToMinor(times(each, decimalOfFraction(count.amount)));
    const why = statement('cost.rental', { n: count.amount.valueOf(), each: displayMoney(each, locale) });
    return [{ key: `rental:${rental.id}`, kind: 'rental', label: rental.name, amount, why }];
  });
}

/** Add-ons taken: at their own cost where it is stated; food that comes with one is among the food already. */
function addOnCosts(choice: Choice, { terms, chosen, kitchen }: CostSetting): CostLine[] {
  const { currency } = kitchen;
  return terms.addOns.flatMap((sold): CostLine[] => {
    if ((entryOf(choice.addOns, sold.id) ?? 0) <= 0) return [];
    const label = statement('cost.add-on', { name: sold.name });
    const line = { key: `add-on:${sold.id}`, kind: 'add-on' as const, label };
    const cost = kitchen.addOns.get(sold.id)?.cost;
    if (cost === undefined) {
      if (sold.dishes && sold.dishes.length > 0) return [];
      return [{ ...line, amount: null, why: statement('cost.add-on.not-stated') }];
    }
    const price = parseAddOnPrice(cost, currency);
    if (!price.ok)
      throw new Error(`the add-on ${sold.id} was linked with a cost that is none: ${price.what}`);
    const { guests: _, ...rest } = sold;
    const costed: AddOnTerms = { ...rest, ...price.value };
    const [bought] = addOnLines({ ...terms, addOns: [costed] }, chosen, choice);
    return bought ? [{ ...line, amount: bought.amount, why: whyOf(bought) }] : [];
  });
}
