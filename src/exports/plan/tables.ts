import { parseNeed } from '../../engine/food/need.ts';
import { recipeSuits } from '../../engine/food/variant.ts';
import { isSealed } from '../../engine/plan/containers/separate-containers.ts';
import type { EventPlan, PlannedDish } from '../../engine/plan/event-plan.ts';
import type { CourseTerms } from '../../engine/quote/terms.ts';
import { replacementOf } from '../../offers/event/recipes.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import { isLate, listedCourses } from '../../offers/guest-list/guest-list.ts';
import { needKey } from '../../offers/guest-list/need.ts';
import { mealsByTable, tablesOf } from '../../offers/guest-list/tables.ts';
import type { GuestListFact, ListedGuest } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { PlanSeat, PlanTableCourse, PlanTables } from '../form/tables.ts';
import { dateText } from '../words/date-text.ts';
import { dishMarks } from './dish-marks.ts';

/** The tables of an event by its guest list, with the dishes as they are served now and what is not for whom. */
export function planTables(
  list: GuestListFact,
  plan: EventPlan,
  offer: Offer,
  status: EventStatus,
  locale: string,
): PlanTables {
  const say = wordsIn(locale);
  const courses = listedCourses(offer, status);
  const served = servedDishes(plan, status);
  const tables = courses.map((course) => tableCourse(list.guests, course, status, served, say));
  const givenOn = list.given ?? list.on;
  const seats = tablesOf(list.guests).flatMap(([, guests]) => guests);
  return {
    givenOn,
    givenOnText: dateText(givenOn, locale),
    late: isLate(list, status),
    courses: tables,
    seats: seats.map((guest) => seatOf(guest, tables, served, say)),
  };
}

/** A table as it is called: its number with the word, or its own name. */
export function tableText(table: string, say: Say): string {
  if (table === '') return say('lists.no-table');
  return /^\d/.test(table) ? say('lists.table-number', { number: table }) : table;
}

/** What became of the dishes that were accepted. */
interface Served {
  /** The dish as it is, or the one it was swapped for; undefined where nobody takes it. */
  dish(course: string, accepted: string): PlannedDish | undefined;
  /** What is made separately for a need, from the dishes that all get or this guest has chosen. */
  apart(need: string, mains: ListedGuest['mains']): PlannedDish[];
}

function servedDishes({ dishes }: EventPlan, { substitutions }: EventStatus): Served {
  const now = (accepted: string) => replacementOf(accepted, substitutions)?.to ?? accepted;
  return {
    dish: (course, accepted) =>
      dishes.find(
        ({ dish }) => dish.course === course && !dish.portions?.apart && dish.recipe.id === now(accepted),
      ),
    apart: (need, mains) =>
      dishes.filter(({ dish: { course, chosenBy, portions } }) => {
        if (
          !(portions?.apart ?? portions?.insteadOf) ||
          !portions?.needs.some((each) => needKey(each.need) === needKey(need))
        )
          return false;
        return chosenBy === undefined || portions.apart?.recipe === now(mains[course] ?? '');
      }),
  };
}

function tableCourse(
  guests: readonly ListedGuest[],
  course: CourseTerms,
  { choice }: EventStatus,
  served: Served,
  say: Say,
): PlanTableCourse {
  const names = course.dishes.map(({ recipe, name }) => served.dish(course.name, recipe)?.dish.name ?? name);
  const marks = dishMarks(
    course.dishes.map(({ recipe }, index) => ({
      name: names[index] ?? '',
      card: served.dish(course.name, recipe)?.dish.recipe.card,
    })),
  );
  const meals = mealsByTable(guests, course);
  return {
    course: course.name,
    dishes: course.dishes.map(({ recipe, name }, index) => ({
      recipe,
      name: names[index] ?? name,
      letters: marks[index]?.letters ?? '',
      shape: marks[index]?.shape ?? 'circle',
      listed: meals.reduce((sum, { counts }) => sum + (counts[index] ?? 0), 0),
      planned: choice.mains[course.name]?.[recipe] ?? 0,
    })),
    rows: meals.map((row) => ({ ...row, table: tableText(row.table, say) })),
    unsaid: meals.reduce((sum, { unsaid }) => sum + unsaid, 0),
  };
}

function seatOf(guest: ListedGuest, tables: readonly PlanTableCourse[], served: Served, say: Say): PlanSeat {
  const chosen = tables.flatMap(({ course, dishes }) => {
    const dish = dishes.find(({ recipe }) => recipe === guest.mains[course]);
    return dish ? [{ course, dish }] : [];
  });
  const apart = guest.need === '' ? [] : served.apart(guest.need, guest.mains);
  const fed = new Set(apart.map(({ dish }) => dish.course));
  return {
    name: guest.name,
    table: tableText(guest.table, say),
    need: guest.need,
    dishes: chosen.map(({ course, dish: { name, letters, shape } }) => {
      const made = apart.find(({ dish }) => dish.course === course)?.dish.name;
      return { course, name, letters, shape, ...(made === undefined ? {} : { made }) };
    }),
    notFor: chosen
      .filter(({ course, dish }) => !fed.has(course) && !suits(guest.need, served.dish(course, dish.recipe)))
      .map(({ dish }) => dish.name),
    apart: apart.map(({ dish }) => dish.name),
    sealed: apart.flatMap(({ dish }) => (isSealed(dish.portions) ? [dish.name] : [])),
  };
}

/** Words that Salver does not know, a dish that is not made and an allergen that is not stated are never taken for a yes. */
function suits(text: string, planned: PlannedDish | undefined): boolean {
  if (text === '') return true;
  const need = parseNeed(text);
  return need.ok && planned !== undefined && recipeSuits(planned.dish.recipe, need.value) === 'yes';
}
