import type { InsteadOf } from '../../../engine/course/instead-of.ts';
import { parseNeed } from '../../../engine/food/need.ts';
import { recipeSuits, variantFor } from '../../../engine/food/variant.ts';
import type { Dish } from '../../../engine/menu/package.ts';
import type { DishText } from '../../../schema/dish.ts';
import type { PackageText } from '../../../schema/package.ts';
import type { Path } from '../../files/place-of.ts';
import { suggestion } from '../../ledger.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkNeeds, wordsOf } from '../recipe/recipe-changes.ts';

/** Which dish of its course a dish takes the place of, and for whom; undefined where it stands beside the others. */
export function linkInsteadOf(reading: Reading, path: Path, text: DishText): InsteadOf | undefined {
  const { 'instead of': recipe, for: needs } = text;
  if (recipe === undefined) {
    if (needs !== undefined) {
      const what = '“for” lists needs, but no dish is named that this one replaces';
      reading.say(
        'not-understood',
        [...path, 'for'],
        what,
        'add “instead of:” with the id of that dish',
        'key',
      );
    }
    return undefined;
  }
  if (needs === undefined) return { recipe };
  const named = linkNeeds(reading, [...path, 'for'], wordsOf(needs));
  return named.length > 0 ? { recipe, needs: named } : undefined;
}

/**
 * Tells of dishes that take the place of one that is not in their course, or of one that does so itself, and of courses
 * whose dishes are chosen: there the counts chosen say who gets what; and of needs that a dish does not suit itself.
 */
export function checkInsteadOf(
  reading: Reading,
  path: Path,
  text: PackageText['courses'][number],
  dishes: readonly Dish[],
): void {
  for (const { recipe, insteadOf } of dishes) {
    if (!insteadOf) continue;
    const at = [...path, 'dishes', recipe.id, 'instead of'];
    const other = text.dishes[insteadOf.recipe];
    if (text.choose !== undefined || text['each guest'] !== undefined) {
      const what = `guests choose among the dishes of “${text.name}”, so none can replace another`;
      const wayOut = 'offer it as one of the choices, or put it in a course where everybody gets every dish';
      reading.say('course-choice', at, what, wayOut);
    } else if (!other || insteadOf.recipe === recipe.id) {
      const what = `“${text.name}” has no other dish “${insteadOf.recipe}”`;
      const ids = Object.keys(text.dishes).filter((id) => id !== recipe.id);
      const wayOut = suggestion(reading.ledger, insteadOf.recipe, ids) ?? 'name a dish of the same course';
      reading.say('unknown-id', at, what, wayOut);
    } else if (other['instead of'] !== undefined) {
      const what = `“${insteadOf.recipe}” itself replaces “${other['instead of']}”`;
      reading.say('not-understood', at, what, `write “instead of: ${other['instead of']}” here too`);
    }
    for (const word of insteadOf.needs ?? []) {
      const need = parseNeed(word);
      if (!need.ok || recipeSuits(recipe, need.value) === 'yes' || variantFor(recipe, need.value)) continue;
      const what = `“${recipe.id}” does not suit ${word}, or no one can tell yet, so those guests do not get it`;
      const wayOut = 'remove the need, fill in what its foods contain, or name another dish for it';
      reading.say('instead-no-help', [...path, 'dishes', recipe.id, 'for'], what, wayOut);
    }
  }
}
