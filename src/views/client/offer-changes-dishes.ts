import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import { countsText } from '../../engine/quote/counts.ts';
import type { CourseTerms, DishTerms, Terms } from '../../engine/quote/terms.ts';
import { changedLine, notIn } from '../kitchen/change-line.ts';
import { shown } from '../quote-view-of.ts';
import { names } from './package-view-of.ts';

/** A dish and the course it stands in. */
interface Placed {
  readonly course: string;
  readonly dish: DishTerms;
}

/** The dishes of a menu that came, went, or stand in another course, and those whose portion or price is another. */
export function dishesChanged(
  before: readonly CourseTerms[],
  now: readonly CourseTerms[],
  terms: Pick<Terms, 'currency' | 'locale'>,
): string[] {
  const past = placesOf(before);
  const present = placesOf(now);
  const lines = [...new Set([...present.keys(), ...past.keys()])].flatMap((recipe) => {
    const was = past.get(recipe) ?? [];
    const is = present.get(recipe) ?? [];
    const left = was.filter(({ course }) => !is.some((each) => each.course === course));
    const came = is.filter(({ course }) => !was.some((each) => each.course === course));
    const moved = came.slice(0, left.length);
    return [
      ...moved.map(
        ({ course, dish }, index) => `${dish.name} moved from ${left[index]?.course} to ${course}.`,
      ),
      ...came.slice(moved.length).map(({ course, dish }) => `New under ${course}: ${dish.name}.`),
      ...left.slice(moved.length).map(({ course, dish }) => `No longer under ${course}: ${dish.name}.`),
      ...is.flatMap((place) => {
        const other = was.find(({ course }) => course === place.course) ?? left[moved.indexOf(place)];
        return other ? portionChanged(other.dish, place.dish, terms) : [];
      }),
    ];
  });
  return lines;
}

function placesOf(courses: readonly CourseTerms[]): Map<string, Placed[]> {
  const places = new Map<string, Placed[]>();
  for (const { name, dishes } of courses)
    for (const dish of dishes) {
      const placed = places.get(dish.recipe);
      if (placed) placed.push({ course: name, dish });
      else places.set(dish.recipe, [{ course: name, dish }]);
    }
  return places;
}

/** What else than the food differs in a dish: its name, the portion, who gets it, what it costs on top. */
export function portionChanged(
  before: DishTerms,
  now: DishTerms,
  terms: Pick<Terms, 'currency' | 'locale'>,
): string[] {
  const extra = ({ supplement }: DishTerms) =>
    supplement === undefined ? '' : `${shown(supplement, terms)} a guest`;
  return [
    ...(before.name === now.name ? [] : [`${before.name} is now called ${now.name}.`]),
    ...changedLine(`${now.name}, portion`, before.perGuest, now.perGuest),
    ...changedLine(`${now.name}, who gets it`, countsText(before.counts), countsText(now.counts)),
    ...changedLine(`${now.name}, on top of the menu’s price`, extra(before), extra(now)),
  ];
}

/** How the allergens and dietary marks of dishes differ that are offered in both; a line for each that came or went. */
export function foodChanged(
  before: readonly DishTerms[],
  now: readonly DishTerms[],
  laws: readonly AllergenLaw[],
): string[] {
  const past = Map.groupBy(before, ({ recipe }) => recipe);
  const present = Map.groupBy(now, ({ recipe }) => recipe);
  return [...present].flatMap(([recipe, dishes]) => {
    const others = past.get(recipe) ?? [];
    // A dish offered in several places is the same food in each, so that the first stands for all unless they differ.
    const pairs = dishes.flatMap((dish, index) => {
      const other = others[index] ?? others[0];
      return other ? [[other, dish] as const] : [];
    });
    return pairs.flatMap(([was, is]) => factsChanged(was, is, laws));
  });
}

function factsChanged(before: DishTerms, now: DishTerms, laws: readonly AllergenLaw[]): string[] {
  const { name } = now;
  const allergens = (words: string, list: readonly string[]) =>
    list.length === 0 ? [] : [`${name} ${words} ${namesOf(list, laws).join(', ')}.`];
  const marks = (words: (mark: string) => string, list: readonly string[]) =>
    list.map((mark) => `${name} ${words(mark)}.`);
  return [
    ...allergens('now contains', notIn(now.contains, before.contains)),
    ...allergens('no longer contains', notIn(before.contains, now.contains)),
    ...allergens('now may contain', notIn(now.mayContain, before.mayContain)),
    ...allergens('is no longer marked “may contain” for', notIn(before.mayContain, now.mayContain)),
    ...marks((mark) => `is no longer to be taken as ${mark}`, notIn(before.marks, now.marks)),
    ...marks((mark) => `is now ${mark}`, notIn(now.marks, before.marks)),
    ...marks(
      (need) => `can no longer be made for ${need} on request`,
      notIn(before.onRequest ?? [], now.onRequest ?? []),
    ),
    ...marks(
      (need) => `can now be made for ${need} on request`,
      notIn(now.onRequest ?? [], before.onRequest ?? []),
    ),
    ...(before.unsaid === now.unsaid
      ? []
      : [
          now.unsaid
            ? `Not all allergens of ${name} are known yet.`
            : `All allergens of ${name} are now said.`,
        ]),
  ];
}

/** By the names of the law; as the offer has it where the law's name says nothing. */
function namesOf(texts: readonly string[], laws: readonly AllergenLaw[]): string[] {
  const declared = names(texts, laws);
  return declared.length > 0 ? declared : [...texts];
}
