import { Decimal } from '../../money/decimal.ts';
import { add, type Money, noMoney, roundToMinor, subtract } from '../../money/money.ts';
import { costOfNeeds } from '../../purchase/food-cost.ts';
import type { PriceList } from '../../purchase/price-list.ts';
import type { Choice } from '../../quote/choice.ts';
import { quote } from '../../quote/quote.ts';
import { drinkCounts } from '../drinks/drinks-plan.ts';
import type { EventInput } from '../event-input.ts';
import type { OrderedPlan } from '../purchases/ordered.ts';
import { servedAmount } from '../servings/servings.ts';
import type { MoneySetting } from './at.ts';
import { type CostLine, costsOf, prepMinutesOf, spentOn } from './costs.ts';
import { type Revenue, revenueOf } from './revenue.ts';

/** What the food of an event costs, from four sides; all at the minor unit. */
export interface FoodMoney {
  /** What the amounts needed cost at the rates of the packs bought, stock included; null while a price is missing. */
  readonly used: Money | null;
  /** The whole packs of the event's order; null as above. */
  readonly bought: Money | null;
  readonly fees: Money;
  /** What is left of the packs, at their rates. */
  readonly left: Money;
  /** What comes from the store-room, at the rates of the packs: paid for earlier. */
  readonly stock: Money;
}

/** Shares of what is earned; null where one side is not known or nothing is earned. */
export interface MoneyShares {
  /** Food as planned, of the food and drink lines of the bill before discount. */
  readonly foodUsed: Decimal | null;
  /** Food as bought, with fees, of the same. */
  readonly foodBought: Decimal | null;
  /** Labour that is stated, of all that is earned. */
  readonly labour: Decimal | null;
  readonly margin: Decimal | null;
}

/** What an event earns and costs as it stands. */
export interface EventMoney {
  readonly revenue: Revenue;
  readonly costs: readonly CostLine[];
  readonly food: FoodMoney;
  readonly labour: Money;
  /** All costs that are stated; null while a food has no price. */
  readonly spent: Money | null;
  /** What is earned less what is spent. */
  readonly margin: Money | null;
  /** The same with food as planned in the place of whole packs: what it is when all that is left over is used. */
  readonly marginUsed: Money | null;
  readonly shares: MoneyShares;
}

/**
 * The money of an event: what is billed, net of tax, against its costs for the guests planned, food as its joint
 * order buys it. What is not stated is a line without a sum and is in no total.
 */
export function eventMoney(plan: OrderedPlan, billed: Choice, setting: MoneySetting): EventMoney {
  const { terms, choice, kitchen } = setting;
  const { currency } = kitchen;
  const food = foodMoney(plan, currency);
  const revenue = revenueOf(quote(terms, billed), terms);
  const work = {
    choice,
    food: { goods: food.bought, fees: food.fees },
    prepMinutes: prepMinutesOf(plan.recipes),
    drinks: drinkCounts(plan.drinks),
  };
  const costs = costsOf(work, setting);
  const spent = spentOn(costs, currency);
  const margin = spent && subtract(revenue.net, spent);
  const labour = spentOn(costs, currency, 'labour') ?? noMoney(currency);
  return {
    revenue,
    costs,
    food,
    labour,
    spent,
    margin,
    marginUsed: margin && food.bought && food.used && add(margin, subtract(food.bought, food.used)),
    shares: {
      foodUsed: shareOf(food.used, revenue.food),
      foodBought: shareOf(food.bought && add(food.bought, food.fees), revenue.food),
      labour: shareOf(labour, revenue.net),
      margin: shareOf(margin, revenue.net),
    },
  };
}

/**
 * What the meals of the crew cost by themselves, at the lowest rates on offer: a part of the food. Undefined where
 * no dish counts staff, null where it cannot be calculated. Dishes that each guest chooses are not distinguished by who
 * eats them and are left out.
 */
export function staffMealsCost(
  { dishes, crewDishes = [], guests, buyingDay }: EventInput,
  prices: PriceList,
  currency: string,
): Money | null | undefined {
  const shared = [
    ...dishes.filter((dish) => dish.counts.staff !== undefined && dish.chosenBy === undefined),
    ...crewDishes,
  ];
  if (shared.length === 0 || guests.staff === 0) return undefined;
  const alone = { adults: 0, children: 0, vendors: 0, staff: guests.staff };
  const needs = shared.map((dish) => ({
    recipe: dish.recipe,
    need: servedAmount(dish, alone),
    by: dish.name,
  }));
  const { amount, unpriced } = costOfNeeds(needs, prices, buyingDay);
  return unpriced.length > 0 ? null : roundToMinor({ amount, currency });
}

function foodMoney({ order, foodCost, purchases }: OrderedPlan, currency: string): FoodMoney {
  const known = foodCost !== null;
  let left = noMoney(currency);
  let stock = noMoney(currency);
  for (const { used, leftWorth, cost, stock: taken } of purchases) {
    if (leftWorth) left = add(left, leftWorth);
    if (!taken || !used || !cost) continue;
    const worth = subtract(leftWorth ? add(used, leftWorth) : used, cost);
    stock = add(stock, roundToMinor(worth));
  }
  return {
    used: known ? order.used : null,
    bought: known ? order.goods : null,
    fees: order.fees,
    left,
    stock,
  };
}

function shareOf(part: Money | null, whole: Money): Decimal | null {
  return part && whole.amount.gt(0) ? new Decimal(part.amount).div(whole.amount) : null;
}
