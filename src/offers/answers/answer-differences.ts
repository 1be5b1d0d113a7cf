import type { Choice } from '../../engine/quote/choice.ts';
import { GUEST_GROUPS } from '../../engine/quote/counts.ts';
import type { CourseTerms, Terms } from '../../engine/quote/terms.ts';
import { wordsIn } from '../../words/words-in.ts';

/**
 * Where an answer differs from what was proposed or stands on record (`was`; `known` says which), a line each, in words of the terms' locale:
 * menu, people, dishes, add-ons, needs. `Adults: 46 (proposed 34)`.
 */
export function answerDifferences(
  terms: Pick<Terms, 'packages' | 'addOns' | 'locale'>,
  was: Choice,
  answered: Choice,
  known: 'proposed' | 'recorded',
): string[] {
  const say = wordsIn(terms.locale);
  const line = (what: string, is: string | number, before: string | number) =>
    is === before
      ? []
      : [
          say(known === 'proposed' ? 'answers.differs.proposed' : 'answers.differs.recorded', {
            what,
            is: `${is}`,
            before: `${before}`,
          }),
        ];
  const menu = (id: string) => terms.packages.find((each) => each.id === id)?.name ?? id;
  const courses = terms.packages.find(({ id }) => id === answered.package)?.courses ?? [];
  const sameMenu = was.package === answered.package;
  const names = (left: Readonly<Record<string, unknown>>, right: Readonly<Record<string, unknown>>) => [
    ...new Set([...Object.keys(left), ...Object.keys(right)]),
  ];
  return [
    ...line(say('answers.differs.menu'), menu(answered.package), menu(was.package)),
    ...GUEST_GROUPS.flatMap((group) =>
      line(say('answers.differs.guests', { group }), answered.guests[group], was.guests[group]),
    ),
    ...(sameMenu
      ? courses.flatMap((course) => line(course.name, dishesOf(course, answered), dishesOf(course, was)))
      : []),
    ...names(was.addOns, answered.addOns).flatMap((id) => {
      const addOn = terms.addOns.find((each) => each.id === id);
      const taken = (quantity = 0) =>
        quantity === 0
          ? say('csv.no')
          : addOn?.per === 'hour'
            ? say('answers.differs.hours', { n: `${quantity}` })
            : say('csv.yes');
      return line(addOn?.name ?? id, taken(answered.addOns[id]), taken(was.addOns[id]));
    }),
    ...names(was.needs, answered.needs).flatMap((name) =>
      line(say('answers.differs.need', { need: name }), answered.needs[name] ?? 0, was.needs[name] ?? 0),
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
