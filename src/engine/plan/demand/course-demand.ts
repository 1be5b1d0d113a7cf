import Fraction from 'fraction.js';
import type { GuestNeed } from '../../menu/guest-needs.ts';
import { attendanceBy, type StatedAttendance } from '../../odds/attendance.ts';
import { courseAmounts } from '../../odds/course.ts';
import type { CourseOdds } from '../../odds/course-odds.ts';
import { demandOf } from '../../odds/demand.ts';
import type { DishDemand } from '../../odds/dish-demand.ts';
import { helpingsIn } from '../../odds/helpings.ts';
import { atOdds, chanceOfShortage, leastHelpings } from '../../odds/shortage.ts';
import type { Guests } from '../../quote/counts.ts';
import { statement } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';
import type { PlanFinding } from '../event-plan.ts';
import { guestsSaid, helpingsSaid, percent } from '../figure-text.ts';
import { servedAmount } from '../servings/servings.ts';
import { attendanceWhy } from './appetite-demand.ts';
import { wholeGuests } from './eaters.ts';
import { guestsInParts, helpingOf, helpingUnknown } from './helping-of.ts';

/** A course's odds with the demand of each of its dishes, by the dish. */
export interface DemandedCourse {
  readonly odds: CourseOdds;
  readonly demands: ReadonlyMap<EventDish, DishDemand>;
}

/**
 * Amounts for a course of which each guest takes one helping of one dish: carried for the course as a whole, since who
 * misses one takes another, and split by the first choices. Guests for whom only one of the dishes is there have theirs
 * on top of it, and none is calculated to fail to come; those fed by what is made separately or held back are left out. A
 * guest who may have several dishes but not all is taken to choose like the others. Undefined where the course says no
 * first choices; a finding where they are not known of every dish as it is served, and then per-guest amounts stay.
 */
export function courseDemand(
  course: readonly EventDish[],
  guests: Guests,
  needs: readonly GuestNeed[],
  stated: StatedAttendance | undefined,
): DemandedCourse | PlanFinding | undefined {
  const regular = course.filter(({ portions, others }) => !portions?.apart && others === undefined);
  const known = regular.flatMap((dish) => {
    const { firstChoice, shortOneIn } = dish.takeRate ?? {};
    return firstChoice === undefined || shortOneIn === undefined ? [] : [{ dish, firstChoice, shortOneIn }];
  });
  const [first] = known;
  if (!first) return undefined;
  if (known.length < regular.length) return choicesUnknown(first.dish);
  const inParts = known.find(({ dish }) => tableOf(dish, course, guests) === undefined);
  if (inParts) return guestsInParts(inParts.dish);
  const people = Math.max(...known.map(({ dish }) => tableOf(dish, course, guests) ?? 0));
  const helpings = known.map(({ dish }) => helpingOf(dish));
  const unknown = known.find((_, at) => helpings[at] === undefined);
  if (unknown) return helpingUnknown(unknown.dish);
  const { sure, elsewhere } = settledNeeds(course, needs);
  const sureOf = (dish: EventDish) => sure.get(dish) ?? 0;
  const certain = known.reduce((all, { dish }) => all + sureOf(dish), 0);
  const free = Math.max(0, people - certain - elsewhere);
  const oneIn = first.shortOneIn;
  const attendance = attendanceBy(stated);
  const offered = known.reduce((all, each) => all.add(each.firstChoice), new Fraction(0n));
  const shares = known.map(({ firstChoice }) => firstChoice.div(offered));
  const amounts = courseAmounts(
    known.map(({ dish }, at) => ({ id: dish.recipe.id, share: (shares[at] as Fraction).valueOf() })),
    free,
    1 / oneIn,
    attendance,
  );
  const whole = statement('why.course-risk', {
    n: free,
    oneIn: String(oneIn),
    helpings: helpingsSaid(amounts.helpings),
    guests: guestsSaid(new Fraction(BigInt(free))),
  });
  const split = known.map(({ dish }, at) => {
    const share = (shares[at] as Fraction).valueOf();
    const eaters = { sure: sureOf(dish), free, cannot: 0 };
    const chances = demandOf(Float64Array.of(1 - share, share), eaters, attendance);
    const ofFree = amounts.dishes[at]?.helpings ?? 0;
    const carried = ofFree + sureOf(dish);
    const first = { share: percent(shares[at] as Fraction), helpings: helpingsSaid(ofFree) };
    const ofAll = { ...first, offered: percent(dish.takeRate?.firstChoice ?? offered) };
    const missed = chanceOfShortage(chances, carried);
    const why = [
      whole,
      offered.equals(1n) ? statement('why.first-choice', first) : statement('why.first-choice-of-all', ofAll),
      ...(sureOf(dish) > 0
        ? [
            statement('why.for-nothing-else', {
              count: String(ofFree),
              more: String(sureOf(dish)),
              helpings: helpingsSaid(carried),
            }),
          ]
        : []),
      statement('why.missed', { odds: atOdds(missed) }),
    ];
    return { dish, demand: { eaters, helping: helpings[at]!, chances, helpings: carried, why }, missed };
  });
  const total = amounts.helpings + certain;
  const apart = split.reduce((all, { demand }) => all + leastHelpings(demand.chances, 1 / oneIn), 0);
  const byGuest = known.reduce(
    (all, { dish }, at) => all + helpingsIn(servedAmount(dish, guests), helpings[at]!),
    0,
  );
  return {
    demands: new Map(split.map(({ dish, demand }) => [dish, demand])),
    odds: {
      course: first.dish.course,
      guests: free + certain,
      oneIn,
      helpings: total,
      shortOfAll: amounts.shortOfAll,
      dishes: split.map(({ dish, demand, missed }) => ({
        name: dish.name,
        recipe: dish.recipe.id,
        helpings: demand.helpings,
        missed,
      })),
      apart,
      byGuest,
      why: [
        whole,
        ...attendanceWhy(stated),
        ...(certain > 0
          ? [
              statement('why.for-only-one', {
                count: String(amounts.helpings),
                more: String(certain),
                helpings: helpingsSaid(total),
              }),
            ]
          : []),
        statement('why.dish-by-dish', { helpings: helpingsSaid(apart) }),
        statement('why.by-amounts', { helpings: helpingsSaid(byGuest) }),
      ],
    },
  };
}

/** Guests counted for a dish with those it is made separately for. */
function tableOf(dish: EventDish, course: readonly EventDish[], guests: Guests): number | undefined {
  const apart = course.filter(
    ({ portions }) => portions?.apart?.recipe === dish.recipe.id || portions?.insteadOf === dish.recipe.id,
  );
  const each = [dish, ...apart].map((portions) => wholeGuests(portions, guests));
  return each.some((count) => count === undefined)
    ? undefined
    : each.reduce<number>((all, count) => all + (count ?? 0), 0);
}

/** Guests with a need for whom one dish alone is there, by the dish; and how many eat what is not chosen at all. */
function settledNeeds(
  course: readonly EventDish[],
  needs: readonly GuestNeed[],
): { sure: ReadonlyMap<EventDish, number>; elsewhere: number } {
  const sure = new Map<EventDish, number>();
  let elsewhere = 0;
  for (const { text, guests } of needs) {
    const theirs = course.filter(({ portions }) => portions?.needs.some(({ need }) => need === text));
    const free = theirs.filter(({ portions, others }) => !portions?.apart && others === undefined);
    const [only] = free;
    if (theirs.some(({ portions }) => portions?.insteadOf !== undefined)) elsewhere += guests;
    else if (only && free.length === 1) sure.set(only, (sure.get(only) ?? 0) + guests);
    else if (free.length === 0 && theirs.length > 0) elsewhere += guests;
  }
  return { sure, elsewhere };
}

function choicesUnknown({ course, recipe }: EventDish): PlanFinding {
  return {
    about: recipe.id,
    what: statement('found.choices-unknown', { course }),
    wayOut: statement('found.choices-unknown.way'),
  };
}
