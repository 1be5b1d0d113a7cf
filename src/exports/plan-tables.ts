import { parseNeed } from '../engine/food/need.ts';
import { recipeSuits } from '../engine/food/variant.ts';
import type { EventPlan, PlannedDish } from '../engine/plan/event-plan.ts';
import type { CourseTerms } from '../engine/quote/terms.ts';
import { replacementOf } from '../offers/event-recipes.ts';
import type { EventStatus } from '../offers/event-status.ts';
import { isLate, listedCourses } from '../offers/guest-list.ts';
import { needKey } from '../offers/guest-list-need.ts';
import { mealsByTable, tablesOf } from '../offers/guest-list-tables.ts';
import type { GuestListFact, ListedGuest } from '../schema/event-fact.ts';
import type { Offer } from '../schema/offer.ts';
import { dateText } from './date-text.ts';
import { dishMarks } from './dish-marks.ts';
import type { PlanSeat, PlanTableCourse, PlanTables } from './plan-tables-document.ts';

/** The tables of an event by its guest list, with the dishes as they are served now and what is not for whom. */
export function planTables(
  list: GuestListFact,
  plan: EventPlan,
  offer: Offer,
  status: EventStatus,
  locale: string,
): PlanTables {
  const courses = listedCourses(offer, status);
  const served = servedDishes(plan, status);
  const tables = courses.map((course) => tableCourse(list.guests, course, status, served));
  const givenOn = list.given ?? list.on;
  const seats = tablesOf(list.guests).flatMap(([, guests]) => guests);
  return {
    givenOn,
    givenOnText: dateText(givenOn, locale),
    late: isLate(list, status),
    courses: tables,
    seats: seats.map((guest) => seatOf(guest, tables, served)),
  };
}

/** A table as it is called: its number with the word, or its own name. */
export function tableText(table: string): string {
  if (table === '') return 'No table';
  return /^\d/.test(table) ? `Table ${table}` : table;
}

/** What became of a dish that was accepted: itself, or the one it was swapped for. */
interface Served {
  /** The dish as it is, undefined where nobody takes it. */
  dish(course: string, accepted: string): PlannedDish | undefined;
  /** The dish made apart from it for a need. */
  apart(course: string, accepted: string, need: string): PlannedDish | undefined;
}

function servedDishes({ dishes }: EventPlan, { substitutions }: EventStatus): Served {
  const now = (accepted: string) => replacementOf(accepted, substitutions)?.to ?? accepted;
  const ofCourse = (course: string) => dishes.filter(({ dish }) => dish.course === course);
  // A recipe in which an ingredient was swapped has an id of its own that begins with the recipe's.
  const isOf = (id: string, accepted: string) => id === now(accepted) || id.startsWith(`${now(accepted)}--`);
  return {
    dish: (course, accepted) =>
      ofCourse(course).find(({ dish }) => !dish.portions?.apart && isOf(dish.recipe.id, accepted)),
    apart: (course, accepted, need) =>
      ofCourse(course).find(
        ({ dish: { portions } }) =>
          portions?.apart &&
          isOf(portions.apart.recipe, accepted) &&
          portions.needs.some((each) => needKey(each.need) === needKey(need)),
      ),
  };
}

function tableCourse(
  guests: readonly ListedGuest[],
  course: CourseTerms,
  { choice }: EventStatus,
  served: Served,
): PlanTableCourse {
  const names = course.dishes.map(({ recipe, name }) => served.dish(course.name, recipe)?.dish.name ?? name);
  const marks = dishMarks(names);
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
    rows: meals.map((row) => ({ ...row, table: tableText(row.table) })),
    unsaid: meals.reduce((sum, { unsaid }) => sum + unsaid, 0),
  };
}

function seatOf(guest: ListedGuest, tables: readonly PlanTableCourse[], served: Served): PlanSeat {
  const chosen = tables.flatMap(({ course, dishes }) => {
    const dish = dishes.find(({ recipe }) => recipe === guest.mains[course]);
    return dish ? [{ course, dish }] : [];
  });
  const fit = chosen.map(({ course, dish }) => ({
    name: dish.name,
    fits: fitFor(guest.need, course, dish.recipe, served),
  }));
  const named = (fits: string) => fit.filter((each) => each.fits === fits).map(({ name }) => name);
  return {
    name: guest.name,
    table: tableText(guest.table),
    need: guest.need,
    dishes: chosen.map(({ course, dish: { name, letters, shape } }) => ({ course, name, letters, shape })),
    notFor: named('not'),
    apart: named('apart'),
  };
}

/** Unknown words and unknown allergens are never taken for a yes. */
function fitFor(text: string, course: string, accepted: string, served: Served): 'yes' | 'apart' | 'not' {
  if (text === '') return 'yes';
  const need = parseNeed(text);
  if (!need.ok) return 'not';
  const planned = served.dish(course, accepted);
  if (planned && recipeSuits(planned.dish.recipe, need.value) === 'yes') return 'yes';
  return served.apart(course, accepted, text) ? 'apart' : 'not';
}
