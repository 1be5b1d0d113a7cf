import type { Choice } from '../../engine/quote/choice.ts';
import { atTable } from '../../engine/quote/counts.ts';
import type { CourseTerms } from '../../engine/quote/terms.ts';
import { type Statement, several, statement } from '../../engine/text/statement.ts';
import type { ListedGuest } from '../../schema/event-fact.ts';
import { needKey } from './need.ts';

/**
 * Where a list and the count that is planned for say different things, a statement each: guests in
 * all, dishes of each course, needs. What is cooked follows the count; the list alone changes none of it.
 */
export function listDifferences(
  guests: readonly ListedGuest[],
  choice: Pick<Choice, 'guests' | 'mains' | 'needs'>,
  courses: readonly CourseTerms[],
): Statement[] {
  return [
    ...countDifference(guests.length, choice),
    ...courses.flatMap((course) => mainDifference(guests, choice, course)),
    ...needDifferences(guests, choice),
  ];
}

/** Those who work that day may be on the list or not. */
function countDifference(listed: number, { guests }: Pick<Choice, 'guests'>): Statement[] {
  const table = atTable(guests);
  if (listed >= table && listed <= table + guests.vendors + guests.staff) return [];
  return [statement('found.list-count', { n: listed, planned: table })];
}

function mainDifference(
  guests: readonly ListedGuest[],
  { mains }: Pick<Choice, 'mains'>,
  { name, dishes }: CourseTerms,
): Statement[] {
  const differing = dishes.flatMap((dish) => {
    const listed = guests.filter((guest) => guest.mains[name] === dish.recipe).length;
    const planned = mains[name]?.[dish.recipe] ?? 0;
    return listed === planned ? [] : [statement('found.list-dish', { dish: dish.name, listed, planned })];
  });
  return differing.length === 0
    ? []
    : [statement('found.list-dishes', { course: name, dishes: several('comma', differing) })];
}

function needDifferences(guests: readonly ListedGuest[], { needs }: Pick<Choice, 'needs'>): Statement[] {
  const listed = Map.groupBy(
    guests.filter(({ need }) => need !== ''),
    ({ need }) => needKey(need),
  );
  const planned = Map.groupBy(Object.entries(needs), ([need]) => needKey(need));
  return [...new Set([...planned.keys(), ...listed.keys()])].flatMap((key) => {
    const onList = listed.get(key) ?? [];
    const count = (planned.get(key) ?? []).reduce((sum, [, each]) => sum + each, 0);
    if (onList.length === count) return [];
    const words = planned.get(key)?.[0]?.[0] ?? onList[0]?.need ?? '';
    const counts = { need: words, listed: onList.length, planned: count };
    const who = several(
      'comma',
      onList.map(({ name }) => name),
    );
    return [
      onList.length === 0
        ? statement('found.list-need', counts)
        : statement('found.list-need-who', { ...counts, who }),
    ];
  });
}
