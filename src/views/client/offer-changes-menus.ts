import type { CourseTerms, PackageTerms, Terms } from '../../engine/quote/terms.ts';
import { groupsText } from '../../exports/words/counted-text.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { minimumSpendWords, rateWords } from '../price-words.ts';
import { shown } from '../quote-view-of.ts';
import { type ChangeGroup, changedLine, changedLines, changeGroup, notIn } from './change-line.ts';
import { dishesChanged } from './offer-changes-dishes.ts';
import { styleWords } from './style-words.ts';

/** Menus that are offered no longer or newly, and for each other one what is changed in it. */
export function menusChanged(before: Terms, now: Terms): ChangeGroup[] {
  const say = wordsIn(now.locale);
  const past = new Map(before.packages.map((each) => [each.id, each]));
  const present = new Set(now.packages.map(({ id }) => id));
  const offered = [
    ...now.packages
      .filter(({ id }) => !past.has(id))
      .map(({ name }) => say('changes.menu.new', { menu: name })),
    ...before.packages
      .filter(({ id }) => !present.has(id))
      .map(({ name }) => say('changes.menu.gone', { menu: name })),
  ];
  return [
    ...changeGroup(say('changes.group.menus'), offered),
    ...now.packages.flatMap((each) => {
      const was = past.get(each.id);
      return was ? changeGroup(each.name, menuChanged(was, each, before, now)) : [];
    }),
  ];
}

function menuChanged(was: PackageTerms, is: PackageTerms, before: Terms, now: Terms): string[] {
  const say = wordsIn(now.locale);
  const past = renamed(was.courses, is.courses);
  const courses = past.map(([course, name]) => ({ ...course, name }));
  return [
    ...(was.name === is.name ? [] : [say('changes.renamed', { before: was.name, now: is.name })]),
    ...changedLines(say, priceTexts(was, before, say), priceTexts(is, now, say)),
    ...(was.neverLessInAll === is.neverLessInAll
      ? []
      : [say(is.neverLessInAll ? 'changes.menu.never-less' : 'changes.menu.may-be-less')]),
    ...goesWith(was, is, [before, now], say),
    ...past.flatMap(([course, name]) =>
      course.name === name ? [] : [say('changes.renamed', { before: course.name, now: name })],
    ),
    ...choosingChanged(courses, is.courses, say),
    ...dishesChanged(courses, is.courses, now),
  ];
}

/** Everything that sets a menu's price, by what it is called. */
function priceTexts(chosen: PackageTerms, terms: Terms, say: Say): Map<string, string> {
  const { tiers, tierCounts, child, vendor, minimumGuests, minimumCounts, minimumSpend, hours } = chosen;
  const script = scriptWordsIn(terms.locale);
  return new Map([
    [say('changes.menu.service'), styleWords(chosen.style, terms.locale)],
    [say('changes.menu.hours'), hours ?? ''],
    ...tiers.map(
      ({ from, to, perHead }) =>
        [
          to === null
            ? say('changes.menu.price-from', { n: from })
            : say('changes.menu.price-range', { from, n: to }),
          shown(perHead, terms),
        ] as const,
    ),
    [say('changes.menu.counted'), groupsText(script, tierCounts)],
    [say('changes.menu.children'), rateWords(child, terms)],
    [say('changes.menu.vendors'), rateWords(vendor, terms)],
    [say('changes.menu.minimum'), minimumGuests > 0 ? say('script.guests', { n: minimumGuests }) : ''],
    [say('changes.menu.minimum-counted'), minimumCounts ? groupsText(script, minimumCounts) : ''],
    [say('changes.menu.spend'), minimumSpend ? minimumSpendWords(minimumSpend, terms) : ''],
  ]);
}

function goesWith(
  was: PackageTerms,
  is: PackageTerms,
  [before, now]: readonly [Terms, Terms],
  say: Say,
): string[] {
  const past = was.addOns ?? before.addOns.map(({ id }) => id);
  const present = is.addOns ?? now.addOns.map(({ id }) => id);
  const nameOf = (id: string) => [...now.addOns, ...before.addOns].find((each) => each.id === id)?.name;
  // What the offer no longer or newly has is told once, under its add-ons.
  const both = (id: string) =>
    now.addOns.some((each) => each.id === id) === before.addOns.some((each) => each.id === id);
  return [
    ...notIn(present, past)
      .filter(both)
      .map((id) => say('changes.menu.add-on', { addOn: nameOf(id) ?? id })),
    ...notIn(past, present)
      .filter(both)
      .map((id) => say('changes.menu.add-on-gone', { addOn: nameOf(id) ?? id })),
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
function choosingChanged(before: readonly CourseTerms[], now: readonly CourseTerms[], say: Say): string[] {
  const past = new Map(before.map((course) => [course.name, choosing(course, say)]));
  return now.flatMap((course) => {
    const was = past.get(course.name) ?? '';
    const is = choosing(course, say);
    return was === '' && !isOpen(course)
      ? []
      : changedLine(say, say('changes.menu.choosing', { course: course.name }), was, is);
  });
}

/** Whether anything is left to choose in a course. */
function isOpen({ choose, eachGuest }: CourseTerms): boolean {
  return choose !== null || eachGuest;
}

function choosing({ choose, eachGuest, dishes }: CourseTerms, say: Say): string {
  const ways = [
    choose === null ? '' : say('changes.menu.choose', { n: choose, all: dishes.length }),
    eachGuest ? say('changes.menu.each') : '',
  ].filter((way) => way !== '');
  return ways.join(', ') || say('changes.menu.every-dish');
}
