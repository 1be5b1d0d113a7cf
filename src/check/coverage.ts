import Fraction from 'fraction.js';
import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import type { Day } from '../engine/calendar/day.ts';
import { type DishRole, roleOf, usualRole } from '../engine/course/dish-role.ts';
import { ALL_STATIONS } from '../engine/course/sitting.ts';
import { fillersFor, gapPlace, type MenuDish, menuDishes } from '../engine/menu/fillers.ts';
import { guestNeedSaid, guestNeeds } from '../engine/menu/guest-needs.ts';
import type { Course, Dish, Package } from '../engine/menu/package.ts';
import type { Proposal } from '../engine/menu/proposal.ts';
import type { EventDish } from '../engine/plan/event-input.ts';
import { type CourseCoverage, coverageOf, gapsIn, servedCourses } from '../engine/plan/servings/coverage.ts';
import { askedSaid, fillSaid, gapSaid, ROLE_WAY_OUT } from '../engine/plan/servings/coverage-findings.ts';
import { partDishes } from '../engine/plan/servings/portions.ts';
import { counted } from '../engine/text/counted.ts';
import type { Said } from '../engine/text/statement.ts';
import { statementsIn } from '../exports/words/statement-text.ts';
import { dishesAt } from './dishes-at.ts';

/**
 * Where the menus of proposals that are still to be answered lack something for guests whose needs they name, as they
 * would be planned now, with dishes of the kitchen that would fill the gap; dishes whose role decides it and is not
 * stated, once for each course of a package; and needs that add up to more guests than there are. What the kitchen
 * assumes where nothing is stated is told by the plan alone.
 */
export function needsUnfed(book: Book, today: Day): Finding[] {
  const dishes = menuDishes(book.packages.values());
  const asked = new Set<string>();
  return [...book.proposals.values()]
    .filter(({ id, date, withdrawn }) => date >= today && !withdrawn && !book.events.has(id))
    .flatMap((proposal) => [
      ...tooMany(book, proposal),
      ...proposal.packages.flatMap((chosen) => unfedBy(book, proposal, chosen, dishes, asked)),
    ]);
}

function unfedBy(
  book: Book,
  proposal: Proposal,
  chosen: Package,
  menus: readonly MenuDish[],
  asked: Set<string>,
): Finding[] {
  const proposed = proposedDishes(proposal, chosen);
  const courses = servedCourses(chosen.style, proposed);
  const needs = guestNeeds(proposal.needs, proposal.guests, undefined);
  const inWords = statementsIn(book.kitchen.locale);
  const { dishes } = partDishes(proposed, proposal.guests, needs);
  return coverageOf(servedCourses(chosen.style, dishes), needs).flatMap((covered) =>
    gapsIn(covered).flatMap((gap): Finding[] => {
      const { need } = covered;
      const index = courses.findIndex(({ name }) => name === gap.course);
      const served = courses[index]?.dishes.map(({ recipe }) => recipe) ?? [];
      const course = `“${gap.course}” of ${chosen.id}`;
      if (gap.asked.length > 0) {
        const key = `${chosen.id}/${gap.course}`;
        if (asked.has(key)) return [];
        asked.add(key);
        return [roleAsked(book, chosen, gap, `${inWords(guestNeedSaid(need))} of ${proposal.id}`)];
      }
      const place = {
        package: chosen.id,
        course: gap.course,
        at: gapPlace(gap.course, index, courses.length),
        served,
        roles: gap.missing,
      };
      const fill = need.need ? fillersFor(place, need.need, menus) : [];
      const what =
        gap.nothing || gap.missing.length > 0
          ? inWords(gapSaid(guestNeedSaid(need), course, gap))
          : `${inWords(guestNeedSaid(need))}: with the counts chosen, ${course} has no portion for ${gap.short} of them`;
      const wayOut = inWords(fillSaid(fill.map(({ id }) => id)));
      const at = ['needs', need.text];
      return [findingAt(book, 'need-not-fed', `proposal/${proposal.id}`, at, what, wayOut, 'key')];
    }),
  );
}

function roleAsked(book: Book, chosen: Package, { course, asked }: CourseCoverage, who: Said): Finding {
  const index = chosen.courses.findIndex(
    ({ name, dishes: served }) =>
      name === course ||
      (course === ALL_STATIONS && served.some(({ recipe }) => asked.includes(recipe.name))),
  );
  const dishes = chosen.courses[index]?.dishes.filter(({ recipe }) => asked.includes(recipe.name)) ?? [];
  const ids = dishes.map(({ recipe }) => recipe.id);
  const inWords = statementsIn(book.kitchen.locale);
  const what = inWords(askedSaid(who, `“${course}”`, ids.length > 0 ? ids : asked));
  const at = [...dishesAt(chosen, index), ...ids.slice(0, 1)];
  return findingAt(book, 'role-unknown', `package/${chosen.id}`, at, what, inWords(ROLE_WAY_OUT), 'key');
}

/** The dishes proposed, as an event would have them: those chosen, the first so many where nothing is, all of any other. */
function proposedDishes({ choices }: Proposal, chosen: Package): EventDish[] {
  const asked = choices.get(chosen.id);
  const served = ({ name, choose, eachGuest, dishes }: Course) => {
    const counts = eachGuest ? asked?.counts.get(name) : undefined;
    if (counts) return dishes.filter(({ recipe }) => (counts.get(recipe.id) ?? 0) > 0);
    if (choose === null) return dishes;
    const ids = asked?.chosen.get(name);
    return ids ? dishes.filter(({ recipe }) => ids.includes(recipe.id)) : dishes.slice(0, choose);
  };
  return chosen.courses.flatMap((course) =>
    served(course).map((dish) => ({
      course: course.name,
      name: dish.recipe.name,
      recipe: dish.recipe,
      perGuest: dish.perGuest,
      counts: dish.counts,
      overage: dish.overage ?? new Fraction(0n),
      // Any dish of which each guest takes one will do, whatever its recipe is elsewhere.
      role: course.eachGuest
        ? usualRole(dish.perGuest, course)
        : (roleOf(dish, course) ?? replacedRole(dish, course)),
      chosenBy: course.eachGuest ? asked?.counts.get(course.name)?.get(dish.recipe.id) : undefined,
      ...(dish.others === undefined ? {} : { others: dish.others }),
      ...(dish.insteadOf && { insteadOf: dish.insteadOf }),
    })),
  );
}

/** What takes the place of a dish is there as that dish is. */
function replacedRole({ insteadOf }: Dish, course: Course): DishRole | undefined {
  const original = course.dishes.find(({ recipe }) => recipe.id === insteadOf?.recipe);
  return original && roleOf(original, course);
}

function tooMany(book: Book, { id, needs, guests }: Proposal): Finding[] {
  const named = [...needs.values()].reduce((sum, count) => sum + count, 0);
  const people = guests.adults + guests.children + guests.vendors + guests.staff;
  if (named <= people) return [];
  const what = `the needs add up to ${counted(named, 'guest')}, but only ${people} are fed`;
  const wayOut = 'count each guest once, under all of that guest’s needs, such as “vegan + no gluten: 1”';
  return [findingAt(book, 'needs-too-many', `proposal/${id}`, ['needs'], what, wayOut, 'key')];
}
