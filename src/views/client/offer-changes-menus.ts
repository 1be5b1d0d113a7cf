import { countsWords } from '../../engine/quote/counted-words.ts';
import type { CourseTerms, PackageTerms, Terms } from '../../engine/quote/terms.ts';
import { counted } from '../../engine/text/counted.ts';
import { type ChangeGroup, changedLine, changedLines, changeGroup, notIn } from '../kitchen/change-line.ts';
import { minimumSpendWords, rateWords } from '../price-words.ts';
import { shown } from '../quote-view-of.ts';
import { dishesChanged } from './offer-changes-dishes.ts';

const EVERY_DISH = 'everybody is served every dish';

/** Menus that are offered no longer or newly, and for each other one what is changed in it. */
export function menusChanged(before: Terms, now: Terms): ChangeGroup[] {
  const past = new Map(before.packages.map((each) => [each.id, each]));
  const present = new Set(now.packages.map(({ id }) => id));
  const offered = [
    ...now.packages.filter(({ id }) => !past.has(id)).map(({ name }) => `${name} is offered as well.`),
    ...before.packages
      .filter(({ id }) => !present.has(id))
      .map(({ name }) => `${name} is no longer offered.`),
  ];
  return [
    ...changeGroup('The menus offered', offered),
    ...now.packages.flatMap((each) => {
      const was = past.get(each.id);
      return was ? changeGroup(each.name, menuChanged(was, each, before, now)) : [];
    }),
  ];
}

function menuChanged(was: PackageTerms, is: PackageTerms, before: Terms, now: Terms): string[] {
  const past = renamed(was.courses, is.courses);
  const courses = past.map(([course, name]) => ({ ...course, name }));
  return [
    ...(was.name === is.name ? [] : [`${was.name} is now called ${is.name}.`]),
    ...changedLines(priceTexts(was, before), priceTexts(is, now)),
    ...(was.neverLessInAll === is.neverLessInAll
      ? []
      : [
          is.neverLessInAll
            ? 'A larger party now never pays less for this menu in all than a smaller one would.'
            : 'A larger party may now pay less for this menu in all than a smaller one would.',
        ]),
    ...goesWith(was, is, before, now),
    ...past.flatMap(([course, name]) =>
      course.name === name ? [] : [`${course.name} is now called ${name}.`],
    ),
    ...choosingChanged(courses, is.courses),
    ...dishesChanged(courses, is.courses, now),
  ];
}

/** Everything that sets a menu's price, by what it is called. */
function priceTexts(chosen: PackageTerms, terms: Terms): Map<string, string> {
  const { tiers, tierCounts, child, vendor, minimumGuests, minimumCounts, minimumSpend, hours } = chosen;
  return new Map([
    ['Service', chosen.style],
    ['Served over', hours ?? ''],
    ...tiers.map(
      ({ from, to, perHead }) =>
        [
          to === null
            ? `Each, from ${counted(from, 'guest')} on`
            : `Each, for ${from} to ${counted(to, 'guest')}`,
          shown(perHead, terms),
        ] as const,
    ),
    ['Counted for the price', countsWords(tierCounts)],
    ['Children', rateWords(child, terms)],
    ['Vendor meals', rateWords(vendor, terms)],
    ['Billed for at least', minimumGuests > 0 ? counted(minimumGuests, 'guest') : ''],
    ['Counted for the least number billed', minimumCounts ? countsWords(minimumCounts) : ''],
    ['Least spend', minimumSpend ? minimumSpendWords(minimumSpend, terms) : ''],
  ]);
}

function goesWith(was: PackageTerms, is: PackageTerms, before: Terms, now: Terms): string[] {
  const past = was.addOns ?? before.addOns.map(({ id }) => id);
  const present = is.addOns ?? now.addOns.map(({ id }) => id);
  const nameOf = (id: string) => [...now.addOns, ...before.addOns].find((each) => each.id === id)?.name;
  // What the offer no longer or newly has is said once, under its add-ons.
  const both = (id: string) =>
    now.addOns.some((each) => each.id === id) === before.addOns.some((each) => each.id === id);
  return [
    ...notIn(present, past)
      .filter(both)
      .map((id) => `Can now be had with it: ${nameOf(id) ?? id}.`),
    ...notIn(past, present)
      .filter(both)
      .map((id) => `Can no longer be had with it: ${nameOf(id) ?? id}.`),
  ];
}

/** The earlier courses, each with the name it has now: another one where its dishes stand whole under a new name. */
function renamed(before: readonly CourseTerms[], now: readonly CourseTerms[]): [CourseTerms, string][] {
  const kept = new Set(before.map(({ name }) => name));
  const fresh = new Map(
    now.filter(({ name }) => !kept.has(name)).map((course) => [recipesOf(course), course.name]),
  );
  const still = new Set(now.map(({ name }) => name));
  return before.map((course) => [
    course,
    still.has(course.name) ? course.name : (fresh.get(recipesOf(course)) ?? course.name),
  ]);
}

function recipesOf({ dishes }: CourseTerms): string {
  return dishes
    .map(({ recipe }) => recipe)
    .sort()
    .join(' ');
}

/** How dishes are chosen, for courses in both and for new ones that leave a choice; other new ones show their dishes. */
function choosingChanged(before: readonly CourseTerms[], now: readonly CourseTerms[]): string[] {
  const past = new Map(before.map((course) => [course.name, choosing(course)]));
  return now.flatMap((course) => {
    const was = past.get(course.name) ?? '';
    const is = choosing(course);
    return was === '' && is === EVERY_DISH ? [] : changedLine(`Choosing under ${course.name}`, was, is);
  });
}

function choosing({ choose, eachGuest, dishes }: CourseTerms): string {
  const ways = [
    choose === null ? '' : `you choose ${choose} of ${dishes.length}`,
    eachGuest ? 'each guest chooses one' : '',
  ].filter((way) => way !== '');
  return ways.join(', ') || EVERY_DISH;
}
