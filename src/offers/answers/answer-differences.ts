import type { Choice } from '../../engine/quote/choice.ts';
import { GUEST_GROUPS, type GuestGroup } from '../../engine/quote/counts.ts';
import type { CourseTerms, Terms } from '../../engine/quote/terms.ts';

const GROUPS: Readonly<Record<GuestGroup, string>> = {
  adults: 'Adults',
  children: 'Children',
  vendors: 'Vendor meals',
  staff: 'Crew meals',
};

/**
 * Where an answer differs from what was proposed or stands on record (`was`, the word for it in `known`), a line each:
 * menu, people, dishes, add-ons, needs. `Adults: 46 (proposed 34)`.
 */
export function answerDifferences(
  terms: Pick<Terms, 'packages' | 'addOns'>,
  was: Choice,
  answered: Choice,
  known: string,
): string[] {
  const line = (what: string, is: string | number, before: string | number) =>
    is === before ? [] : [`${what}: ${is} (${known} ${before})`];
  const menu = (id: string) => terms.packages.find((each) => each.id === id)?.name ?? id;
  const courses = terms.packages.find(({ id }) => id === answered.package)?.courses ?? [];
  const sameMenu = was.package === answered.package;
  const names = (left: Readonly<Record<string, unknown>>, right: Readonly<Record<string, unknown>>) => [
    ...new Set([...Object.keys(left), ...Object.keys(right)]),
  ];
  return [
    ...line('Menu', menu(answered.package), menu(was.package)),
    ...GUEST_GROUPS.flatMap((group) => line(GROUPS[group], answered.guests[group], was.guests[group])),
    ...(sameMenu
      ? courses.flatMap((course) => line(course.name, dishesOf(course, answered), dishesOf(course, was)))
      : []),
    ...names(was.addOns, answered.addOns).flatMap((id) => {
      const addOn = terms.addOns.find((each) => each.id === id);
      const taken = (quantity = 0) =>
        quantity === 0 ? 'no' : addOn?.per === 'hour' ? `${quantity} h` : 'yes';
      return line(addOn?.name ?? id, taken(answered.addOns[id]), taken(was.addOns[id]));
    }),
    ...names(was.needs, answered.needs).flatMap((name) =>
      line(`Guests with ${name}`, answered.needs[name] ?? 0, was.needs[name] ?? 0),
    ),
  ];
}

/** The dishes taken of a course, with the guests of each where every guest takes one; empty where all are served. */
function dishesOf({ name, choose, eachGuest, dishes }: CourseTerms, { courses, mains }: Choice): string {
  const chosen = courses[name] ?? [];
  if (choose !== null)
    return dishes
      .filter(({ recipe }) => chosen.includes(recipe))
      .map((dish) => dish.name)
      .join(', ');
  if (!eachGuest) return '';
  const counts = mains[name] ?? {};
  return dishes.map((dish) => `${dish.name} ${counts[dish.recipe] ?? 0}`).join(', ');
}
