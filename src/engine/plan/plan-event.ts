import Fraction from 'fraction.js';
import { allergensOf } from '../food/allergens-of.ts';
import { roundBatches } from '../food/batches.ts';
import { dietsOf } from '../food/diets-of.ts';
import { doneEarlier } from '../food/earlier-recipe.ts';
import { type Explosion, explode, type UnitGap } from '../food/explode.ts';
import { convertFinishedFood } from '../food/finished-food.ts';
import { type CallChanged, recipeCalled } from '../food/recipe-called.ts';
import { partsFirst } from '../food/walk.ts';
import type { Kitchen } from '../kitchen/kitchen.ts';
import { type Quantity, timesQuantity } from '../measure/quantity.ts';
import { guestNeeds } from '../menu/guest-needs.ts';
import { type Money, sum } from '../money/money.ts';
import type { PriceList } from '../purchase/price-list.ts';
import { statement } from '../text/statement.ts';
import { amountFindings } from './amount-findings.ts';
import { containersFor } from './containers/containers.ts';
import { separateContainers } from './containers/separate-containers.ts';
import { planDays } from './days/days.ts';
import { withDemands } from './demand/demands.ts';
import { oddsOfDish } from './demand/odds-of-dish.ts';
import { plannedDrinks } from './drinks/planned-drinks.ts';
import { withDrinkSupplies } from './drinks/supplies.ts';
import type { EventDish, EventInput } from './event-input.ts';
import type { EventPlan, PlanFinding, PlannedDish } from './event-plan.ts';
import { comesTo, plainAmount, unitsText } from './figure-text.ts';
import { planPurchases } from './purchases/purchases.ts';
import { plannedRecipe } from './recipes.ts';
import { safetyFindings } from './safety/findings.ts';
import { keepingFindings } from './safety/keeping.ts';
import { besideDishes } from './servings/beside-dishes.ts';
import { coverageOf, servedCourses } from './servings/coverage.ts';
import { coverageFindings } from './servings/coverage-findings.ts';
import { partDishes } from './servings/portions.ts';
import { type Servings, servingsOf } from './servings/servings.ts';

/** What planning needs to know of the kitchen. */
export type PlanningKitchen = Pick<Kitchen, 'measures' | 'currency' | 'locale' | 'containers' | 'foodSafety'>;

/**
 * Plans one event: servings of each dish, batches of each recipe, purchases, containers and days, each figure
 * with its why. Amounts are exact; they are rounded in three places only, each time up: to whole units of what
 * cannot be split (`servingsOf`), to batches (`roundBatches`), to whole packs (`choosePacks`). What could not be
 * calculated is a finding, never a guess. Throws where a recipe contains itself, which the Book refuses.
 */
export function planEvent(asked: EventInput, kitchen: PlanningKitchen, prices: PriceList): EventPlan {
  const input = { ...asked, ...asDone(asked) };
  const needs = guestNeeds(input.needs, input.guests, input.noMeat);
  const split = partDishes(input.dishes, input.guests, needs);
  const called = split.dishes.map((dish) => calledSeparately(dish, input.callChanged));
  const demanded = withDemands(called, input.guests, needs, input.attendance);
  const crew = input.crewDishes ?? [];
  const servings = [...demanded.dishes, ...crew].map((dish) => ({
    dish,
    ...servingsOf(dish, input.guests, kitchen.measures),
  }));
  const explosion = explode(
    servings.map(({ dish, need }) => ({ recipe: dish.recipe, need, by: dish.name })),
    roundBatches,
  );
  const dishes = servings.map((each) => planDish(each, explosion, input, kitchen, prices));
  const forCrew = new Set(crew);
  const [crewMeals, plannedDishes] = [true, false].map((isCrew) =>
    dishes.map(({ dish }) => dish).filter(({ dish }) => forCrew.has(dish) === isCrew),
  ) as [PlannedDish[], PlannedDish[]];
  const recipes = explosion.recipes.map((each) => plannedRecipe(each, kitchen.measures));
  const cooked = explosion.recipes.map(({ recipe }) => recipe);
  const { drinks, findings: drinkFindings } = plannedDrinks(demanded.dishes, input.guests, input.drinks);
  const { purchases, findings, complete } = planPurchases(
    withDrinkSupplies(explosion.ingredients, drinks, input.drinks),
    prices,
    input.buyingDay,
    kitchen,
  );
  const made = new Set(cooked.map(({ id }) => id));
  const planned = new Set(
    servings.flatMap(({ dish, need }) => (need.amount.n > 0n && made.has(dish.recipe.id) ? [dish] : [])),
  );
  const coverage = coverageOf(servedCourses(input.style, demanded.dishes), needs, (dish) =>
    planned.has(dish),
  );
  const served = new Set([...called, ...crew].map(({ recipe }) => recipe.id));
  const apart = called.flatMap(({ recipe, portions }) => (portions?.apart ? [recipe] : []));
  const costs = purchases.map(({ cost }) => cost);
  const priced = costs.filter((cost): cost is Money => cost !== null);
  const known = complete && explosion.gaps.length === 0 && priced.length === costs.length;
  return {
    input,
    dishes: plannedDishes,
    beside: besideDishes([...plannedDishes, ...crewMeals], recipes, input.lines, kitchen.containers),
    crewMeals,
    courseOdds: demanded.courses,
    drinks,
    recipes,
    purchases,
    coverage,
    days: planDays(recipes, input.date, new Set(partsFirst(apart).map(({ id }) => id))),
    foodCost: known ? sum(priced, kitchen.currency) : null,
    findings: [
      ...split.findings,
      ...demanded.findings,
      ...coverageFindings(coverage, input),
      ...explosion.gaps.map(gapFinding),
      ...dishes.flatMap((each) => each.findings),
      ...amountFindings([...called, ...crew]),
      ...drinkFindings,
      ...findings,
      ...keepingFindings(cooked, served, input.date, kitchen.foodSafety.limits['date mark'].days),
      ...safetyFindings(cooked, served, input.away, kitchen),
    ],
    foodSafety: kitchen.foodSafety,
    measures: kitchen.measures,
  };
}

/** A dish that is made separately, with how it differs in its name. */
function calledSeparately(dish: EventDish, call: CallChanged): EventDish {
  const { apart } = dish.portions ?? {};
  return apart
    ? { ...dish, name: call(dish.name, apart.changes), recipe: recipeCalled(dish.recipe, call) }
    : dish;
}

/** An event's dishes, with what is done earlier on the day it is done. */
function asDone({ dishes, crewDishes, earlier = [] }: EventInput): Pick<EventInput, 'dishes' | 'crewDishes'> {
  const days = new Map(earlier.map((work) => [work.recipe, work.days ?? 1]));
  const all = (each: readonly EventDish[]) =>
    days.size === 0 ? each : each.map((dish) => ({ ...dish, recipe: doneEarlier(dish.recipe, days) }));
  return { dishes: all(dishes), ...(crewDishes && { crewDishes: all(crewDishes) }) };
}

function planDish(
  { dish, counted, base, need, why }: Servings & { dish: EventDish },
  explosion: Explosion,
  { lines, buyingDay }: EventInput,
  kitchen: PlanningKitchen,
  prices: PriceList,
): { dish: PlannedDish; findings: PlanFinding[] } {
  const { recipe } = dish;
  const asMade = convertFinishedFood(recipe, need, recipe.makes[0].unit);
  const finished = asMade ? finishedAmount(asMade, explosion, recipe.id) : need;
  const apart = dish.portions?.apart ? dish.portions : undefined;
  const packed = containersFor(recipe, finished, apart ? 1 : lines, kitchen.containers);
  const containers = apart ? separateContainers(apart, finished, packed.containers) : packed.containers;
  const { contains, mayContain, unsaid } = allergensOf(recipe);
  const { demand } = dish;
  const cooked =
    asMade && need.amount.n > 0n ? timesQuantity(need, finished.amount.div(asMade.amount)) : need;
  const { costs, firstChoice } = dish.takeRate ?? {};
  const setting = { recipe, costs, need, cooked, containers, firstChoice: firstChoice !== undefined };
  const odds = demand && oddsOfDish({ ...setting, demand }, prices, buyingDay, kitchen);
  return {
    findings: packed.findings,
    dish: {
      dish,
      counted,
      base,
      need,
      needAsMade: asMade ?? need,
      containers,
      contains,
      mayContain,
      unsaid: unsaid.map((path) => path.at(-1) as string),
      diets: dietsOf(recipe),
      ...(odds && { odds }),
      why:
        asMade && asMade.unit !== need.unit
          ? [...why, statement('why.same', { amount: plainAmount(need), result: comesTo(asMade) })]
          : why,
    },
  };
}

/** The dish's share of what its batches make: what rounding up to batches adds is carried along. */
function finishedAmount(asMade: Quantity, explosion: Explosion, id: string): Quantity {
  const cooked = explosion.recipes.find(({ recipe }) => recipe.id === id);
  if (!cooked || cooked.need.amount.n === 0n) return asMade;
  return timesQuantity(asMade, new Fraction(cooked.makes.amount.div(cooked.need.amount)));
}

function gapFinding({ by, recipe, need, unit }: UnitGap): PlanFinding {
  return {
    about: recipe.id,
    what: statement('found.made-in-other', {
      user: by,
      amount: plainAmount(need),
      recipe: recipe.name,
      units: unitsText(unit),
    }),
    wayOut: statement('found.add-makes', {
      units: unitsText(need.unit),
      makes: plainAmount(recipe.makes[0]),
    }),
  };
}
