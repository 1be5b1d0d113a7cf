import type { Recipe } from '../../../engine/food/recipe.ts';
import type { Course, Package } from '../../../engine/menu/package.ts';
import type { CourseChoices } from '../../../engine/menu/proposal.ts';
import { type Guests, peopleCounted } from '../../../engine/quote/counts.ts';
import { counted } from '../../../engine/text/counted.ts';
import type { ProposalText } from '../../../schema/proposal.ts';
import type { Path } from '../../files/place-of.ts';
import { suggestion } from '../../ledger.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

type CourseText = NonNullable<ProposalText['choices']>[string][string];

/** What a proposal says where its packages offer a choice; dishes and counts must be what each course asks for. */
export function linkChoices(
  reading: Reading,
  text: ProposalText['choices'],
  packages: readonly Package[],
  guests: Guests,
): ReadonlyMap<string, CourseChoices> {
  const offered = new Map(packages.map((each) => [each.id, each]));
  const choices = new Map<string, CourseChoices>();
  for (const [id, courses] of Object.entries(text ?? {})) {
    const path = ['choices', id];
    const chosen = lookUp(reading, 'package', id, offered, path, 'key');
    if (!chosen) continue;
    const dishes = new Map<string, readonly string[]>();
    const counts = new Map<string, ReadonlyMap<string, number>>();
    for (const [name, words] of Object.entries(courses)) {
      const course = courseCalled(reading, [...path, name], name, chosen);
      if (!course) continue;
      if (words.chosen) dishes.set(name, linkChosen(reading, [...path, name], words.chosen, course));
      else if (words.counts) counts.set(name, linkCounted(reading, [...path, name], words, course, guests));
    }
    choices.set(id, { chosen: dishes, counts });
  }
  return choices;
}

function courseCalled(reading: Reading, path: Path, name: string, chosen: Package): Course | undefined {
  const course = chosen.courses.find((each) => each.name === name);
  const open = chosen.courses.filter((each) => each.choose !== null || each.eachGuest);
  if (course && open.includes(course)) return course;
  const names = open.map((each) => each.name);
  const wayOut =
    suggestion(reading.ledger, name, names) ??
    (names.length === 0 ? 'leave it out' : `its courses with a choice are ${names.join(', ')}`);
  const what = course
    ? `“${name}” of ${chosen.id} has nothing to choose`
    : `${chosen.id} has no course called “${name}”`;
  reading.say('wrong-choice', path, what, wayOut, 'key');
  return undefined;
}

function linkChosen(reading: Reading, path: Path, ids: readonly string[], course: Course): readonly string[] {
  const dishes = dishesById(course);
  for (const [index, id] of ids.entries()) lookUp(reading, 'recipe', id, dishes, [...path, 'chosen', index]);
  if (course.choose === null) {
    const what = `“${course.name}” has each guest take one dish, but a list gives every dish to everybody`;
    reading.say(
      'wrong-choice',
      path,
      what,
      'write how many guests take each, such as { braised-lamb: 50 }',
      'key',
    );
  } else if (ids.length !== course.choose || new Set(ids).size !== ids.length) {
    const wanted = course.choose === 1 ? 'one dish' : `${course.choose} different dishes`;
    const what = `“${course.name}” asks for ${wanted}, but ${new Set(ids).size} are proposed`;
    reading.say(
      'wrong-choice',
      path,
      what,
      `name ${course.choose} of ${[...dishes.keys()].join(', ')}`,
      'key',
    );
  }
  return ids;
}

function linkCounted(
  reading: Reading,
  path: Path,
  text: CourseText,
  course: Course,
  guests: Guests,
): ReadonlyMap<string, number> {
  const dishes = dishesById(course);
  const counts = new Map<string, number>();
  for (const [id, words] of Object.entries(text.counts ?? {})) {
    lookUp(reading, 'recipe', id, dishes, [...path, 'counts', id], 'key');
    const count = reading.understand([...path, 'counts', id], words, wholeNumber(0, 100_000));
    if (count !== undefined) counts.set(id, count);
  }
  if (!course.eachGuest) {
    const what = `“${course.name}” gives the chosen dishes to everybody, but counts give each guest one dish`;
    reading.say(
      'wrong-choice',
      path,
      what,
      'write a list of dishes, such as [roast-squash, hake-parcels]',
      'key',
    );
    return counts;
  }
  const sum = [...counts.values()].reduce((total, count) => total + count, 0);
  const due = peopleCounted(guests, Object.assign({}, ...course.dishes.map((dish) => dish.counts)));
  if (sum !== due) {
    const what = `the counts of “${course.name}” add up to ${sum}, but ${counted(due, 'guest')} ${due === 1 ? 'takes' : 'take'} one each`;
    const wayOut = sum < due ? `add the ${due - sum} missing` : `take away ${sum - due}`;
    reading.say('wrong-choice', path, what, wayOut, 'key');
  }
  return counts;
}

function dishesById(course: Course): ReadonlyMap<string, Recipe> {
  return new Map(course.dishes.map(({ recipe }) => [recipe.id, recipe]));
}
