import Fraction from 'fraction.js';
import type { Day } from '../../calendar/day.ts';
import { convertFinishedFood } from '../../food/finished-food.ts';
import type { Recipe } from '../../food/recipe.ts';
import type { Kitchen } from '../../kitchen/kitchen.ts';
import { addQuantities, type Quantity, timesQuantity } from '../../measure/quantity.ts';
import { type MeasureSystem, unitKind } from '../../measure/units.ts';
import { type Money, money, roundToMinor, times } from '../../money/money.ts';
import { expected } from '../../odds/chances.ts';
import type { DishDemand } from '../../odds/dish-demand.ts';
import type { DishOdds, OddsAt, OddsMore } from '../../odds/dish-odds.ts';
import { amountOfHelpings, helpingsIn } from '../../odds/helpings.ts';
import {
  balancedHelpings,
  chanceOfShortage,
  expectedLeft,
  expectedShort,
  leastHelpings,
} from '../../odds/shortage.ts';
import type { HelpingCosts } from '../../odds/take-rate.ts';
import { costOfNeeds } from '../../purchase/food-cost.ts';
import { decimalOfFraction } from '../../purchase/price-fraction.ts';
import type { PriceList } from '../../purchase/price-list.ts';
import { type Statement, statement } from '../../text/statement.ts';
import type { PlannedContainer } from '../event-plan.ts';
import { batchesSaid } from '../figure-text.ts';

/** What the odds of one dish are calculated from. */
export interface OddsSetting {
  readonly recipe: Recipe;
  readonly demand: DishDemand;
  readonly firstChoice: boolean;
  readonly costs: HelpingCosts | undefined;
  readonly need: Quantity;
  /** The need with its part of what rounding up to batches adds, in the same unit. */
  readonly cooked: Quantity;
  readonly containers: readonly PlannedContainer[];
}

/** The risks whose amounts are told beside a chosen one, each one event in so many. */
const USUAL_RISKS = [20, 50, 100] as const;

/** How likely a dish runs short as planned and as cooked, and what more or less of it would do. */
export function oddsOfDish(
  setting: OddsSetting,
  prices: PriceList,
  day: Day,
  kitchen: Pick<Kitchen, 'currency' | 'measures'>,
): DishOdds {
  const { demand, need, cooked, costs } = setting;
  const { chances } = demand;
  const at = (amount: Quantity): OddsAt => {
    const helpings = helpingsIn(amount, demand.helping);
    return { amount, helpings, short: chanceOfShortage(chances, helpings) };
  };
  const planned = at(need);
  const made = at(cooked);
  const ofHelpings = (helpings: number) => at(wholeUnits(amountOfHelpings(demand.helping, helpings)));
  const balanced = costs && balancedHelpings(chances, Number(costs.missing), Number(costs.leftOver));
  return {
    demand,
    firstChoice: setting.firstChoice,
    expected: expected(chances),
    planned,
    cooked: made.helpings > planned.helpings ? made : null,
    missing: expectedShort(chances, made.helpings),
    left: expectedLeft(chances, made.helpings),
    more: moreOf(setting, kitchen.measures, made, at, helpingCost(setting, prices, day, kitchen.currency)),
    least: setting.firstChoice
      ? []
      : USUAL_RISKS.map((oneIn) => ({ oneIn, ...ofHelpings(leastHelpings(chances, 1 / oneIn)) })),
    advice: costs && balanced !== undefined ? { ...ofHelpings(balanced), costs } : null,
  };
}

function moreOf(
  { recipe, demand, need, cooked, containers }: OddsSetting,
  measures: MeasureSystem,
  made: OddsAt,
  at: (amount: Quantity) => OddsAt,
  cost: Money | null,
): OddsMore[] {
  const { unit } = need;
  const helping = wholeUnits(amountOfHelpings(demand.helping, made.helpings + 1));
  const pan = containers.find(({ stage, container }) => stage === 'carry' && container !== 'own');
  const line = pan ?? containers.find(({ stage }) => stage === 'serve');
  const inLine = line && convertFinishedFood(recipe, line.each, unit);
  const share = recipe.batches === 'half' ? new Fraction(1n, 2n) : new Fraction(1n);
  const batch = convertFinishedFood(recipe, timesQuantity(recipe.makes[0], share), unit);
  const amounts: [Statement, Quantity][] = [
    [statement('why.more.helping'), helping],
    ...(line && inLine
      ? [
          [
            statement('why.more.container', { container: line.containerName }),
            addQuantities(cooked, inLine),
          ] as [Statement, Quantity],
        ]
      : []),
    ...(batch
      ? [
          [
            statement('why.more.batch', { batches: batchesSaid(share, measures) }),
            addQuantities(cooked, batch),
          ] as [Statement, Quantity],
        ]
      : []),
  ];
  return amounts.map(([more, amount]) => {
    const extra = amount.amount.sub(cooked.amount).div(demand.helping.amount);
    return { more, ...at(amount), cost: cost && roundToMinor(times(cost, decimalOfFraction(extra))) };
  });
}

/** What one helping costs, unrounded. */
function helpingCost(
  { recipe, demand }: OddsSetting,
  prices: PriceList,
  day: Day,
  currency: string,
): Money | null {
  const { amount, unpriced } = costOfNeeds([{ recipe, need: demand.helping, by: recipe.name }], prices, day);
  return unpriced.length > 0 ? null : money(amount, currency);
}

function wholeUnits(amount: Quantity): Quantity {
  return unitKind(amount.unit) === 'count' ? { ...amount, amount: amount.amount.ceil() } : amount;
}
