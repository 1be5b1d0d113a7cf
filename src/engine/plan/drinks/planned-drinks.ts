import Fraction from 'fraction.js';
import type { DrinkService } from '../../drinks/drink.ts';
import { warmthOf } from '../../drinks/drinks-habits.ts';
import { coolingIce, ICED_TO } from '../../drinks/ice.ts';
import { convertFinishedFood } from '../../food/finished-food.ts';
import type { Recipe } from '../../food/recipe.ts';
import { forGuests } from '../../measure/per-guest.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { temperatureText } from '../../measure/temperature.ts';
import { definedFactor } from '../../measure/units.ts';
import type { Guests } from '../../quote/counts.ts';
import { statement } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';
import type { PlanFinding } from '../event-plan.ts';
import { comesTo, plainAmount, plainNumber } from '../figure-text.ts';
import { countedFor, servedAmount } from '../servings/servings.ts';
import type { EventDrinks, EventWater } from './event-drinks.ts';
import { type PlannedDrink, pounds } from './planned-drink.ts';

/** The drinks of an event and what could not be calculated of them. */
export interface PlannedDrinks {
  readonly drinks: readonly PlannedDrink[];
  readonly findings: readonly PlanFinding[];
}

const NONE = new Fraction(0n);

/**
 * How many drinks of each kind guests take and the ice for them, from the same guests and amounts as its servings.
 * `dishes` are already split by need and know what guests will want of them.
 */
export function plannedDrinks(
  dishes: readonly EventDish[],
  guests: Guests,
  setting: EventDrinks | undefined,
): PlannedDrinks {
  if (!setting) return { drinks: [], findings: [] };
  const drinks: PlannedDrink[] = [];
  const findings: PlanFinding[] = [];
  for (const dish of dishes) {
    if (!dish.drink) continue;
    const carried = servedAmount(dish, guests);
    const planned = served(dish, dish.drink, dish.recipe, carried, guests, setting);
    if ('what' in planned) findings.push(planned);
    else drinks.push({ ...planned, dish });
  }
  for (const water of setting.waters) {
    const dish = waterDish(water, setting);
    const planned = served(dish, water, WATER, servedAmount(dish, guests), guests, setting);
    if (!('what' in planned)) drinks.push({ ...planned, dish: undefined });
  }
  return { drinks, findings };
}

/** Water is measured as it is poured, whatever its unit. */
const WATER: Pick<Recipe, 'id' | 'name' | 'makes'> = {
  id: 'water',
  name: '',
  makes: [{ amount: new Fraction(1n), unit: 'gal' }],
};

type WaterDish = Pick<EventDish, 'perGuest' | 'counts' | 'overage' | 'chosenBy' | 'hotDay'>;

function waterDish({ perGuest, counts, overage }: EventWater, { hotDay }: EventDrinks): WaterDish {
  return { perGuest, counts, overage, chosenBy: undefined, ...(hotDay && { hotDay }) };
}

function served(
  dish: WaterDish,
  drink: DrinkService,
  recipe: Pick<Recipe, 'id' | 'name' | 'makes'>,
  carried: Quantity,
  guests: Guests,
  { habits, high }: EventDrinks,
): Omit<PlannedDrink, 'dish'> | PlanFinding {
  const taken = convertFinishedFood(
    recipe,
    forGuests(dish.perGuest, countedFor(dish, guests)),
    drink.glass.unit,
  );
  const liters = drink.iceInTub ? convertFinishedFood(recipe, carried, 'l') : undefined;
  if (!taken || (drink.iceInTub && !liters)) return notMeasured(recipe, taken ? 'l' : drink.glass.unit);
  const drinks = taken.amount.div(drink.glass.amount).mul((dish.hotDay?.more ?? NONE).add(1n));
  const inGlasses = drink.iceInGlass ? inPounds(habits.perGlass).mul(drinks) : NONE;
  const warmth = warmthOf(high, habits);
  const inTubs = liters ? inPounds({ amount: coolingIce(liters.amount, warmth), unit: 'kg' }) : NONE;
  return {
    drink,
    drinks,
    carried,
    iceInGlasses: inGlasses,
    iceInTubs: inTubs,
    why: [
      statement('why.drinks', {
        amount: plainAmount(taken),
        glass: plainAmount(drink.glass),
        n: plainNumber(drinks),
        hot: dish.hotDay ? 'yes' : 'no',
      }),
      ...(drink.iceInGlass
        ? [
            statement('why.ice.glass', {
              n: plainNumber(drinks),
              each: plainAmount(habits.perGlass),
              result: comesTo(pounds(inGlasses)),
            }),
          ]
        : []),
      ...(liters
        ? [
            statement('why.ice.tub', {
              amount: plainAmount(carried),
              from: temperatureText(warmth),
              to: temperatureText(ICED_TO),
              result: comesTo(pounds(inTubs)),
            }),
          ]
        : []),
    ],
  };
}

function notMeasured({ id, name }: Pick<Recipe, 'id' | 'name'>, unit: string): PlanFinding {
  return {
    about: id,
    what: statement('found.drink-unmeasured', { drink: name, unit }),
    wayOut: statement('found.drink-unmeasured.way', { unit }),
  };
}

function inPounds({ amount, unit }: Quantity): Fraction {
  const factor = definedFactor(unit, 'lb');
  if (!factor) throw new Error(`ice is measured by weight, not by the ${unit}`);
  return amount.mul(factor);
}
