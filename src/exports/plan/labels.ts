import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import { ingredientsByWeight } from '../../engine/food/label-order.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { scaleOf } from '../../engine/measure/temperature.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { ThrowAway } from '../../engine/plan/clock/throw-away.ts';
import { isSealed } from '../../engine/plan/containers/separate-containers.ts';
import { cookedDishes } from '../../engine/plan/cooked-dishes.ts';
import type { EventDish } from '../../engine/plan/event-input.ts';
import type { EventPlan, PlannedDish } from '../../engine/plan/event-plan.ts';
import { countedDrink } from '../../engine/plan/load/counted-drink.ts';
import { type EventLoad, eventLoad } from '../../engine/plan/load/event-load.ts';
import { carriedIn, type PackedFood } from '../../engine/plan/load/packed-food.ts';
import { dateMark } from '../../engine/safety/date-mark.ts';
import { leavesRaw } from '../../engine/safety/leaves-raw.ts';
import { travelsAs } from '../../engine/safety/travels-as.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { PlanLabel } from '../form/sheets.ts';
import type { PlanSeat } from '../form/tables.ts';
import { NOT_ALL_KNOWN } from '../words/allergen-as-read.ts';
import { amountText } from '../words/amount-text.ts';
import { dateText } from '../words/date-text.ts';
import { statementsIn } from '../words/statement-text.ts';
import { componentLabels, type LabelSetting, throwAwayBy } from './components.ts';
import { allergenNames } from './dish.ts';
import { finishWords } from './finish.ts';
import { planRaw, rawLast } from './raw.ts';
import { seatText } from './table-findings.ts';

/**
 * One label for each container that leaves the kitchen, `1 of 3`; a dish packed in nothing gets one all the same. What
 * is made separately names the guests it is for, as far as `seats` of the guest list say who they are. What travels beside a
 * dish, or is taken by a step at the place, has labels of its own, after those of the dishes; what leaves raw comes last.
 * Each names the carrier it goes into.
 */
export function planLabels(
  plan: EventPlan,
  kitchen: Pick<Kitchen, 'containers' | 'carriers' | 'measures' | 'allergenLaws' | 'locale'>,
  seats: readonly PlanSeat[],
  throwAways: readonly ThrowAway[] = [],
  load = eventLoad(plan, undefined, kitchen),
): PlanLabel[] {
  const { measures: system, allergenLaws: laws, locale } = kitchen;
  const setting = { plan, system, say: wordsIn(locale), inWords: statementsIn(locale), throwAways };
  const dishes = [...cookedDishes(plan), ...plan.beside].map((planned) => ({
    raw: leavesRaw(planned.dish.recipe, plan.foodSafety),
    labels: dishLabels(planned, laws, locale, seats, setting),
    // A dish that is made at the place is in no carrier; its urn or pan there has its label all the same.
    food: load.foods.find((each) => each.kind === 'dish' && each.planned === planned),
  }));
  const components = load.foods
    .filter((food) => food.kind === 'component')
    .map((food) => ({
      raw: food.raw,
      labels: componentLabels(food.component, laws, locale, setting),
      food,
    }));
  return rawLast([...dishes, ...components], ({ raw }) => raw).flatMap(({ labels, food }) =>
    labels.map((label, index) => ({
      ...label,
      ...(food && carrierOf(food, index, load, setting.say)),
    })),
  );
}

/** The number of the carrier that one container of a food goes into; nothing where it goes into none. */
function carrierOf(
  food: PackedFood,
  index: number,
  { loading }: EventLoad,
  say: Say,
): Pick<PlanLabel, 'carrier'> {
  const into = loading?.carriers.find(({ foods }) =>
    foods.some((each) => each.food === food && each.from <= index && index < each.from + each.count),
  );
  return into ? { carrier: say('labels.carrier', { n: String(into.number) }) } : {};
}

function dishLabels(
  planned: PlannedDish,
  laws: readonly AllergenLaw[],
  locale: string,
  seats: readonly PlanSeat[],
  { plan, system, say, inWords, throwAways }: LabelSetting,
): PlanLabel[] {
  const label = {
    ...dishLabel(plan, planned, system, laws, locale, say),
    ...throwAwayBy(throwAways, planned.dish.recipe),
  };
  const isCrew = plan.crewMeals.includes(planned);
  const forWhom = (index: number) =>
    isCrew ? say('labels.crew', { n: crewOf(planned) }) : guestsOnLabel(planned.dish, fedBy, index, say);
  const fedBy = seats.filter(({ apart }) => apart.includes(planned.dish.name));
  const carried = carriedIn(planned);
  if (!carried)
    return [
      {
        ...label,
        guests: forWhom(0),
        container: '',
        of: say('labels.of', { n: '1', all: '1' }),
        amount: amountText(countedDrink(planned) ?? planned.need, system, 'at-least').printed,
      },
    ];
  return Array.from({ length: carried.count }, (_, index) => {
    const holds = index + 1 === carried.count ? carried.last : carried.each;
    return {
      ...label,
      guests: forWhom(index),
      container: inWords(carried.containerName),
      of: say('labels.of', { n: String(index + 1), all: String(carried.count) }),
      amount: amountText(holds, system, 'line').printed,
    };
  });
}

function dishLabel(
  plan: EventPlan,
  { dish, contains, mayContain, unsaid }: PlannedDish,
  system: MeasureSystem,
  laws: readonly AllergenLaw[],
  locale: string,
  say: Say,
) {
  const { madeOn, useBy, atTheLatest } = dateMark(
    dish.recipe,
    plan.input.date,
    plan.foodSafety.limits['date mark'].days,
  );
  const raw = planRaw(dish.recipe, plan.foodSafety, scaleOf(system), say, statementsIn(locale));
  const ingredients = ingredientsByWeight(dish.recipe).map(({ ingredient: { name, parts } }) =>
    parts === undefined ? name : `${name} (${parts})`,
  );
  return {
    dish: dish.name,
    job: `${plan.input.occasion}, ${plan.input.client}`,
    date: dateText(plan.input.date, locale),
    ingredients: ingredients.join(', '),
    contains: [
      ...allergenNames(contains, laws).map((name) => name.toUpperCase()),
      ...(unsaid.length === 0 ? [] : [NOT_ALL_KNOWN]),
    ],
    mayContain: allergenNames(mayContain, laws).map((name) => name.toUpperCase()),
    madeOn: dateText(madeOn, locale),
    useBy: useBy === undefined ? '' : dateText(useBy, locale),
    ...(useBy === undefined && atTheLatest !== undefined && { useByLatest: dateText(atTheLatest, locale) }),
    hold: travelsAs(dish.recipe),
    finish: finishWords(plan, dish.recipe, system),
    ...(raw && { raw }),
  };
}

/** How many of the crew a dish of theirs is for. */
function crewOf({ counted }: PlannedDish): number {
  return Number(counted.ceil().n);
}

/** The most guests named on the label of one container; of more the tables are. */
const MOST_NAMED = 4;

/** A sealed portion is one guest's; where it is not stated whose, there is room to write it. */
function guestsOnLabel(dish: EventDish, seats: readonly PlanSeat[], index: number, say: Say): string {
  const who = guestsOfDish(dish, say);
  if (isSealed(dish.portions)) {
    const seat = seats[index];
    return seat
      ? say('labels.sealed-seat', { guest: seatText(seat), need: seat.need })
      : say('labels.sealed-blank', { who });
  }
  if (seats.length === 0) return who;
  if (seats.length <= MOST_NAMED)
    return say('labels.with-guests', { who, guests: seats.map(seatText).join('; ') });
  const tables = Map.groupBy(seats, ({ table }) => table);
  const guests = [...tables]
    .map(([table, each]) => say('labels.table-guests', { table, n: each.length }))
    .join(', ');
  return say('labels.with-guests', { who, guests });
}

/** For whom a dish is: who needs it made separately, or for whom it is held back; empty where it is for everybody. */
export function guestsOfDish({ portions, others }: EventDish, say: Say): string {
  if (!portions || portions.needs.length === 0) return '';
  const who = portions.needs.map(({ need, guests }) => `${guests} × ${need}`).join(', ');
  if (portions.apart)
    return isSealed(portions) ? say('labels.sealed-for', { who }) : say('labels.separately-for', { who });
  if (portions.insteadOf !== undefined && others?.n === 0n) return say('labels.only-for', { who });
  return others?.n === 0n ? say('labels.held-for', { who }) : '';
}
