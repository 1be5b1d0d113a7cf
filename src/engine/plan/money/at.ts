import { roundBatches } from '../../food/batches.ts';
import { explode } from '../../food/explode.ts';
import { guestNeeds } from '../../menu/guest-needs.ts';
import { type Money, subtract } from '../../money/money.ts';
import { type Choice, choosers } from '../../quote/choice.ts';
import { quote } from '../../quote/quote.ts';
import { choiceAtCount, shareOut } from '../../quote/scaled-choice.ts';
import { withDemands } from '../demand/demands.ts';
import { drinkCounts } from '../drinks/drinks-plan.ts';
import { plannedDrinks } from '../drinks/planned-drinks.ts';
import { withDrinkSupplies } from '../drinks/supplies.ts';
import type { EventDish, EventInput } from '../event-input.ts';
import { partDishes } from '../servings/portions.ts';
import { servedAmount } from '../servings/servings.ts';
import { type CostSetting, costsOf, type EventWork, prepMinutesOf, spentOn } from './costs.ts';
import { type BuyerSetting, foodBuyer } from './food.ts';
import { netTotal } from './revenue.ts';

/** What an event brings in and costs at one count of guests. All at the minor unit. */
export interface MoneyPoint {
  /** Guests at the table: adults and children, a child as one. */
  readonly guests: number;
  /** What is billed, net of tax. */
  readonly revenue: Money;
  readonly food: Money;
  readonly labour: Money;
  /** The way, rentals and add-ons. */
  readonly other: Money;
  /** Revenue less everything that is stated. */
  readonly margin: Money;
}

/** An event and all that its money depends on. */
export interface MoneySetting extends CostSetting {
  /** As planned. */
  readonly input: EventInput;
  /** What is planned for; other counts are scaled from it. */
  readonly choice: Choice;
  readonly buying: BuyerSetting;
}

/**
 * Says what an event would bring in and cost at any count, by quoting and planning it at that count: price tiers,
 * minimums, whole people who serve, whole units, batches and packs are all those of that count. Adults make up the
 * difference; children, vendors, staff, needs and add-ons stay, and mains keep their proportions. What is billed is
 * what the terms say for that count, without the contract's floor. Null where food has no price or measure.
 */
export function moneyAt(setting: MoneySetting): (guests: number) => MoneyPoint | null {
  const buyer = foodBuyer(setting.buying);
  const { terms, chosen, kitchen, choice } = setting;
  const { currency } = kitchen;
  return (guests) => {
    const scaled = choiceAtCount(chosen, choice, guests);
    const costs = costsOf({ choice: scaled, ...cookedFor(scaled, setting, buyer) }, setting);
    const spent = spentOn(costs, currency);
    const [eaten, labour] = [spentOn(costs, currency, 'food'), spentOn(costs, currency, 'labour')];
    if (!spent || !eaten || !labour) return null;
    const revenue = netTotal(quote(terms, scaled));
    return {
      guests,
      revenue,
      food: eaten,
      labour,
      other: subtract(subtract(spent, eaten), labour),
      margin: subtract(revenue, spent),
    };
  };
}

function cookedFor(
  choice: Choice,
  { input, chosen }: MoneySetting,
  buyer: ReturnType<typeof foodBuyer>,
): Pick<EventWork, 'food' | 'prepMinutes' | 'drinks'> {
  const { guests } = choice;
  const dishes = dishesFor(input.dishes, chosen, guests);
  const said = guestNeeds(input.needs, guests, input.noMeat);
  const split = partDishes(dishes, guests, said).dishes;
  const demanded = withDemands(split, guests, said, input.attendance).dishes;
  const needs = [...demanded, ...(input.crewDishes ?? [])].map((dish) => ({
    recipe: dish.recipe,
    need: servedAmount(dish, guests),
    by: dish.name,
  }));
  const explosion = explode(needs, roundBatches);
  const { drinks } = plannedDrinks(demanded, guests, input.drinks);
  const bought = buyer(withDrinkSupplies(explosion.ingredients, drinks, input.drinks));
  const food = explosion.gaps.length === 0 ? bought : { ...bought, goods: null };
  return { food, prepMinutes: prepMinutesOf(explosion.recipes), drinks: drinkCounts(drinks) };
}

/** The dishes with the guests who chose each in proportion, where each guest takes one of a course. */
function dishesFor(
  dishes: readonly EventDish[],
  chosen: CostSetting['chosen'],
  guests: Choice['guests'],
): EventDish[] {
  const shares = new Map<EventDish, number>();
  for (const course of chosen.courses.filter(({ eachGuest }) => eachGuest)) {
    const own = dishes.filter((dish) => dish.course === course.name && dish.chosenBy !== undefined);
    const counts = shareOut(
      choosers(course, guests),
      own.map(({ chosenBy }) => chosenBy ?? 0),
    );
    for (const [index, dish] of own.entries()) shares.set(dish, counts[index] ?? 0);
  }
  return dishes.map((dish) => {
    const chosenBy = shares.get(dish);
    return chosenBy === undefined ? dish : { ...dish, chosenBy };
  });
}
