import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import { moneyText } from '../../engine/money/money.ts';
import type { CourseOdds } from '../../engine/odds/course-odds.ts';
import type { OddsAt } from '../../engine/odds/dish-odds.ts';
import { riskSaid } from '../../engine/odds/risk.ts';
import { oddsSaid } from '../../engine/odds/shortage.ts';
import { expectedText, ODDS_LIMITS } from '../../engine/plan/demand/odds-text.ts';
import { oddsWhy } from '../../engine/plan/demand/odds-why.ts';
import type { EventPlan, PlannedDish } from '../../engine/plan/event-plan.ts';
import type { PlanCourseOdds, PlanDishOdds, PlanOdds, PlanOddsAt } from '../form/odds.ts';
import { amountText } from '../words/amount-text.ts';
import { type SayStatement, statementsIn } from '../words/statement-text.ts';

/** How likely the dishes of a plan run short, as the document says it; undefined where no dish says how it is taken. */
export function planOdds(
  { dishes, courseOdds }: Pick<EventPlan, 'dishes' | 'courseOdds'>,
  kitchen: Pick<Kitchen, 'measures' | 'currency' | 'locale'>,
): PlanOdds | undefined {
  const inWords = statementsIn(kitchen.locale);
  const known = dishes.flatMap((dish) => dishOddsOf(dish, kitchen, inWords));
  if (known.length === 0) return undefined;
  return {
    limits: inWords(ODDS_LIMITS),
    dishes: known,
    courses: courseOdds.map((each) => courseOddsOf(each, inWords)),
  };
}

function dishOddsOf(
  { dish, odds }: PlannedDish,
  kitchen: Pick<Kitchen, 'measures' | 'currency' | 'locale'>,
  inWords: SayStatement,
): PlanDishOdds[] {
  if (!odds) return [];
  const system = kitchen.measures;
  const { demand, advice, cooked } = odds;
  const oneIn = dish.takeRate?.shortOneIn;
  const at = (each: OddsAt) => oddsAt(each, system, inWords);
  return [
    {
      course: dish.course,
      name: dish.name,
      recipe: dish.recipe.id,
      helping: amountText(demand.helping, system, 'at-least'),
      expected: expectedText(odds.expected),
      chosen: demand.helpings === undefined || oneIn === undefined ? '' : inWords(riskSaid(oneIn)),
      firstChoice: odds.firstChoice,
      planned: at(odds.planned),
      cooked: cooked && at(cooked),
      missing: expectedText(odds.missing),
      left: expectedText(odds.left),
      more: odds.more.map((each) => ({
        more: inWords(each.more),
        at: at(each),
        cost: each.cost ? moneyText(each.cost) : '',
      })),
      least: odds.least.map((each) => ({ risk: inWords(riskSaid(each.oneIn)), at: at(each) })),
      advice: advice && { at: at(advice), missing: advice.costs.missing, leftOver: advice.costs.leftOver },
      why: oddsWhy(odds, kitchen).map(inWords),
    },
  ];
}

function courseOddsOf(odds: CourseOdds, inWords: SayStatement): PlanCourseOdds {
  const { course, guests, helpings, apart, byGuest, why } = odds;
  return {
    course,
    guests,
    risk: inWords(riskSaid(odds.oneIn)),
    helpings,
    chance: chanceText(odds.shortOfAll),
    odds: inWords(oddsSaid(odds.shortOfAll)),
    apart,
    byGuest,
    why: why.map(inWords),
  };
}

function oddsAt(
  { amount, helpings, short }: OddsAt,
  system: MeasureSystem,
  inWords: SayStatement,
): PlanOddsAt {
  return {
    amount: amountText(amount, system, 'at-least'),
    helpings,
    chance: chanceText(short),
    odds: inWords(oddsSaid(short)),
  };
}

/** To six decimals: an appetite is known to far fewer. */
function chanceText(chance: number): string {
  return chance.toFixed(6);
}
