import type { Recipe } from '../../../engine/food/recipe.ts';
import type { Course } from '../../../engine/menu/package.ts';
import type { Counts } from '../../../engine/quote/counts.ts';
import type { PackageText } from '../../../schema/package.ts';
import { MOST_DISHES } from '../../../schema/terms.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkCourseTime } from './course-time.ts';
import { linkDishes } from './dish.ts';
import { linkFirstChoices } from './first-choices.ts';
import { checkInsteadOf } from './instead-of.ts';

/** One course of a package's menu. */
export function linkCourse(
  reading: Reading,
  index: number,
  text: PackageText['courses'][number],
  counts: Counts,
  recipes: ReadonlyMap<string, Recipe>,
  currency: string,
): Course | undefined {
  const path = ['courses', index];
  const linked = linkDishes(reading, [...path, 'dishes'], text.dishes, counts, recipes, currency);
  checkInsteadOf(reading, path, text, linked);
  const dishes = linkFirstChoices(reading, path, text, linked);
  const choose =
    text.choose === undefined
      ? null
      : reading.understand([...path, 'choose'], text.choose, wholeNumber(1, MOST_DISHES));
  const eachGuest = text['each guest'] === 'one';
  const time = linkCourseTime(reading, path, text);
  const offered = Object.keys(text.dishes).length;
  if (offered === 0) {
    reading.say(
      'no-value',
      [...path, 'dishes'],
      `“${text.name}” has no dish`,
      'write at least one, or leave the course out',
    );
  } else if (choose !== null && choose !== undefined && eachGuest) {
    const what = `“${text.name}” has both “choose” and “each guest”`;
    const wayOut =
      '“choose” gives everybody the chosen dishes, “each guest: one” one dish to each; keep one of the two';
    reading.say('course-choice', [...path, 'each guest'], what, wayOut, 'key');
  } else if (choose && choose > offered) {
    const what = `“${text.name}” asks to choose ${choose} from ${offered} ${offered === 1 ? 'dish' : 'dishes'}`;
    reading.say('course-choice', [...path, 'choose'], what, `write ${offered} or fewer, or add dishes`);
  }
  if (choose === undefined) return undefined;
  return { name: text.name, choose, eachGuest, ...(time && { time }), dishes };
}
