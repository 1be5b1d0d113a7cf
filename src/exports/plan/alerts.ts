import { isAllergy, parseNeed } from '../../engine/food/need.ts';
import { recipeSuits } from '../../engine/food/variant.ts';
import { guestNeedSaid } from '../../engine/menu/guest-needs.ts';
import { cookedDishes } from '../../engine/plan/cooked-dishes.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import { statement } from '../../engine/text/statement.ts';
import { needKey } from '../../offers/guest-list/need.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { PlanAlert } from '../form/event.ts';
import type { PlanSeat } from '../form/tables.ts';
import { type SayStatement, statementsIn } from '../words/statement-text.ts';
import { seatText } from './table-findings.ts';

const noDishes = { who: [], notFor: [], notKnown: [], suits: [] };

/**
 * What the crew must read before anything is cooked: dishes with an allergen that is not stated, guests' needs with
 * the dishes that are not for them (those that the guest list alone names first, since nothing is planned for them),
 * raw or undercooked animal food. `seats` are the guests of the list.
 */
export function planAlerts(
  plan: EventPlan,
  nameOf: (id: string) => string,
  seats: readonly PlanSeat[],
  locale: string,
): PlanAlert[] {
  const say = wordsIn(locale);
  const inWords = statementsIn(locale);
  const unsaid = cookedDishes(plan)
    .filter((planned) => planned.unsaid.length > 0)
    .map((planned) => ({
      about: planned.dish.name,
      what: say('alerts.unknown', { foods: planned.unsaid.map(nameOf).join(', ') }),
      ...noDishes,
    }));
  const needs = [...plan.input.needs]
    .filter(([, guests]) => guests > 0)
    .map(([need, guests]) => needAlert(plan, need, guests, seatsWith(seats, need), say, inWords));
  const planned = new Set(
    [...plan.input.needs].filter(([, guests]) => guests > 0).map(([need]) => needKey(need)),
  );
  const listed = Map.groupBy(
    seats.filter(({ need }) => need !== '' && !planned.has(needKey(need))),
    ({ need }) => needKey(need),
  );
  const unplanned = [...listed.values()].map((each) => {
    const alert = needAlert(plan, each[0]?.need ?? '', each.length, each, say, inWords);
    const what = say('alerts.list-only');
    return { ...alert, what: alert.what === '' ? what : `${what} ${alert.what}` };
  });
  const raw = cookedDishes(plan)
    .filter(({ dish }) => dish.recipe.containsRaw)
    .map(({ dish }) => ({
      about: dish.name,
      what: say('alerts.raw'),
      ...noDishes,
    }));
  return [...unsaid, ...unplanned, ...needs, ...raw];
}

/** An alert in one line, for a terminal. */
export function alertText({ about, who, what, notFor, notKnown, suits }: PlanAlert, say: Say): string {
  const said = [
    who.length > 0 ? say('alerts.line.who', { who: who.join('; ') }) : '',
    what,
    notFor.length > 0 ? say('alerts.line.not-for', { dishes: notFor.join(', ') }) : '',
    notKnown.length > 0 ? say('alerts.line.not-known', { dishes: notKnown.join(', ') }) : '',
    suits.length > 0 ? say('alerts.line.suits', { dishes: suits.join(', ') }) : '',
  ];
  return say('alerts.line', { about, said: said.filter((text) => text !== '').join(' ') });
}

function needAlert(
  plan: EventPlan,
  text: string,
  guests: number,
  seats: readonly PlanSeat[],
  say: Say,
  inWords: SayStatement,
): PlanAlert {
  const need = parseNeed(text);
  const who = seats.map(seatText);
  if (!need.ok) {
    return {
      about: inWords(statement('found.need', { guests: String(guests), need: text })),
      what: say('alerts.not-understood'),
      ...noDishes,
      who,
    };
  }
  const against = { no: [] as string[], unknown: [] as string[], yes: [] as string[] };
  for (const { dish } of plan.dishes) {
    const { portions } = dish;
    if (!portions?.apart) against[recipeSuits(dish.recipe, need.value)].push(dish.name);
    else if (portions.needs.some((each) => each.need === text))
      against.yes.push(say('alerts.made-separately', { dish: dish.name }));
  }
  return {
    about: inWords(guestNeedSaid({ text, guests, need: need.value, said: true })),
    who,
    what: whatToDo(against.yes.length > 0, isAllergy(need.value), say),
    notFor: against.no,
    notKnown: against.unknown,
    suits: against.yes,
  };
}

function seatsWith(seats: readonly PlanSeat[], text: string): PlanSeat[] {
  return seats.filter(({ need }) => need !== '' && needKey(need) === needKey(text));
}

function whatToDo(fed: boolean, allergy: boolean, say: Say): string {
  if (!fed) return say('alerts.none-suits');
  return allergy ? say('alerts.plate-first') : '';
}
